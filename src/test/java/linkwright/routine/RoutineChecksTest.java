package linkwright.routine;

import static linkwright.routine.SoundRoutine.step;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class RoutineChecksTest {
  @Test
  void aSoundRoutineHasNothingToSay() {
    assertThat(SoundRoutine.sound().sentences()).isEmpty();
  }

  @Test
  void everythingWrongIsToldAtOnce() {
    assertThat(
            SoundRoutine.sound()
                .patterns("hop")
                .put(step("check").stage("checked").says("Look at {wier}."))
                .sentences())
        .containsExactly(
            "There is no link pattern \"hop\". Did you mean hoop?",
            "Step check has {wier} in a text, and nothing is known by that name. Did you mean"
                + " wire?");
  }

  @Nested
  class Cautions {
    @Test
    void aHazardThatNoNamedCautionCoversIsToldWithTheOnesThatWould() {
      assertThat(
              SoundRoutine.sound()
                  .put(step("solder").stage("soldered").does(Hazard.HEATS).cautions("acid"))
                  .sentences())
          .containsExactly(
              "Step solder says that it does \"heats\", and none of its cautions covers that. Name"
                  + " flame under cautions.");
    }

    @Test
    void aHazardThatNoCautionAtAllCoversAsksForOneToBeWritten() {
      assertThat(
              SoundRoutine.sound()
                  .put(step("check").stage("checked").does(Hazard.SPINS).cautions("blow"))
                  .sentences())
          .containsExactly(
              "Step check says that it does \"spins\", and none of its cautions covers that. Write"
                  + " a caution with \"covers: [spins]\" and name it here.");
    }

    @Test
    void anUnknownCautionIsToldWithTheNearest() {
      assertThat(
              SoundRoutine.sound()
                  .put(
                      step("solder")
                          .stage("soldered")
                          .does(Hazard.HEATS)
                          .cautions("flame", "flaem"))
                  .sentences())
          .containsExactly(
              "Step solder names the caution \"flaem\", which nobody has written. Did you mean"
                  + " flame?");
    }

    @Test
    void oneCautionMayCoverSeveralHazards() {
      assertThat(
              SoundRoutine.sound()
                  .put(
                      step("solder")
                          .stage("soldered")
                          .does(Hazard.HEATS, Hazard.BURNS_GAS)
                          .cautions("flame"))
                  .add(step("watch").waits("fire", WaitEnds.WATCH))
                  .sentences())
          .isEmpty();
    }

    @Test
    void whatComesOutOfThePickleIsRinsedBeforeItIsDried() {
      SoundRoutine.Draft pickle =
          step("pickle").stage("pickled").does(Hazard.PICKLES).rinses().cautions("acid");
      assertThat(
              SoundRoutine.sound().put(pickle.says("Cold into pickle. Pickle, dry.")).sentences())
          .singleElement()
          .asString()
          .startsWith("Step pickle dries what comes out of the pickle, unrinsed.");
      assertThat(
              SoundRoutine.sound()
                  .put(pickle.says("Pickle, rinse, soda water, rinse, dry."))
                  .sentences())
          .isEmpty();
    }

    @Test
    void whatSoldersHasItsFlux() {
      assertThat(
              SoundRoutine.sound()
                  .put(
                      step("solder")
                          .stage("soldered")
                          .does(Hazard.HEATS)
                          .cautions("flame")
                          .solder(Map.of("tip to tip", "hard")))
                  .sentences())
          .first()
          .asString()
          .startsWith("Step solder solders, and nothing says that it is fluxed.");
    }

    @Test
    void whatBurnsGasEndsWithAWatchBehindItsLastFlame() {
      SoundRoutine.Draft solder =
          step("solder").stage("soldered").does(Hazard.HEATS, Hazard.BURNS_GAS).cautions("flame");
      assertThat(SoundRoutine.sound().put(solder).sentences())
          .singleElement()
          .asString()
          .startsWith(
              "Step solder burns gas, and no step after it shuts the gas and keeps the fire"
                  + " watch.");
      assertThat(SoundRoutine.sound().put(solder.waits("fire", WaitEnds.WATCH)).sentences())
          .as("the flame is still on in that step")
          .hasSize(1);
    }
  }

  @Nested
  class Marks {
    @Test
    void twoStepsOfOneNameAreTold() {
      assertThat(SoundRoutine.sound().add(step("check")).sentences())
          .containsExactly("Two steps are called \"check\". Give one of them another name.");
    }

    @Test
    void aStepThatMovesPiecesCountsThem() {
      assertThat(
              SoundRoutine.sound()
                  .put(step("check").stage("checked").counts(StepCounting.NOTHING))
                  .sentences())
          .containsExactly(
              "Step check takes pieces to a stage but counts nothing. Write \"counts: each\" or"
                  + " \"counts: batch\".");
    }

    @Test
    void aStepThatCountsMovesPieces() {
      assertThat(SoundRoutine.sound().add(step("look").counts(StepCounting.BATCH)).sentences())
          .containsExactly(
              "Step look counts pieces but names no stage that they reach. Add \"stage: {link:"
                  + " …}\", or leave counts out.");
    }

    @Test
    void aStepWithoutATextIsTold() {
      assertThat(SoundRoutine.sound().add(step("look").says(" ")).sentences())
          .containsExactly("Step look does not say what to do. Write a title and a do text.");
    }

    @Test
    void halfABraceIsTold() {
      assertThat(SoundRoutine.sound().add(step("look").says("Of {0.9 mm} or {wire")).sentences())
          .containsExactly(
              "Step look has a brace in a text without its other half. A placeholder is written"
                  + " {wire}.");
    }

    @Test
    void lengthsFormersAndNamesInBracesAreKnown() {
      assertThat(
              SoundRoutine.sound()
                  .add(step("look").says("{0.9 mm} {wire 1.2 mm} {former ring} {solder piece}"))
                  .sentences())
          .isEmpty();
    }
  }

  @Nested
  class LeftOut {
    private final When silver =
        new When(
            Map.of("family", List.of("silver")), OptionalDouble.empty(), OptionalDouble.empty());

    @Test
    void aStepThatMovesPiecesIsInEveryJob() {
      assertThat(
              SoundRoutine.sound()
                  .put(step("cut").stage("cut").does(Hazard.CUTS).cautions("blade").when(silver))
                  .sentences())
          .containsExactly(
              "Step cut takes pieces to a stage, and in some jobs it is left out. Leave when out,"
                  + " or leave stage and counts out: pieces would wait for it.");
    }

    @Test
    void aPickleThatSomeJobsLeaveOutIsMissedThere() {
      SoundRoutine bench =
          SoundRoutine.sound()
              .add(step("warm").does(Hazard.HEATS).cautions("flame"))
              .add(step("clean").does(Hazard.PICKLES).rinses().cautions("acid").when(silver));
      assertThat(bench.sentences())
          .singleElement()
          .asString()
          .startsWith("After step warm the link is not cleaned to the end of the routine.")
          .contains("In jobs where a step with a when is left out.");
      assertThat(
              bench.put(step("warm").does(Hazard.HEATS).cautions("flame").when(silver)).sentences())
          .isEmpty();
    }

    @Test
    void aFamilyThatNoMetalHasIsTold() {
      When slip =
          new When(
              Map.of("family", List.of("sliver")), OptionalDouble.empty(), OptionalDouble.empty());
      assertThat(SoundRoutine.sound().add(step("mark").when(slip)).sentences())
          .containsExactly(
              "Step mark is meant for a family \"sliver\", which no metal has. Did you mean"
                  + " silver?");
    }
  }

  @Nested
  class Words {
    @Test
    void whatIsToldToBeDoneIsDeclared() {
      assertThat(SoundRoutine.sound().add(step("wash").says("Cold, into warm pickle.")).sentences())
          .containsExactly(
              "Step wash tells one to \"into warm pickle\" and does not say that it does"
                  + " \"pickles\". Add pickles to does and its caution to cautions.");
      assertThat(
              SoundRoutine.sound()
                  .add(step("warm").says("Until it is red hot. {quench}"))
                  .sentences())
          .hasSize(2);
      assertThat(SoundRoutine.sound().add(step("bore").says("Drill two small holes.")).sentences())
          .containsExactly(
              "Step bore tells one to \"Drill\" and does not say that it does \"drills\". Add"
                  + " drills to does and its caution to cautions.");
    }

    @Test
    void whatLiesReadyAndWhatIsForbiddenIsNone() {
      assertThat(
              SoundRoutine.sound()
                  .add(step("lay").says("Lay out tweezers, quench water, warm pickle."))
                  .add(step("rub").says("Rub it. Never hold it to a polishing wheel."))
                  .sentences())
          .isEmpty();
    }

    @Test
    void aFormerThatNoPatternHasIsTold() {
      assertThat(SoundRoutine.sound().add(step("form").says("Over {former body}.")).sentences())
          .containsExactly(
              "Step form speaks of {former body}, and no pattern of this routine has it. Known"
                  + " are: ring.");
    }
  }

  @Nested
  class Remedies {
    private List<String> withRemedy(AfterFault then, String backTo, String reason) {
      return SoundRoutine.sound()
          .put(step("check").stage("checked").wrong(then, backTo, reason))
          .sentences();
    }

    @Test
    void aRedoMayGoBackToAnEarlierStageOrToThisOne() {
      assertThat(withRemedy(AfterFault.REDO, "soldered", "gap")).isEmpty();
      assertThat(withRemedy(AfterFault.REDO, "checked", "gap")).isEmpty();
    }

    @Test
    void aRedoDoesNotGoForward() {
      assertThat(withRemedy(AfterFault.REDO, "trued", "gap"))
          .containsExactly(
              "Step check, \"it shows\": it goes back to \"trued\", which the link has not reached"
                  + " yet. Write under back-to the stage that is to be reached again: cut,"
                  + " soldered, pickled, checked.");
    }

    @Test
    void aRedoNeedsAStageThatThereIs() {
      assertThat(withRemedy(AfterFault.REDO, "solder", "gap"))
          .containsExactly(
              "Step check, \"it shows\": it goes back to \"solder\", no stage of the link. Did"
                  + " you mean soldered? Write"
                  + " under back-to the stage that is to be reached again: cut, soldered, pickled,"
                  + " checked.");
      assertThat(withRemedy(AfterFault.REDO, "", "gap")).hasSize(1);
    }

    @Test
    void aStageThatIsNotListedIsToldOnceAndNotForTheWayBackToo() {
      assertThat(
              SoundRoutine.sound()
                  .put(step("check").stage("judged").wrong(AfterFault.REDO, "cut", "gap"))
                  .sentences())
          .isNotEmpty()
          .noneMatch(sentence -> sentence.contains("goes back to"));
    }

    @Test
    void aStepThatMovesNoPieceHasNothingToRedo() {
      assertThat(
              SoundRoutine.sound()
                  .add(step("look").wrong(AfterFault.REDO, "cut", "gap"))
                  .sentences())
          .containsExactly(
              "Step look, \"it shows\": it is to be redone, but the step moves no piece. Write"
                  + " \"then: carry on\" and say in the remedy what to do.");
    }

    @Test
    void whatIsPutRightOnTheSpotGoesNowhere() {
      assertThat(withRemedy(AfterFault.CARRY_ON, "", "")).isEmpty();
      assertThat(withRemedy(AfterFault.CARRY_ON, "cut", ""))
          .containsExactly(
              "Step check, \"it shows\": it goes back to a stage though nothing is redone. Leave"
                  + " back-to out.");
    }

    @Test
    void aLossNeedsAReasonThatWeKnow() {
      assertThat(withRemedy(AfterFault.SCRAP, "", "melted")).isEmpty();
      assertThat(withRemedy(AfterFault.SCRAP, "", "meltd"))
          .containsExactly(
              "Step check, \"it shows\": the reason \"meltd\" is not one of ours. Did you mean"
                  + " melted?");
      assertThat(withRemedy(AfterFault.SCRAP, "", ""))
          .singleElement()
          .asString()
          .startsWith("Step check, \"it shows\": a piece is redone or scrapped without a reason.");
    }
  }
}
