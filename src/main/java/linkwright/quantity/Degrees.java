package linkwright.quantity;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Temperatures in texts, which are written in degrees Celsius, in the user's degrees. What stands
 * in brackets behind degrees Fahrenheit is in both already.
 */
public final class Degrees {
  private static final Pattern CELSIUS =
      Pattern.compile("°F \\([^)]*\\)|(\\d{1,4})(?: ?(to|–|-) ?(\\d{1,4}))? ?°C");

  private Degrees() {}

  /** The text with its temperatures in these units. */
  public static String inUnits(String text, UnitStyle units) {
    if (units == UnitStyle.METRIC) {
      return text;
    }
    return CELSIUS
        .matcher(text)
        .replaceAll(
            found -> {
              if (found.group(1) == null) {
                return Matcher.quoteReplacement(found.group());
              }
              String last =
                  units.temperature(
                      number(found.group(3) == null ? found.group(1) : found.group(3)));
              return Matcher.quoteReplacement(
                  found.group(3) == null ? last : first(found.group(1), units) + " to " + last);
            });
  }

  private static String first(String celsius, UnitStyle units) {
    return units.temperature(number(celsius)).replace(" °F", "");
  }

  private static double number(String digits) {
    return Double.parseDouble(digits);
  }
}
