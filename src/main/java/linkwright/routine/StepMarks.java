package linkwright.routine;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** A step's own marks agree with each other: its id, what it counts, what it does. */
final class StepMarks {
  private StepMarks() {}

  static List<Finding> everyStepHasItsOwnName(Routine routine, Known known) {
    List<Finding> findings = new ArrayList<>();
    Set<StepId> seen = new HashSet<>();
    for (Step step : routine.steps()) {
      if (!seen.add(step.id())) {
        findings.add(
            Finding.at(
                step,
                "step",
                "Two steps are called \"%s\".".formatted(step.id()),
                "Give one of them another name."));
      }
    }
    return findings;
  }

  static List<Finding> aStepCountsWhatItMoves(Routine routine, Known known) {
    List<Finding> findings = new ArrayList<>();
    for (Step step : routine.steps()) {
      if (step.counts() == StepCounting.NOTHING && !step.stage().isEmpty()) {
        findings.add(
            Finding.at(
                step,
                "counts",
                "Step %s takes pieces to a stage but counts nothing.".formatted(step.id()),
                "Write \"counts: each\" or \"counts: batch\"."));
      } else if (step.counts() != StepCounting.NOTHING && step.stage().isEmpty()) {
        findings.add(
            Finding.at(
                step,
                "counts",
                "Step %s counts pieces but names no stage that they reach.".formatted(step.id()),
                "Add \"stage: {link: …}\", or leave counts out."));
      }
    }
    return findings;
  }

  static List<Finding> aStageBringsItsHazard(Routine routine, Known known) {
    List<Finding> findings = new ArrayList<>();
    for (Step step : routine.steps()) {
      for (Stage stage : step.stage().values()) {
        stage
            .brings()
            .filter(hazard -> !step.does().contains(hazard))
            .ifPresent(
                hazard ->
                    findings.add(
                        Finding.at(
                            step,
                            "does",
                            "Step %s makes pieces \"%s\" but does not say that it does \"%s\"."
                                .formatted(step.id(), stage, hazard.word()),
                            "Add it to does, and its caution to cautions.")));
      }
    }
    return findings;
  }

  static List<Finding> theRoutineHasWhatItCounts(Routine routine, Known known) {
    List<Finding> findings = new ArrayList<>();
    List<PieceKind> wanted =
        switch (routine.ends()) {
          case RINGS -> List.of(PieceKind.LINK, PieceKind.RING);
          case LINKS -> List.of(PieceKind.LINK);
          case NONE -> List.of();
        };
    for (PieceKind kind : wanted) {
      if (!routine.pieces().containsKey(kind)) {
        findings.add(
            Finding.ofFile(
                "pieces",
                "A routine with \"ends: %s\" counts pieces called \"%s\", and lists none."
                    .formatted(routine.ends().word(), kind),
                "Add \"%s: [cut, …]\" under pieces.".formatted(kind)));
      }
    }
    return findings;
  }

  static List<Finding> everyPatternIsKnown(Routine routine, Known known) {
    return routine.patterns().stream()
        .filter(pattern -> !known.patterns().contains(pattern))
        .map(
            pattern ->
                Finding.ofFile(
                    "patterns",
                    "There is no link pattern \"%s\".".formatted(pattern),
                    Known.nearest(pattern, known.patterns().stream().sorted().toList())))
        .toList();
  }
}
