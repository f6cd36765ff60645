package linkwright.coach.weigh;

import java.util.Map;
import java.util.stream.Collectors;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Model;
import linkwright.job.TimerRun;
import linkwright.standing.Standing;

/** Work that a job still lacks as it is closed: asked about once, for its figures stay. */
final class WorkUndone {
  private WorkUndone() {}

  /** The question beside the closing's field; none where all that was wanted came good. */
  static Map<String, String> questions(Model model) {
    Map<String, String> undone = questions(model.job().orElseThrow().standing());
    return undone.isEmpty()
        ? model.timers().running().stream()
            .filter(timer -> !timer.rings(model.steady()))
            .findFirst()
            .map(timer -> Map.of("next", runs(model, timer) + ": close it all the same?"))
            .orElse(Map.of())
        : undone;
  }

  private static String runs(Model model, TimerRun timer) {
    String step =
        AtBench.of(model)
            .map(
                at ->
                    ", and step " + at.number() + " of " + at.routine().steps().size() + " is open")
            .orElse("");
    return timer.named() + " still runs" + step;
  }

  private static Map<String, String> questions(Standing standing) {
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
    return undone.isEmpty()
        ? Map.of()
        : Map.of("next", undone + " are good: close it all the same?");
  }
}
