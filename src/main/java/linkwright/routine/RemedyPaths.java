package linkwright.routine;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import linkwright.quantity.Nearest;

/** What goes wrong leads somewhere: a redo to an earlier stage, a loss to a reason. */
final class RemedyPaths {
  private RemedyPaths() {}

  static List<Finding> aRedoGoesBackToAStage(Routine routine, Known known) {
    return routine.steps().stream()
        .flatMap(step -> step.wrong().stream().flatMap(remedy -> back(routine, step, remedy)))
        .toList();
  }

  static List<Finding> everyReasonIsKnown(Routine routine, Known known) {
    List<Finding> findings = new ArrayList<>();
    for (Step step : routine.steps()) {
      for (Remedy remedy : step.wrong()) {
        boolean needed = remedy.then() != AfterFault.CARRY_ON;
        if ((needed || !remedy.reason().isEmpty()) && !Remedy.REASONS.contains(remedy.reason())) {
          findings.add(
              Finding.at(
                  step,
                  "wrong",
                  "Step %s, \"%s\": %s"
                      .formatted(
                          step.id(),
                          remedy.sees(),
                          remedy.reason().isEmpty()
                              ? "a piece is redone or scrapped without a reason."
                              : "the reason \"%s\" is not one of ours.".formatted(remedy.reason())),
                  Known.nearest(remedy.reason(), Remedy.REASONS)));
        }
      }
    }
    return findings;
  }

  private static Stream<Finding> back(Routine routine, Step step, Remedy remedy) {
    if (remedy.then() != AfterFault.REDO) {
      return remedy.backTo().equals(Stage.NONE)
          ? Stream.empty()
          : Stream.of(
              wrong(
                  step,
                  remedy,
                  "goes back to a stage though nothing is redone.",
                  "Leave back-to out."));
    }
    if (step.stage().isEmpty()) {
      return Stream.of(
          wrong(
              step,
              remedy,
              "is to be redone, but the step moves no piece.",
              "Write \"then: carry on\" and say in the remedy what to do."));
    }
    PieceKind kind = step.stage().keySet().iterator().next();
    List<Stage> stages = routine.stagesOf(kind);
    int here = stages.indexOf(step.stage().get(kind));
    int back = stages.indexOf(remedy.backTo());
    // A kind or a stage that is not listed is told for itself.
    if (here < 0 || (back >= 0 && back <= here)) {
      return Stream.empty();
    }
    List<String> reached = Stage.words(stages.subList(0, here + 1));
    String near =
        Nearest.of(remedy.backTo().id(), reached)
            .map(word -> "Did you mean " + word + "? ")
            .orElse("");
    return Stream.of(
        wrong(
            step,
            remedy,
            back < 0
                ? "goes back to \"%s\", no stage of the %s.".formatted(remedy.backTo(), kind)
                : "goes back to \"%s\", which the %s has not reached yet."
                    .formatted(remedy.backTo(), kind),
            near
                + "Write under back-to the stage that is to be reached again: %s."
                    .formatted(String.join(", ", reached))));
  }

  private static Finding wrong(Step step, Remedy remedy, String what, String expected) {
    return Finding.at(
        step,
        "wrong",
        "Step %s, \"%s\": it %s".formatted(step.id(), remedy.sees(), what),
        expected);
  }
}
