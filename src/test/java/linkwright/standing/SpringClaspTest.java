package linkwright.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.plan.WishKeys;
import linkwright.routine.Routine;
import linkwright.routine.Step;
import linkwright.routine.StepId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A clasp with a steel spring is not soldered on, so nobody waits for its pickle. */
class SpringClaspTest {
  private static final StepId FIT = new StepId("fit-clasp");

  private static List<Step> steps(Library library, Routine routine, String clasp) {
    return JobTraits.of(Map.of(WishKeys.CLASP_LENGTH, clasp), library.reference())
        .walked(routine)
        .steps();
  }

  private static Stream<Routine> thatFit(Library library) {
    return library.routines().values().stream().filter(routine -> routine.step(FIT).isPresent());
  }

  @Test
  void it_is_left_out_of_the_flame_and_hung_cold_in_a_later_step() {
    Library library = Library.load(new Home(Path.of("target/no-such-home")));
    assertThat(thatFit(library)).hasSize(9);
    thatFit(library)
        .forEach(
            routine -> {
              for (String spring : List.of("bolt-ring", "Bolt ring, 9 mm", "trigger")) {
                List<Step> walked = steps(library, routine, spring);
                assertThat(walked).as(routine.id()).extracting(Step::id).doesNotContain(FIT);
                assertThat(walked)
                    .as(routine.id())
                    .anyMatch(
                        step ->
                            step.doText().contains("spring clasp")
                                && step.doText().contains("stout ring")
                                && step.does().stream()
                                    .noneMatch(each -> each.word().equals("heats")));
              }
              for (String other : List.of("toggle", "hook-and-eye", "12 mm", "")) {
                assertThat(steps(library, routine, other))
                    .as(routine.id() + ", " + other)
                    .extracting(Step::id)
                    .contains(FIT);
              }
            });
  }

  @Test
  void a_clasp_of_her_own_goes_by_whether_it_has_a_spring(@TempDir Path folder) throws IOException {
    Path shared = Files.createDirectories(folder.resolve("shared"));
    Files.writeString(
        shared.resolve("clasps.yaml"),
        """
        format: 1
        clasps:
        - clasp: harbour-catch
          name: Harbour catch
          inside-length-mm: 11
          mass-g: 1
          spring-inside: true
          source: measured here
        - clasp: harbour-hook
          name: Harbour hook
          inside-length-mm: 11
          mass-g: 1
          spring-inside: false
          source: measured here
        """);
    Library library = Library.load(new Home(folder));
    Routine routine = library.routines().get("round-cable");
    assertThat(library.reference().clasp("harbour-hook").isGood())
        .as(library.problems().toString())
        .isTrue();
    assertThat(steps(library, routine, "harbour-catch")).extracting(Step::id).doesNotContain(FIT);
    assertThat(steps(library, routine, "harbour-hook")).extracting(Step::id).contains(FIT);
    JobTraits traits =
        JobTraits.of(Map.of(WishKeys.CLASP_LENGTH, "harbour-catch"), library.reference());
    assertThat(traits.meet(library.cautions().get("spring-clasp").when())).isTrue();
  }
}
