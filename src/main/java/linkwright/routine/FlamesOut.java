package linkwright.routine;

import java.util.List;

/** What burns gas can end with every flame out and a fire watch. */
final class FlamesOut {
  private FlamesOut() {}

  static List<Finding> whatBurnsGasEndsWithAWatch(Routine routine, Known known) {
    List<Step> steps = routine.steps();
    int lit = -1;
    for (int i = 0; i < steps.size(); i++) {
      lit = steps.get(i).does().contains(Hazard.BURNS_GAS) ? i : lit;
    }
    if (lit < 0) {
      return List.of();
    }
    Step last = steps.get(lit);
    boolean watched =
        steps.stream()
            .skip(lit + 1L)
            .flatMap(step -> step.waits().stream())
            .anyMatch(wait -> wait.ends() == WaitEnds.WATCH);
    return watched
        ? List.of()
        : List.of(
            Finding.at(
                last,
                "does",
                "Step %s burns gas, and no step after it shuts the gas and keeps the fire watch."
                    .formatted(last.id()),
                "Add a step behind it with \"waits: [{name: Fire watch, for: 60 min, ends:"
                    + " watch}]\", and say in it that the gas is shut."));
  }
}
