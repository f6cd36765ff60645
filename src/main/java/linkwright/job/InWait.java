package linkwright.job;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import linkwright.routine.StepId;
import linkwright.routine.WaitId;

/**
 * What went into a step's wait together, and has not come out.
 *
 * @param step the step's id
 * @param pieces what is on its way there → how many went in; empty for all that is there
 * @param begun the waits that were begun for it
 * @param running the timers of these that were not answered yet
 */
public record InWait(
    StepId step, Map<OnWay, Integer> pieces, Set<WaitId> begun, Set<EntryId> running) {
  static InWait of(Fact.TimerStarted started, EntryId timer) {
    return new InWait(started.step(), started.goesIn(), Set.of(started.waitId()), Set.of(timer));
  }

  /** Whether it is all that waits there, whatever comes later: a step that counts nothing. */
  public boolean isAll() {
    return pieces.isEmpty();
  }

  /** How many of these are in it. */
  public int of(OnWay way) {
    return pieces.getOrDefault(way, 0);
  }

  InWait again(Fact.TimerStarted started, EntryId timer) {
    Set<WaitId> names = new HashSet<>(begun);
    names.add(started.waitId());
    return new InWait(step, pieces, Set.copyOf(names), Set.of(timer));
  }

  InWait answered(EntryId timer) {
    if (!running.contains(timer)) {
      return this;
    }
    Set<EntryId> left = new HashSet<>(running);
    left.remove(timer);
    return new InWait(step, pieces, begun, Set.copyOf(left));
  }

  InWait less(OnWay way, int count) {
    Map<OnWay, Integer> left = new HashMap<>(pieces);
    left.computeIfPresent(way, (same, there) -> there > count ? there - count : null);
    return new InWait(step, Map.copyOf(left), begun, running);
  }
}
