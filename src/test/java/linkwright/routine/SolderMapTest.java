package linkwright.routine;

import static linkwright.routine.SoundRoutine.step;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

class SolderMapTest {
  private static Routine soldered(String first, String then) {
    return SoundRoutine.sound()
        .put(
            step("solder")
                .stage("soldered")
                .does(Hazard.HEATS)
                .cautions("flame")
                .solder(Map.of("tip to tip", first)))
        .add(step("clasp").does(Hazard.HEATS).cautions("flame").solder(Map.of("ring", then)))
        .routine();
  }

  @Test
  void says_which_joint_takes_which_grade_in_order() {
    assertThat(SolderMap.of(soldered("hard", "easy")).says())
        .isEqualTo("Solder, in order: tip to tip hard (step 2); ring easy (step 6).");
    assertThat(SolderMap.of(SoundRoutine.sound().routine()).says()).isEmpty();
  }

  @Test
  void tells_where_a_later_joint_is_harder_and_refuses_nothing() {
    assertThat(SolderMap.of(soldered("easy", "hard")).harderLater())
        .containsExactly(
            "Step 6 solders ring with hard solder after step 2 soldered tip to tip with easy: its"
                + " heat can open that joint. Shield it, or take an easier grade.");
    assertThat(SolderMap.of(soldered("hard", "easy")).harderLater()).isEmpty();
    assertThat(SolderMap.of(soldered("easy", "easy")).harderLater()).isEmpty();
  }

  /** A test piece lies apart when the work is soldered; a trial length may become part of it. */
  @Test
  void fears_for_no_joint_of_a_test_piece() {
    assertThat(SolderMap.of(afterPiece(RoutinePart.TRIAL)).harderLater()).isEmpty();
    assertThat(SolderMap.of(afterPiece(RoutinePart.TRIAL)).says())
        .isEqualTo("Solder, in order: stud easy (step 1); tip to tip hard (step 3).");
    assertThat(SolderMap.of(afterPiece(RoutinePart.SAMPLE)).harderLater()).hasSize(1);
  }

  private static Routine afterPiece(RoutinePart part) {
    return SoundRoutine.sound()
        .first(
            step("piece")
                .part(part)
                .does(Hazard.HEATS)
                .cautions("flame")
                .solder(Map.of("stud", "easy")))
        .put(
            step("solder")
                .stage("soldered")
                .does(Hazard.HEATS)
                .cautions("flame")
                .solder(Map.of("tip to tip", "hard")))
        .routine();
  }
}
