package linkwright.files;

import static linkwright.files.ShippedSteps.LIBRARY;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import linkwright.quantity.Problem;
import linkwright.routine.Remedy;
import linkwright.routine.SolderMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShippedRoutinesTest {
  @Test
  void allRoutinesAreThere() {
    assertThat(LIBRARY.routines())
        .containsOnlyKeys(
            "bar-and-ring",
            "belcher",
            "byzantine",
            "clasp-box",
            "clasp-hook-and-eye",
            "clasp-s-hook",
            "clasp-toggle",
            "curb-filed",
            "double-loop-in-loop",
            "end-caps",
            "figaro",
            "figure-of-eight",
            "graduated-units",
            "jump-rings",
            "loop-in-loop",
            "oval-and-long",
            "repair-one-link",
            "rope",
            "round-cable",
            "scroll-and-ring",
            "torch-practice",
            "wire-drawing");
  }

  @Test
  void everyRoutineAndCautionPassesAllChecks() {
    assertThat(LIBRARY.problems())
        .filteredOn(problem -> problem.file().matches("(routines|safety)/.*"))
        .extracting(Problem::sentence)
        .isEmpty();
  }

  @Test
  void noLaterJointIsHarderThanAnEarlierOneOfItsPiece() {
    assertThat(LIBRARY.routines().values())
        .allSatisfy(
            routine -> assertThat(SolderMap.of(routine).harderLater()).as(routine.id()).isEmpty());
  }

  @Test
  void theStartingFileForAnOwnRoutinePassesAllChecks(@TempDir Path home) throws IOException {
    Path routines = Files.createDirectories(home.resolve("routines"));
    try (InputStream start = Library.class.getResourceAsStream("/linkwright/new-routine.yaml")) {
      Files.copy(start, routines.resolve("my-routine.yaml"));
    }
    Library library = Library.load(new Home(home));
    assertThat(library.routines()).containsKey("my-routine");
    assertThat(library.problems())
        .filteredOn(problem -> problem.file().endsWith("my-routine.yaml"))
        .extracting(Problem::sentence)
        .isEmpty();
  }

  @Test
  void everyMishapOfTheTradeHasItsRemedySomewhere() {
    List<String> mishaps =
        List.of(
            "solder .*will not run",
            "solder ran into the curl",
            "joint opened again",
            "link is twisted",
            "firescale",
            "too chunky",
            "too open",
            "ring (is|looks) too big",
            "links face different ways",
            "wire springs back",
            "wire cracks .*in the plate",
            "ring is soldered to its neighbour",
            "dead soft",
            "oval no longer swings",
            "flux is left in a curl");
    List<String> sees =
        ShippedSteps.steps().flatMap(step -> step.wrong().stream()).map(Remedy::sees).toList();
    for (String mishap : mishaps) {
      assertThat(sees).as(mishap).anyMatch(Pattern.compile(mishap).asPredicate());
    }
  }
}
