package linkwright.routine;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linkwright.reference.Reference;

/** All that must hold in a routine, as a list that can be read from top to bottom. */
public final class RoutineChecks {
  private static final List<Check> ALL =
      List.of(
          StepMarks::everyStepHasItsOwnName,
          StepMarks::theRoutineHasWhatItCounts,
          StepMarks::everyPatternIsKnown,
          StageChecks::everyStageIsListed,
          StageChecks::everyStageHasItsStep,
          StageChecks::stepsFollowTheStages,
          DetailChecks::whatAStepNeedsIsMadeBefore,
          StageChecks::jointsAreCheckedAfterThePickle,
          StageChecks::ringsAreOvalledAfterJoining,
          StageChecks::whatIsFusedIsNotSoldered,
          HeatAndPickle::pickleAndRinseFollowEveryHeating,
          FlamesOut::whatBurnsGasEndsWithAWatch,
          FluxAndRinse::solderHasItsFlux,
          FluxAndRinse::noPickleIsDriedUnrinsed,
          StepMarks::aStepCountsWhatItMoves,
          StepMarks::aStageBringsItsHazard,
          CautionTies::everyHazardIsCovered,
          CautionTies::everyCautionIsKnown,
          RemedyPaths::aRedoGoesBackToAStage,
          RemedyPaths::everyReasonIsKnown,
          DetailChecks::aFormerNameLeadsToOneStep,
          DetailChecks::aLoopLeadsBack,
          DetailChecks::everyGradeIsKnown,
          DetailChecks::everyKindOfPieceIsMade,
          WhenChecks::everyStageIsReachedInEveryJob,
          WhenChecks::whatIsLeftOutIsNotMissed,
          WhenChecks::everyConditionCanHold,
          DangerWords::areDeclared,
          DetailChecks::everyQuestionHasAChoice,
          ShownChecks::everyPictureIsThere,
          ShownChecks::everyToolIsKnown,
          TextChecks::everyStepSaysWhatToDo,
          TextChecks::everyPlaceholderIsKnown,
          TextChecks::everyFormerIsOfAPattern);

  private RoutineChecks() {}

  /**
   * Everything in a routine that does not hold together, all at once.
   *
   * @param routine the routine
   * @param cautions all cautions that there are
   * @param patterns the ids of all link patterns that there are → the names of their formers
   * @param reference what else is looked up: drawings and tools
   * @return empty if the routine is sound
   */
  public static List<Finding> check(
      Routine routine,
      Collection<Caution> cautions,
      Map<String, Set<String>> patterns,
      Reference reference) {
    Known known = Known.of(cautions, patterns, reference);
    return ALL.stream().flatMap(check -> check.of(routine, known).stream()).toList();
  }
}
