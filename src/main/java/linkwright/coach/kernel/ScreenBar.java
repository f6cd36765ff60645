package linkwright.coach.kernel;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import linkwright.quantity.Length;
import linkwright.quantity.Read;

/**
 * How long a bar of {@link #COLUMNS} columns is on a screen, as the user measured it: what life
 * size is drawn by. A file that several machines share holds one for each: {@code 82.3 mm at 18
 * points on 1400 x 900; …}.
 */
public final class ScreenBar {
  /** Its key in the user's file. */
  public static final String KEY = "screen-bars";

  /** Columns from the bar's first upright to its last. */
  public static final int COLUMNS = 40;

  private static final String AT = " at ";
  private static final double LEAST_MM = 20;
  private static final double MOST_MM = 1500;

  private ScreenBar() {}

  /** The bar, to be measured from the middle of one upright to the middle of the other. */
  public static String drawn() {
    return "├" + "─".repeat(COLUMNS - 1) + "┤";
  }

  /** What was measured on that screen, as it was typed; empty if nothing was. */
  public static Optional<String> of(String kept, String screen) {
    return Optional.ofNullable(all(kept).get(screen));
  }

  /** The same texts with another length for that screen; a blank one takes it out. */
  public static String with(String kept, String screen, String length) {
    Map<String, String> all = all(kept);
    if (length.isBlank()) {
      all.remove(screen);
    } else {
      all.put(screen, length.strip());
    }
    return all.entrySet().stream()
        .map(each -> each.getValue() + AT + each.getKey())
        .collect(Collectors.joining("; "));
  }

  /** The length that was typed, mm, if it can be one of a bar on a screen. */
  public static Read<Double> read(String typed) {
    return Length.read(typed)
        .map(Length::mm)
        .flatMap(
            mm ->
                mm >= LEAST_MM && mm <= MOST_MM
                    ? Read.good(mm)
                    : Read.bad(
                        "A bar of "
                            + COLUMNS
                            + " letters is 20 to 1500 mm long, and this is not: measure it from"
                            + " upright to upright."));
  }

  static OptionalDouble lifeOf(String kept, String screen) {
    return screen.isEmpty()
        ? OptionalDouble.empty()
        : of(kept, screen)
            .flatMap(typed -> read(typed).found())
            .map(mm -> OptionalDouble.of(2 * COLUMNS / mm))
            .orElse(OptionalDouble.empty());
  }

  private static Map<String, String> all(String kept) {
    Map<String, String> all = new LinkedHashMap<>();
    for (String each : kept.split(";", -1)) {
      int at = each.indexOf(AT);
      if (at > 0) {
        all.put(each.substring(at + AT.length()).strip(), each.substring(0, at).strip());
      }
    }
    return all;
  }
}
