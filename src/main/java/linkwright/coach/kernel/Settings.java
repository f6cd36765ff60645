package linkwright.coach.kernel;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.coach.keys.KeyMap;
import linkwright.quantity.UnitStyle;

/**
 * The user's choices.
 *
 * @param units how amounts are shown
 * @param british whether trade words are the British ones
 * @param keys the keys
 * @param zone where the bench stands, for times of day; books keep UTC
 * @param chosen what stands in the user's file, word for word, by its keys
 * @param across whether one number takes all of the screen, to be read across the room
 * @param screen the letters and the screen of the program's own window, in words; empty in a
 *     terminal, of which nothing is known
 */
public record Settings(
    UnitStyle units,
    boolean british,
    KeyMap keys,
    ZoneId zone,
    Map<String, String> chosen,
    boolean across,
    String screen) {
  /** Millimetres, British words, the usual keys. */
  public static final Settings USUAL = new Settings(UnitStyle.METRIC, true, KeyMap.USUAL);

  public Settings {
    chosen = Collections.unmodifiableMap(new LinkedHashMap<>(chosen));
  }

  /** Choices with times of day in UTC. */
  public Settings(UnitStyle units, boolean british, KeyMap keys) {
    this(units, british, keys, ZoneOffset.UTC, Map.of(), false, "");
  }

  /** The same choices with times of day as clocks show them there. */
  public Settings in(ZoneId place) {
    return new Settings(units, british, keys, place, chosen, across, screen);
  }

  /** The same choices with other keys. */
  public Settings with(KeyMap other) {
    return new Settings(units, british, other, zone, chosen, across, screen);
  }

  /** The same choices as they stand in the user's file. */
  public Settings standing(Map<String, String> texts) {
    return new Settings(units, british, keys, zone, texts, across, screen);
  }

  /** The same choices in a window with these letters on that screen. */
  public Settings on(String letters) {
    return new Settings(units, british, keys, zone, chosen, across, letters);
  }

  /** Whether a choice that is on unless the file says otherwise is on. */
  public boolean isOn(String key) {
    return !chosen.getOrDefault(key, "true").equals("false");
  }

  /** Half columns that are a millimetre here; empty where no bar was measured. */
  public OptionalDouble life() {
    return ScreenBar.lifeOf(chosen.getOrDefault(ScreenBar.KEY, ""), screen);
  }

  /** The same choices with one number taking all of the screen, or no more. */
  public Settings across(boolean wanted) {
    return new Settings(units, british, keys, zone, chosen, wanted, screen);
  }
}
