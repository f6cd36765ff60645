package linkwright.standing;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import linkwright.bench.OwnBench;
import linkwright.routine.Routine;
import linkwright.routine.Step;
import linkwright.routine.Wait;
import linkwright.routine.WaitEnds;

/** The waits of a routine as long as they take on the maker's own bench. */
public final class OwnWaits {
  private static final String PICKLE = "pickle";

  private OwnWaits() {}

  /** How long that wait takes there, s; empty where her bench says nothing of it. */
  public static OptionalLong seconds(Wait wait, OwnBench own) {
    if (wait.ends() == WaitEnds.WATCH) {
      return OptionalLong.empty();
    }
    Optional<Long> said =
        own.waitSeconds().entrySet().stream()
            .filter(
                each ->
                    each.getKey().equalsIgnoreCase(wait.id().word())
                        || each.getKey().equalsIgnoreCase(wait.name()))
            .map(each -> each.getValue())
            .findFirst();
    if (said.isPresent()) {
      return OptionalLong.of(said.get());
    }
    String named = (wait.name() + " " + wait.id()).toLowerCase(Locale.ROOT);
    return named.contains(PICKLE) ? own.pickle().usualSeconds() : OptionalLong.empty();
  }

  static Routine in(Routine routine, OwnBench own) {
    boolean none =
        routine.steps().stream()
            .flatMap(step -> step.waits().stream())
            .allMatch(wait -> seconds(wait, own).isEmpty());
    return none
        ? routine
        : routine.with(routine.steps().stream().map(step -> in(step, own)).toList());
  }

  private static Step in(Step step, OwnBench own) {
    return step.with(
        step.waits().stream()
            .map(
                wait ->
                    new Wait(
                        wait.id(),
                        wait.name(),
                        Math.max(1, seconds(wait, own).orElse(wait.seconds())),
                        wait.ends()))
            .toList());
  }
}
