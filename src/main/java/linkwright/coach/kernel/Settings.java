package linkwright.coach.kernel;

import java.time.ZoneId;
import java.time.ZoneOffset;
import linkwright.coach.keys.KeyMap;
import linkwright.quantity.UnitStyle;

/**
 * The user's choices.
 *
 * @param units how amounts are shown
 * @param british whether trade words are the British ones
 * @param keys the keys
 * @param animate whether a ringing timer may flash, at most once a second
 * @param zone where the bench stands, for times of day; books keep UTC
 */
public record Settings(
    UnitStyle units, boolean british, KeyMap keys, boolean animate, ZoneId zone) {
  /** Millimetres, British words, the usual keys. */
  public static final Settings USUAL = new Settings(UnitStyle.METRIC, true, KeyMap.USUAL, true);

  /** Choices with times of day in UTC. */
  public Settings(UnitStyle units, boolean british, KeyMap keys, boolean animate) {
    this(units, british, keys, animate, ZoneOffset.UTC);
  }

  /** The same choices with times of day as clocks show them there. */
  public Settings in(ZoneId place) {
    return new Settings(units, british, keys, animate, place);
  }
}
