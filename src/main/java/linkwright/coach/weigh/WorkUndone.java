package linkwright.coach.weigh;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.quantity.UnitStyle;
import linkwright.standing.Standing;
import linkwright.standing.stock.WireAtBench;

/** What a job still lacks as it is closed, and wire that nothing tells of: asked about once. */
final class WorkUndone {
  private WorkUndone() {}

  /** The question beside the closing's field; none where all came good and all is told for. */
  static Map<String, String> questions(Model model) {
    OpenJob job = model.job().orElseThrow();
    List<String> open =
        Stream.of(undone(job.standing()), runs(model), wire(job, model.settings().units()))
            .flatMap(Optional::stream)
            .toList();
    return open.isEmpty()
        ? Map.of()
        : Map.of("next", String.join("; ", open) + ": close it all the same?");
  }

  private static Optional<String> runs(Model model) {
    return model.timers().running().stream()
        .filter(timer -> !timer.rings(model.steady()))
        .findFirst()
        .map(timer -> timer.named() + " still runs" + step(model));
  }

  private static String step(Model model) {
    return AtBench.of(model)
        .map(at -> ", and step " + at.number() + " of " + at.routine().steps().size() + " is open")
        .orElse("");
  }

  /** What is not said now counts as neither given back nor lost once the job is closed. */
  private static Optional<String> wire(OpenJob job, UnitStyle units) {
    return job.standing()
        .counted()
        .plan()
        .map(
            plan -> {
              WireAtBench wire = WireAtBench.of(plan, job.state());
              return wire.isWorthAsking(plan)
                  ? units.length(wire.lengthMm())
                      + " of wire, "
                      + units.mass(wire.massG())
                      + ", is still here by the book, neither given back into the drawer nor"
                      + " weighed in"
                  : "";
            })
        .filter(said -> !said.isEmpty());
  }

  private static Optional<String> undone(Standing standing) {
    String undone =
        standing.left().entrySet().stream()
            .filter(kind -> kind.getValue().more() > 0)
            .map(
                kind ->
                    kind.getValue().good()
                        + " of "
                        + kind.getValue().wanted()
                        + " "
                        + kind.getKey().many())
            .collect(Collectors.joining(" and "));
    return undone.isEmpty() ? Optional.empty() : Optional.of(undone + " are good");
  }
}
