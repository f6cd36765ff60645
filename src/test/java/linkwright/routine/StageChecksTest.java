package linkwright.routine;

import static linkwright.routine.SoundRoutine.step;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What the checks of a routine say of its stages. */
class StageChecksTest {
  @Test
  void aStageThatIsNotListedIsToldWithTheNearest() {
    assertThat(
            SoundRoutine.sound()
                .put(step("true").stage("true").does(Hazard.HAMMERS).cautions("blow"))
                .sentences())
        .containsExactly(
            "Step true takes the link to the stage \"true\", which is not listed under pieces. Did"
                + " you mean trued?",
            "No step takes the link to the stage \"trued\". Add \"stage: {link: trued}\" to the"
                + " step that does.");
  }

  @Test
  void aKindOfPieceThatIsNotListedIsToldWithTheNearest() {
    assertThat(SoundRoutine.sound().add(step("extra").stage("lnk", "cut")).sentences())
        .contains(
            "Step extra moves pieces called \"lnk\", which are not listed under pieces. Did you"
                + " mean link?");
  }

  @Test
  void stepsInAnotherOrderThanTheStagesAreTold() {
    assertThat(
            SoundRoutine.sound()
                .without("cut")
                .add(step("cut").stage("cut").does(Hazard.CUTS).cautions("blade"))
                .sentences())
        .containsExactly(
            "Step cut takes the link to \"cut\" after an earlier step has made it \"trued\". Under"
                + " pieces the order is: cut, soldered, pickled, checked, trued.");
  }

  @Test
  void twoStepsThatReachOneStageAreTold() {
    assertThat(
            SoundRoutine.sound()
                .add(step("again").stage("trued").does(Hazard.HAMMERS).cautions("blow"))
                .sentences())
        .containsExactly(
            "Step again takes the link to \"trued\", where an earlier step has taken it. One step"
                + " reaches one stage.");
  }

  @Test
  void aStageWithoutAStepIsTold() {
    assertThat(SoundRoutine.sound().without("check").sentences())
        .containsExactly(
            "No step takes the link to the stage \"checked\". Add \"stage: {link: checked}\" to"
                + " the step that does.");
  }

  @Test
  void aStageNamedTwiceIsTold() {
    assertThat(
            SoundRoutine.sound()
                .pieces("link", "cut", "soldered", "pickled", "checked", "trued", "cut")
                .sentences())
        .containsExactly(
            "The link has the stage \"cut\" twice. Name a stage once; call the second one"
                + " otherwise.");
  }

  @Test
  void aStageThatBringsAHazardMustSaySo() {
    assertThat(
            SoundRoutine.sound()
                .put(step("cut").stage("cut"))
                .put(step("true").stage("trued").does(Hazard.CUTS).cautions("blade"))
                .sentences())
        .containsExactly(
            "Step cut makes pieces \"cut\" but does not say that it does \"cuts\". Add it to does,"
                + " and its caution to cautions.",
            "Step true makes pieces \"trued\" but does not say that it does \"hammers\". Add it to"
                + " does, and its caution to cautions.");
  }

  @Test
  void whatIsFusedIsNotSoldered() {
    assertThat(
            SoundRoutine.sound()
                .pieces("link", "cut", "fused", "soldered", "pickled", "checked", "trued")
                .sentences())
        .contains(
            "The link is both fused and soldered. Keep one of the two; a fused joint needs no"
                + " solder.");
  }

  @Test
  void oneKindMayBeFusedAndAnotherSoldered() {
    assertThat(
            SoundRoutine.sound()
                .pieces("bar", "fused")
                .put(step("fuse").stage("bar", "fused").does(Hazard.HEATS).cautions("flame"))
                .add(step("dip").does(Hazard.PICKLES).rinses().cautions("acid"))
                .sentences())
        .isEmpty();
  }

  @Test
  void aRingIsNotOvalledBeforeItIsJoined() {
    assertThat(
            SoundRoutine.sound()
                .pieces("ring", "ovalled", "joined")
                .add(step("oval").stage("ring", "ovalled"))
                .add(step("join").stage("ring", "joined"))
                .sentences())
        .containsExactly(
            "The ring is ovalled before it is joined: an oval cannot be hooked in and closed well."
                + " Put \"joined\" before \"ovalled\".");
  }

  @Test
  void aRingMayBeOvalledAfterItIsJoined() {
    assertThat(
            SoundRoutine.sound()
                .pieces("ring", "joined", "ovalled")
                .add(step("join").stage("ring", "joined"))
                .add(step("oval").stage("ring", "ovalled"))
                .sentences())
        .isEmpty();
  }

  @Test
  void aJointIsNotCheckedBeforeThePickle() {
    assertThat(
            SoundRoutine.sound()
                .pieces("link", "cut", "soldered", "checked", "pickled", "trued")
                .sentences())
        .contains(
            "The link is checked before it is pickled: flux and oxide hide a bad joint. Put"
                + " \"pickled\" before \"checked\".");
  }

  @Test
  void aChainOfLinksAndRingsListsBoth() {
    assertThat(SoundRoutine.sound().ends(ChainEnds.RINGS).sentences())
        .containsExactly(
            "A routine with \"ends: rings\" counts pieces called \"ring\", and lists none. Add"
                + " \"ring: [cut, …]\" under pieces.");
    assertThat(SoundRoutine.sound().ends(ChainEnds.NONE).sentences()).isEmpty();
  }
}
