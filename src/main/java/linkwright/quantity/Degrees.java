package linkwright.quantity;

import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Temperatures in texts, which are written in degrees Celsius, in the user's degrees. What stands
 * beside its degrees Fahrenheit is in both already.
 */
public final class Degrees {
  private static final String NUMBER = "([-−]?\\d{1,4}(?:[.,]\\d+)?)";
  private static final Pattern CELSIUS =
      Pattern.compile(
          "°F \\([^)]*\\)|°C \\([^)]*°F\\)|(?<![\\p{L}\\d.,])"
              + NUMBER
              + "(?:( ?°C)?(?: to | ?– ?| ?- ?| and )"
              + NUMBER
              + ")? ?°C(?! \\([^)]*°F\\))");

  /** From here on the trade says a round limit as a round one: 450 °C is its 840 °F. */
  private static final int ROUND_FROM = 150;

  private static final int ROUND = 50;

  private Degrees() {}

  /** The text with its temperatures in these units. */
  public static String inUnits(String text, UnitStyle units) {
    return units == UnitStyle.METRIC
        ? text
        : CELSIUS.matcher(text).replaceAll(found -> Matcher.quoteReplacement(said(found, units)));
  }

  private static String said(MatchResult found, UnitStyle units) {
    if (found.group(1) == null) {
      return found.group();
    }
    double first = number(found.group(1));
    if (found.group(3) == null) {
      return first >= ROUND_FROM && first % ROUND == 0
          ? tens(first) + " °F"
          : units.temperature(first);
    }
    double last = number(found.group(3));
    String between = found.group().contains(" and ") ? " and " : " to ";
    return isRound(first) && isRound(last)
        ? tens(first) + between + tens(last) + " °F"
        : units.temperature(first).replace(" °F", "") + between + units.temperature(last);
  }

  /** A range of heat in these units: by colour and by paint it is not judged to a degree. */
  public static String heat(double fromC, double toC, UnitStyle units) {
    String from = heat(fromC, units);
    return from.substring(0, from.indexOf(' ')) + " to " + heat(toC, units);
  }

  /** The same of one heat. */
  public static String heat(double celsius, UnitStyle units) {
    return units == UnitStyle.METRIC ? Math.round(celsius) + " °C" : tens(celsius) + " °F";
  }

  private static boolean isRound(double celsius) {
    return celsius >= ROUND_FROM && celsius % 10 == 0;
  }

  private static long tens(double celsius) {
    return Math.round(fahrenheit(celsius) / 10) * 10;
  }

  private static double fahrenheit(double celsius) {
    return celsius * 9 / 5 + 32;
  }

  private static double number(String digits) {
    return Double.parseDouble(digits.replace('−', '-').replace(',', '.'));
  }
}
