package linkwright.routine;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The stages a piece goes through, and the steps that take it there, agree and make sense. */
final class StageChecks {
  private StageChecks() {}

  static List<Finding> everyStageIsListed(Routine routine, Known known) {
    List<Finding> findings = new ArrayList<>();
    for (Step step : routine.steps()) {
      step.stage()
          .forEach(
              (kind, stage) -> {
                List<Stage> stages = routine.stagesOf(kind);
                if (!routine.pieces().containsKey(kind)) {
                  findings.add(
                      Finding.at(
                          step,
                          "stage",
                          "Step %s moves pieces called \"%s\", which are not listed under pieces."
                              .formatted(step.id(), kind),
                          Known.nearest(kind.id(), PieceKind.words(routine.pieces().keySet()))));
                } else if (!stages.contains(stage)) {
                  findings.add(
                      Finding.at(
                          step,
                          "stage",
                          "Step %s takes the %s to the stage \"%s\", which is not listed under pieces."
                              .formatted(step.id(), kind, stage),
                          Known.nearest(stage.id(), Stage.words(stages))));
                }
              });
    }
    return findings;
  }

  static List<Finding> stepsFollowTheStages(Routine routine, Known known) {
    List<Finding> findings = new ArrayList<>();
    Map<PieceKind, Stage> reached = new LinkedHashMap<>();
    for (Step step : routine.steps()) {
      step.stage()
          .forEach(
              (kind, stage) -> {
                List<Stage> stages = routine.stagesOf(kind);
                if (!stages.contains(stage)) {
                  return;
                }
                Stage before = reached.getOrDefault(kind, stages.get(0));
                int forward = stages.indexOf(stage) - stages.indexOf(before);
                if (forward == 0 && reached.containsKey(kind)) {
                  findings.add(
                      Finding.at(
                          step,
                          "stage",
                          "Step %s takes the %s to \"%s\", where an earlier step has taken it."
                              .formatted(step.id(), kind, stage),
                          "One step reaches one stage."));
                } else if (forward < 0) {
                  findings.add(
                      Finding.at(
                          step,
                          "stage",
                          "Step %s takes the %s to \"%s\" after an earlier step has made it \"%s\"."
                              .formatted(step.id(), kind, stage, before),
                          "Under pieces the order is: %s."
                              .formatted(String.join(", ", Stage.words(stages)))));
                }
                reached.put(kind, stage);
              });
    }
    return findings;
  }

  static List<Finding> everyStageHasItsStep(Routine routine, Known known) {
    List<Finding> findings = new ArrayList<>();
    routine
        .pieces()
        .forEach(
            (kind, stages) -> {
              Set<Stage> seen = new HashSet<>();
              for (Stage stage : stages) {
                if (!seen.add(stage)) {
                  findings.add(
                      Finding.ofFile(
                          "pieces",
                          "The %s has the stage \"%s\" twice.".formatted(kind, stage),
                          "Name a stage once; call the second one otherwise."));
                } else if (routine.steps().stream()
                    .noneMatch(step -> stage.equals(step.stage().get(kind)))) {
                  findings.add(
                      Finding.ofFile(
                          "pieces",
                          "No step takes the %s to the stage \"%s\".".formatted(kind, stage),
                          "Add \"stage: {%s: %s}\" to the step that does.".formatted(kind, stage)));
                }
              }
            });
    return findings;
  }

  static List<Finding> jointsAreCheckedAfterThePickle(Routine routine, Known known) {
    return inOrder(
        routine,
        Stage.PICKLED,
        Stage.CHECKED,
        "The %s is checked before it is pickled: flux and oxide hide a bad joint.");
  }

  static List<Finding> ringsAreOvalledAfterJoining(Routine routine, Known known) {
    return inOrder(
        routine,
        Stage.JOINED,
        Stage.OVALLED,
        "The %s is ovalled before it is joined: an oval cannot be hooked in and closed well.");
  }

  static List<Finding> whatIsFusedIsNotSoldered(Routine routine, Known known) {
    List<Finding> findings = new ArrayList<>();
    routine
        .pieces()
        .forEach(
            (kind, stages) -> {
              if (stages.contains(Stage.FUSED) && stages.contains(Stage.SOLDERED)) {
                findings.add(
                    Finding.ofFile(
                        "pieces",
                        "The %s is both fused and soldered.".formatted(kind),
                        "Keep one of the two; a fused joint needs no solder."));
              }
            });
    return findings;
  }

  private static List<Finding> inOrder(Routine routine, Stage first, Stage then, String sentence) {
    List<Finding> findings = new ArrayList<>();
    routine
        .pieces()
        .forEach(
            (kind, stages) -> {
              int later = stages.indexOf(then);
              if (later >= 0 && stages.indexOf(first) > later) {
                findings.add(
                    Finding.ofFile(
                        "pieces",
                        sentence.formatted(kind),
                        "Put \"%s\" before \"%s\".".formatted(first, then)));
              }
            });
    return findings;
  }
}
