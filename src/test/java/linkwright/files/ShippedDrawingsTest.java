package linkwright.files;

import static linkwright.files.ShippedSteps.LIBRARY;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import linkwright.reference.Picture;
import linkwright.reference.PicturePanel;
import linkwright.reference.Tool;
import linkwright.routine.Hazard;
import linkwright.routine.Routine;
import linkwright.routine.Step;
import org.junit.jupiter.api.Test;

/** What ships to be seen and laid out: drawings and tools, and the steps that use them. */
class ShippedDrawingsTest {
  private static final List<Picture> PICTURES = LIBRARY.reference().pictures();

  private static List<Step> steps() {
    return LIBRARY.routines().values().stream()
        .flatMap(routine -> routine.steps().stream())
        .toList();
  }

  @Test
  void every_drawing_is_shown_by_some_step() {
    Set<String> shown = new HashSet<>();
    steps().forEach(step -> shown.addAll(step.detail().pictures()));
    assertThat(PICTURES).extracting(Picture::id).hasSizeGreaterThan(6).hasSameElementsAs(shown);
  }

  @Test
  void whoever_writes_a_routine_finds_cards_and_drawings_by_name_in_the_guide() throws IOException {
    String guide = Files.readString(Path.of("routines/README.md"));
    assertThat(LIBRARY.cautions().keySet()).allMatch(id -> guide.contains("`" + id + "`"));
    assertThat(PICTURES).allMatch(picture -> guide.contains("`" + picture.id() + "`"));
  }

  @Test
  void every_drawing_shows_what_is_right_first_and_what_is_not() {
    for (Picture picture : PICTURES) {
      assertThat(picture.panels().get(0).wrong()).as(picture.id()).isFalse();
      assertThat(picture.panels()).as(picture.id()).anyMatch(PicturePanel::wrong);
      assertThat(picture.panels()).as(picture.id()).hasSizeBetween(2, 4);
    }
  }

  @Test
  void what_is_drawn_is_said_too_shortly_enough_to_stand_below_it() {
    for (Picture picture : PICTURES) {
      for (PicturePanel panel : picture.panels()) {
        assertThat(panel.says()).as(picture.id() + " " + panel.name()).hasSizeBetween(30, 120);
        assertThat(panel.name()).as(picture.id()).hasSizeLessThan(18);
      }
    }
  }

  @Test
  void who_solders_with_a_pallion_sees_the_joint_and_the_pallion() {
    int joints = 0;
    int flames = 0;
    for (Step step : steps()) {
      if (step.doText().contains("pallion") && step.does().contains(Hazard.FLUX_FUMES)) {
        joints++;
        List<String> shown = step.detail().pictures();
        boolean own = shown.contains("rope-pair") || shown.contains("sheet-joint");
        // Ends of one wire, unless the step shows the joint that is there in their place.
        assertThat(own || shown.containsAll(List.of("pallions", "solder-joint")))
            .as(step.id().word())
            .isTrue();
      }
      if (step.does().contains(Hazard.LIGHTS)) {
        flames++;
        assertThat(step.detail().pictures()).as(step.id().word()).contains("flames");
      }
    }
    assertThat(joints).as("steps with a pallion").isPositive();
    assertThat(flames).as("steps that light a flame").isPositive();
  }

  /** Where no two ends of a wire meet, none are drawn. */
  @Test
  void a_rope_and_a_box_show_the_joint_that_they_have() {
    for (String step : List.of("trial-length", "solder-pairs", "check-rope")) {
      assertThat(pictures("rope", step)).as(step).containsExactly("rope-pair");
    }
    for (String step : List.of("solder-corners", "solder-frame", "cut-slot")) {
      assertThat(pictures("clasp-box", step)).as(step).contains("sheet-joint");
      assertThat(pictures("clasp-box", step)).as(step).doesNotContain("pallions", "solder-joint");
    }
    assertThat(pictures("end-caps", "floor")).contains("sheet-joint");
  }

  private static List<String> pictures(String routine, String step) {
    return LIBRARY.routines().get(routine).steps().stream()
        .filter(each -> each.id().word().equals(step))
        .findFirst()
        .orElseThrow()
        .detail()
        .pictures();
  }

  @Test
  void every_tool_is_laid_out_somewhere_and_each_name_stands_once() {
    Set<String> names = new HashSet<>();
    for (Tool tool : LIBRARY.reference().tools()) {
      List<String> all = new ArrayList<>(tool.alsoCalled());
      all.add(tool.name());
      all.forEach(name -> assertThat(names.add(name)).as(name).isTrue());
      assertThat(steps())
          .as(tool.name())
          .anyMatch(
              step ->
                  step.detail().tools().contains(tool.name())
                      || step.does().stream()
                          .anyMatch(does -> tool.laidOutFor().contains(does.word())));
    }
  }

  /** A tool that is taken in hand in a text, by its whole name. */
  @Test
  void what_a_step_takes_in_hand_is_laid_out() {
    int taken = 0;
    for (Routine routine : LIBRARY.routines().values()) {
      for (Step step : routine.steps()) {
        String text = step.doText().toLowerCase(Locale.ROOT);
        for (String tool :
            List.of(
                "mallet",
                "loupe",
                "calipers",
                "round-nosed pliers",
                "cross-locking tweezers",
                "wet cloth",
                "feeler",
                "awl",
                "dividers",
                "polished hammer",
                "hand vice")) {
          if (Pattern.compile("\\b" + tool + "\\b").matcher(text).find()) {
            taken++;
            assertThat(step.detail().tools()).as(routine.id() + " " + step.id()).contains(tool);
          }
        }
      }
    }
    assertThat(taken).as("tools that texts name").isPositive();
  }

  /** Solder runs on fluxed metal alone, at the last joint as at the first, tests and trial too. */
  @Test
  void whoever_solders_a_joint_is_told_to_flux_and_has_it_laid_out() {
    assertThat(
            ShippedSteps.in(
                step ->
                    !step.detail().solder().isEmpty()
                        && !(step.doText().toLowerCase(Locale.ROOT).contains("flux")
                            && step.detail().tools().contains("flux and brush"))))
        .isEmpty();
    Pattern solders =
        Pattern.compile("\\b(pallion|solder(s|ed)? (it|them|hard|two)|easier solder)\\b");
    assertThat(
            ShippedSteps.in(
                step ->
                    step.does().contains(Hazard.FLUX_FUMES)
                        && solders.matcher(step.doText()).find()
                        && step.detail().solder().isEmpty()))
        .as("the grade of each joint is laid out")
        .isEmpty();
  }

  /** What is soldered again is fluxed again. */
  @Test
  void no_remedy_solders_without_flux() {
    Pattern solders =
        Pattern.compile("\\bsolder (it|on|that)\\b|solder again|, soldered,|flash it|run its");
    assertThat(
            ShippedSteps.in(
                step ->
                    step.wrong().stream()
                        .map(each -> each.remedy().toLowerCase(Locale.ROOT))
                        .anyMatch(text -> solders.matcher(text).find() && !text.contains("flux"))))
        .isEmpty();
  }

  /** Wet shot gets into a clasp, and its spring rusts: it is hung when the chain is tumbled. */
  @Test
  void a_clasp_is_hung_after_the_tumbling() {
    assertThat(
            ShippedSteps.in(
                step ->
                    step.does().contains(Hazard.TUMBLES)
                        && step.doText().contains("clasp")
                        && step.doText().lastIndexOf("clasp")
                            < step.doText().toLowerCase(Locale.ROOT).lastIndexOf("tumble")))
        .isEmpty();
  }
}
