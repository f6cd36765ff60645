package linkwright.job;

import java.time.Duration;
import java.time.Instant;
import java.util.List;

/**
 * By how much the computer's clock was set forward, as far as another clock of the machine tells:
 * what was entered before that is not as old as its time says.
 *
 * @param all the earlier ones before the later
 */
public record ClockMoves(List<Move> all) {
  /** The clock went as time does, or nobody knows otherwise. */
  public static final ClockMoves NONE = new ClockMoves(List.of());

  public ClockMoves {
    all = List.copyOf(all);
  }

  /**
   * The clock was set forward.
   *
   * @param until the last moment that is known to be of before that, by the clock then
   * @param by how far
   */
  public record Move(Instant until, Duration by) {}

  /** How long ago that was entered, now that the computer's clock tells this moment. */
  public Duration age(Instant entered, Instant now) {
    Duration age = Duration.between(entered, now);
    for (Move move : all) {
      age = entered.isAfter(move.until()) ? age : age.minus(move.by());
    }
    return age;
  }
}
