package linkwright.job;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The timers of a job that run or ring.
 *
 * @param running in the order they were set
 */
public record Timers(List<TimerRun> running) {
  static final Timers NONE = new Timers(List.of());

  /** The timer that ends first, or has been ringing longest. */
  public Optional<TimerRun> next() {
    return running.stream()
        .min(Comparator.comparing(timer -> timer.startedAt().plusSeconds(timer.seconds())));
  }

  /** The timers that have run out. */
  public List<TimerRun> ringing(Instant now) {
    return running.stream().filter(timer -> timer.rings(now)).toList();
  }

  Timers after(Entry entry) {
    if (entry.fact() instanceof Fact.TimerStarted started) {
      List<TimerRun> more = new ArrayList<>(running);
      more.add(new TimerRun(entry.id(), started.name(), entry.at(), started.seconds()));
      return new Timers(List.copyOf(more));
    }
    if (entry.fact() instanceof Fact.TimerAnswered answered) {
      return new Timers(
          running.stream().filter(timer -> !timer.id().equals(answered.timer())).toList());
    }
    return this;
  }
}
