package linkwright.shell;

import java.time.Instant;

/** The time as it really is, and the computer's clock beside it, which can be set. */
final class HotWorkTime {
  Instant real = HotWorkOracle.BEGIN;
  Instant now = HotWorkOracle.BEGIN;

  /** When the clock was set last, as it really was. */
  Instant setAt = Instant.MIN;

  void pass(long seconds) {
    real = real.plusSeconds(seconds);
    now = now.plusSeconds(seconds);
  }

  void set(long by) {
    now = now.plusSeconds(by);
    setAt = real;
  }
}
