package linkwright.shell;

import java.time.Instant;

/** A clock that nobody can set: it begins at a moment and follows the processor's own count. */
final class SteadyClock {
  private final Instant begin;
  private final long beginNanos = System.nanoTime();

  private SteadyClock(Instant begin) {
    this.begin = begin;
  }

  static SteadyClock from(Instant begin) {
    return new SteadyClock(begin);
  }

  Instant instant() {
    return at(System.nanoTime());
  }

  /** The moment of that count of {@link System#nanoTime()}. */
  Instant at(long nanos) {
    return begin.plusNanos(nanos - beginNanos);
  }
}
