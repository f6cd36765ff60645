package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import linkwright.coach.content.Beside;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Part;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.plan.WishKeys;
import linkwright.reckon.Reckoner;
import linkwright.view.Glyphs;
import linkwright.view.Scenes;
import linkwright.view.Shown;
import org.junit.jupiter.api.Test;

/** Who reads inches reads inches, pennyweights, pounds and Fahrenheit in every place of a job. */
class InchTest {
  private static final Pattern METRIC =
      Pattern.compile("[^\n]*\\d (mm|cm|m|g|N|MPa|°C)(?![\\p{L}\\d])[^\n]*");

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

  /** What a form asks for, its examples, its help and what is wrong with what is typed. */
  @Test
  void no_form_asks_or_complains_in_metric_figures() {
    List<String> metric = new ArrayList<>();
    for (String name : Scenes.names()) {
      if (!name.startsWith("tray") && !name.startsWith("names") && !name.equals("find")) {
        fields(name, Scenes.inInches(name, 140, 60), metric);
      }
    }
    Bencher sums = Scenes.inInches("reckoner", 140, 60);
    for (int i = 0; i < Reckoner.sums().size(); i++) {
      fields("sum " + i, sums.press("enter"), metric);
      sums.press("esc", "down");
    }
    assertThat(metric).isEmpty();
  }

  private static void fields(String name, Bencher bencher, List<String> metric) {
    if (bencher.model().held().form().isEmpty()) {
      return;
    }
    List<Field> fields = bencher.model().held().form().get().fields();
    for (Field field : fields) {
      bencher.put(field.id(), field.choices().isEmpty() ? "soon" : field.text());
    }
    // As the page says it: in the user's units.
    List<Field> said =
        shown(Pages.of(bencher.press("ctrl-k").model()).body().parts())
            .flatMap(form -> form.fields().stream())
            .toList();
    for (Field field : said) {
      String told =
          field.label()
              + "\n"
              + String.join("\n", field.explained())
              + "\n"
              + field.trouble().orElse("");
      Matcher found = METRIC.matcher(told);
      while (found.find()) {
        if (!OTHERS_TEXT.matcher(found.group()).find()) {
          metric.add(name + ", " + field.id() + ": " + found.group());
        }
      }
    }
  }

  private static Stream<Form> shown(List<Part> parts) {
    return Beside.flat(parts).filter(Fields.class::isInstance).map(part -> ((Fields) part).form());
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
          "wire-came",
          "reckoner-sum",
          "wire-drawn",
          "what-if",
          "what-there-is",
          "what-there-is-form",
          "job-card",
          "job-card-form");

  /** A law's limit stands in the law's grams, annealing heat in both, a density has no other. */
  private static final Pattern OTHERS_TEXT =
      Pattern.compile(
          "limit is|mark is needed|of the metal itself|°F \\(|\\d °C\\)|g/cm³|g/cm3|limit of");
}
