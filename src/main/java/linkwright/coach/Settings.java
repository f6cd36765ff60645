package linkwright.coach;

import linkwright.quantity.UnitStyle;

/**
 * The user's choices.
 *
 * @param units how amounts are shown
 * @param british whether trade words are the British ones
 * @param keys the keys
 * @param animate whether a ringing timer may flash, at most once a second
 */
public record Settings(UnitStyle units, boolean british, KeyMap keys, boolean animate) {
  /** Millimetres, British words, the usual keys. */
  public static final Settings USUAL = new Settings(UnitStyle.METRIC, true, KeyMap.USUAL, true);
}
