package linkwright.job;

import java.time.Duration;
import java.time.Instant;

/**
 * A timer that was set and not answered yet. It holds its end, not its rest, so it goes on while
 * the program is away.
 *
 * @param id the entry that set it
 * @param name what it is for
 * @param startedAt when it was set
 * @param seconds how long it runs
 */
public record TimerRun(EntryId id, String name, Instant startedAt, long seconds) {
  /** What is left at that moment; negative once it has run out. */
  public Duration left(Instant now) {
    return Duration.between(now, startedAt.plusSeconds(seconds));
  }

  /** Whether it has run out and rings until it is answered. */
  public boolean rings(Instant now) {
    return left(now).compareTo(Duration.ZERO) <= 0;
  }
}
