package linkwright.coach.keys;

import java.time.Duration;

/** How soon the same key counts nothing. */
public final class Pauses {
  /** A key that comes again sooner bounces, or repeats because it is held. */
  public static final Duration BOUNCE = Duration.ofMillis(150);

  /** Sooner than this nobody has read what the press would end. */
  public static final Duration UNREAD = Duration.ofMillis(700);

  private Pauses() {}
}
