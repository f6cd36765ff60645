package linkwright.shell;

import java.time.Instant;
import java.time.InstantSource;

/** A clock that nobody can set: it begins at a moment and follows the processor's own count. */
public final class SteadyClock implements InstantSource {
  private final Instant begin;
  private final long beginNanos = System.nanoTime();

  private SteadyClock(Instant begin) {
    this.begin = begin;
  }

  /** One that tells this moment now. */
  public static SteadyClock from(Instant begin) {
    return new SteadyClock(begin);
  }

  @Override
  public Instant instant() {
    return at(System.nanoTime());
  }

  /** The moment of that count of {@link System#nanoTime()}. */
  Instant at(long nanos) {
    return begin.plusNanos(nanos - beginNanos);
  }
}
