package linkwright.files.yaml;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import linkwright.quantity.Count;
import linkwright.quantity.Nearest;
import linkwright.quantity.Read;

/** Readers for the plain values of files, in the manner of the quantities' own. */
public final class Values {
  private static final Pattern NUMBER = Pattern.compile("[-+]?\\d+(\\.\\d+)?([eE][-+]?\\d+)?");

  /** The short word that names a thing in files, as a regular expression. */
  public static final String ID_SHAPE = "[a-z0-9]+(-[a-z0-9]+)*";

  private static final Pattern ID = Pattern.compile(ID_SHAPE);

  private Values() {}

  /** Yes or no, as YAML writes them. */
  public static Read<Boolean> flag(String text) {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "true", "yes", "on" -> Read.good(true);
      case "false", "no", "off" -> Read.good(false);
      default -> Read.bad("\"" + text + "\" is neither true nor false.");
    };
  }

  /** A number without a unit; its key names the unit. */
  public static Read<Double> number(String text) {
    if (!NUMBER.matcher(text).matches()) {
      String point = text.replace(',', '.');
      return Read.bad(
          NUMBER.matcher(point).matches()
              ? "\"" + text + "\" has a comma: write it with a point, " + point + "."
              : "\"" + text + "\" is not a number. The key names its unit; write 10.36.");
    }
    double number = Double.parseDouble(text);
    return Double.isFinite(number)
        ? Read.good(number)
        : Read.bad("\"" + text + "\" is too large a number.");
  }

  /** A number of 0 or more. */
  public static Read<Double> notNegative(String text) {
    return number(text)
        .flatMap(
            number ->
                number >= 0
                    ? Read.good(number)
                    : Read.bad("\"" + text + "\" is less than nothing; write 0 or more."));
  }

  /** A number above 0. */
  public static Read<Double> aboveNothing(String text) {
    return number(text)
        .flatMap(
            number ->
                number > 0 ? Read.good(number) : Read.bad("\"" + text + "\" must be above 0."));
  }

  /** A whole number of 1 or more. */
  public static Read<Integer> whole(String text) {
    Read<Integer> read = Count.read(text, 1, Integer.MAX_VALUE);
    return read.isGood() ? read : Read.bad("\"" + text + "\" is not a whole number of 1 or more.");
  }

  /** The short word that names a thing in files. */
  public static Read<String> id(String text) {
    return ID.matcher(text).matches()
        ? Read.good(text)
        : Read.bad(
            "\""
                + text
                + "\" cannot be a name in files. Small letters, digits and hyphens, such"
                + " as hook-link.");
  }

  /** One of a few known words. */
  public static <T> Function<String, Read<T>> word(
      Function<String, Optional<T>> known, List<String> words) {
    return text ->
        known
            .apply(text)
            .map(Read::good)
            .orElseGet(
                () ->
                    Read.bad(
                        "\""
                            + text
                            + "\" is not known here. "
                            + Nearest.of(text, words)
                                .map(near -> "Did you mean " + near + "?")
                                .orElse("One of: " + String.join(", ", words) + ".")));
  }
}
