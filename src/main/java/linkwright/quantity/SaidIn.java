package linkwright.quantity;

import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Sentences of rooms that reckon in millimetres and grams, in the units that the user reads. What
 * somebody typed, and so stands in quotes, stays.
 */
public final class SaidIn {
  private static final Pattern METRIC =
      Pattern.compile("“[^”]*”|(?<![\\d.,])(-?\\d+(?:\\.\\d+)?) (mm|g|N)(?![\\p{L}\\d/])");

  private SaidIn() {}

  /** The sentence with its lengths, masses, pulls and degrees in these units; metric ones stay. */
  public static String units(String sentence, UnitStyle units) {
    return units == UnitStyle.METRIC
        ? sentence
        : METRIC
            .matcher(Degrees.inUnits(sentence, units))
            .replaceAll(found -> Matcher.quoteReplacement(amount(found, units)));
  }

  private static String amount(MatchResult found, UnitStyle units) {
    if (found.group(2) == null) {
      return found.group();
    }
    double value = Double.parseDouble(found.group(1));
    return switch (found.group(2)) {
      case "g" -> units.mass(value);
      case "N" -> units.pull(value);
      default -> units.length(value);
    };
  }
}
