package linkwright.quantity;

import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Sentences of rooms that reckon in millimetres and grams, in the units that the user reads. What
 * somebody typed, and so stands in quotes, stays, and so does what is in both. No amount comes out
 * finer than it was written.
 */
public final class SaidIn {
  private static final Pattern METRIC =
      Pattern.compile(
          "“[^”]*”|\\b(?:ft|in) \\([^)]*\\)|(?<![\\d.]|\\d,)"
              + "(?:(\\d+(?:\\.\\d+)?) to )?(-?\\d+(?:\\.\\d+)?) (mm|cm|m|g|N|MPa)(?![\\p{L}\\d/])");

  /** An example in both units: {@code 45 cm or 18 in}. */
  private static final Pattern BOTH =
      Pattern.compile("[\\d.]+ (?:mm|cm|m|g) or ([\\d./ ]+ (?:in|AWG|dwt))\\b");

  private static final double MM_IN_INCH = 25.4;
  private static final double MM_IN_FOOT = 304.8;
  private static final double G_IN_DWT = 1.55517384;
  private static final double MPA_IN_KSI = 6.894757;

  private SaidIn() {}

  /** The sentence with its lengths, masses, pulls and degrees in these units; metric ones stay. */
  public static String units(String sentence, UnitStyle units) {
    return units == UnitStyle.METRIC
        ? sentence
        : METRIC
            .matcher(BOTH.matcher(Degrees.inUnits(sentence, units)).replaceAll("$1"))
            .replaceAll(found -> Matcher.quoteReplacement(amount(found, units)));
  }

  private static String amount(MatchResult found, UnitStyle units) {
    if (found.group(3) == null) {
      return found.group();
    }
    String last = amount(found.group(2), found.group(3), units);
    if (found.group(1) == null) {
      return last;
    }
    String first = amount(found.group(1), found.group(3), units);
    String unit = last.substring(last.lastIndexOf(' '));
    return (first.endsWith(unit) ? first.substring(0, first.length() - unit.length()) : first)
        + " to "
        + last;
  }

  private static String amount(String written, String unit, UnitStyle units) {
    return switch (unit) {
      case "g" -> as(written, G_IN_DWT, "dwt");
      case "N" -> units.pull(Double.parseDouble(written));
      case "MPa" -> as(written, MPA_IN_KSI, "ksi");
      case "cm" -> as(written, MM_IN_INCH / 10, "in");
      case "m" -> as(written, MM_IN_FOOT / 1000, "ft");
      default -> as(written, MM_IN_INCH, "in");
    };
  }

  /** In two digits at least, else no finer than the last digit that was written. */
  private static String as(String written, double one, String unit) {
    double value = Double.parseDouble(written) / one;
    int decimals = written.length() - 1 - written.indexOf('.');
    double step = (written.indexOf('.') < 0 ? 1 : Math.pow(10, -decimals)) / one;
    int two = value == 0 ? 0 : 1 - (int) Math.floor(Math.log10(Math.abs(value)));
    int places = Math.max(0, Math.max(two, (int) Math.ceil(-Math.log10(step))));
    return Decimals.upTo(value, places) + " " + unit;
  }
}
