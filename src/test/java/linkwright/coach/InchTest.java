package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import linkwright.plan.WishKeys;
import linkwright.view.Glyphs;
import linkwright.view.Scenes;
import linkwright.view.Shown;
import org.junit.jupiter.api.Test;

/** Who reads inches reads inches, pennyweights, pounds and Fahrenheit in every place of a job. */
class InchTest {
  private static final Pattern METRIC =
      Pattern.compile("[^\n]*\\d (mm|cm|g|N|MPa|°C)(?![\\p{L}\\d])[^\n]*");

  @Test
  void no_place_of_a_job_shows_metric_figures() {
    List<String> metric = new ArrayList<>();
    for (String name : Scenes.names()) {
      if (TYPED.contains(name) || name.startsWith("tray") || name.startsWith("names")) {
        continue;
      }
      String shown = Shown.draw(Scenes.inInches(name, 140, 60).model(), Glyphs.FULL).text();
      Matcher found = METRIC.matcher(shown);
      while (found.find()) {
        if (!OTHERS_TEXT.matcher(found.group()).find()) {
          metric.add(name + ": " + found.group().strip().replaceAll("\\s{2,}", "  "));
        }
      }
    }
    assertThat(metric).isEmpty();
  }

  @Test
  void a_length_too_short_is_told_in_inches() {
    Bencher plan = Scenes.inInches("plan", 140, 60).put(WishKeys.FINISHED, "0.6 in");
    assertThat(Shown.draw(plan.model(), Glyphs.FULL).text())
        .contains("is shorter than")
        .doesNotContain(" mm");
  }

  /** Where the scene itself types millimetres, which are shown as typed. */
  private static final List<String> TYPED =
      List.of(
          "plan-trouble",
          "plan-too-thick",
          "trial-form",
          "wire-drawn",
          "what-if",
          "what-there-is",
          "what-there-is-form",
          "job-card",
          "job-card-form");

  /** A law's limit stands in the law's grams, annealing heat in both, a density has no other. */
  private static final Pattern OTHERS_TEXT =
      Pattern.compile("limit is|mark is needed|of the metal itself|°F \\(|g/cm³|mm²|limit of");
}
