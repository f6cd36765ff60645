package linkwright.job;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The timers of a job that run or ring.
 *
 * @param running in the order they were set
 */
public record Timers(List<TimerRun> running) {
  public static final Timers NONE = new Timers(List.of());

  /** The timer that ends first, or has been ringing longest. */
  public Optional<TimerRun> next() {
    return running.stream().min(Comparator.comparing(TimerRun::end));
  }

  /** The timers that have run out. */
  public List<TimerRun> ringing(Instant now) {
    return running.stream().filter(timer -> timer.rings(now)).toList();
  }

  /**
   * The same timers by a clock that cannot be set: those that ran before go on as they did, others
   * by how long ago the computer's clock says they were set.
   *
   * @param before the timers as they ran by the steady clock until now
   * @param moves by how much the computer's clock was set forward since
   * @param now the moment by the computer's clock
   * @param steady the same moment by the steady clock
   */
  public Timers steadied(Timers before, ClockMoves moves, Instant now, Instant steady) {
    Map<EntryId, TimerRun> ran = new HashMap<>();
    before.running().forEach(timer -> ran.put(timer.id(), timer));
    return new Timers(
        running.stream()
            .map(
                timer ->
                    Optional.ofNullable(ran.get(timer.id()))
                        .orElseGet(() -> timer.startedAt(steady.minus(age(timer, moves, now)))))
            .toList());
  }

  private static Duration age(TimerRun timer, ClockMoves moves, Instant now) {
    Duration age = moves.age(timer.startedAt(), now);
    return age.isNegative() ? Duration.ZERO : age;
  }

  Timers after(Entry entry) {
    if (entry.fact() instanceof Fact.TimerStarted started) {
      List<TimerRun> more = new ArrayList<>(running);
      more.add(TimerRun.of(started, entry));
      return new Timers(List.copyOf(more));
    }
    if (entry.fact() instanceof Fact.TimerAnswered answered) {
      return new Timers(
          running.stream().filter(timer -> !timer.id().equals(answered.timer())).toList());
    }
    return this;
  }
}
