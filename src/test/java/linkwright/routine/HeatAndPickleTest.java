package linkwright.routine;

import static linkwright.routine.SoundRoutine.step;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class HeatAndPickleTest {
  private static final String PICKLE_AND_RINSE =
      "Put a step that pickles (does: [pickles]) and rinses (rinse: yes) ";

  private static SoundRoutine.Draft pickle(String id) {
    return step(id).does(Hazard.PICKLES).rinses().cautions("acid");
  }

  private static SoundRoutine.Draft heat(String id) {
    return step(id).does(Hazard.HEATS).cautions("flame");
  }

  private static SoundRoutine.Draft hammer(String id) {
    return step(id).does(Hazard.HAMMERS).cautions("blow");
  }

  @Nested
  class IsToldWhen {
    @Test
    void hotWorkIsHammeredUnpickled() {
      assertThat(
              SoundRoutine.sound()
                  .add(heat("warm"))
                  .add(hammer("beat"))
                  .add(pickle("dip"))
                  .sentences())
          .containsExactly(
              "Step beat hammers the link while it still carries what the last heating left. "
                  + PICKLE_AND_RINSE
                  + "before it.");
    }

    @Test
    void pickledWorkIsHammeredUnrinsed() {
      assertThat(
              SoundRoutine.sound()
                  .add(heat("warm"))
                  .add(step("dip").does(Hazard.PICKLES).cautions("acid"))
                  .add(hammer("beat"))
                  .add(pickle("dip-again"))
                  .sentences())
          .containsExactly(
              "Step beat hammers the link while it still carries what the last heating left. Put a"
                  + " rinse (rinse: yes) before it.");
    }

    @Test
    void aJointIsJudgedUnpickled() {
      assertThat(
              SoundRoutine.sound()
                  .put(step("pickle").stage("pickled").does(Hazard.PICKLES).cautions("acid"))
                  .put(hammer("true").stage("trued").rinses())
                  .sentences())
          .contains(
              "Step check judges the joint of the link while it still carries what the last heating"
                  + " left. Put a rinse (rinse: yes) before it.");
    }

    @Test
    void theLastHeatingIsNeverPickled() {
      assertThat(SoundRoutine.sound().add(heat("warm")).sentences())
          .containsExactly(
              "After step warm the link is not cleaned to the end of the routine. "
                  + PICKLE_AND_RINSE
                  + "after it.");
    }

    @Test
    void oneStepHeatsAndHammersButDoesNotPickle() {
      assertThat(
              SoundRoutine.sound()
                  .add(step("forge").does(Hazard.HEATS, Hazard.HAMMERS).cautions("flame", "blow"))
                  .add(pickle("dip"))
                  .sentences())
          .hasSize(1);
    }

    @Test
    void aRingHeatedInTheChainLeavesTheLinksDirtyToo() {
      SoundRoutine bench = SoundRoutine.sound().pieces("ring", "joined");
      bench.add(heat("join").stage("ring", "joined"));
      bench.add(hammer("beat"));
      bench.add(pickle("dip"));
      assertThat(bench.sentences())
          .singleElement()
          .asString()
          .startsWith("Step beat hammers the link");
    }
  }

  @Nested
  class IsContentWhen {
    @Test
    void pickleAndRinseComeInTwoSteps() {
      assertThat(
              SoundRoutine.sound()
                  .add(heat("warm"))
                  .add(step("dip").does(Hazard.PICKLES).cautions("acid"))
                  .add(step("rinse").rinses())
                  .add(hammer("beat"))
                  .sentences())
          .isEmpty();
    }

    @Test
    void oneStepHeatsPicklesRinsesAndHammers() {
      assertThat(
              SoundRoutine.sound()
                  .add(
                      step("more")
                          .does(Hazard.HEATS, Hazard.PICKLES, Hazard.HAMMERS)
                          .rinses()
                          .cautions("flame", "acid", "blow"))
                  .sentences())
          .isEmpty();
    }

    @Test
    void linksAreHammeredWhileLooseRingsAreStillHot() {
      SoundRoutine bench = SoundRoutine.sound().pieces("ring", "soldered", "pickled");
      bench.without("true");
      bench.add(heat("rings").stage("ring", "soldered"));
      bench.add(hammer("true").stage("trued"));
      bench.add(pickle("clean").stage("ring", "pickled"));
      assertThat(bench.sentences()).isEmpty();
    }
  }
}
