package linkwright.quantity;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a wire size that is written as a gauge number. */
final class WrittenGauge {
  private static final Pattern NUMBER_FIRST =
      Pattern.compile("#?(-?\\d+(?:[.,]\\d+)?)(/0)? ?([a-z&+. ]+)");
  private static final Pattern NAME_FIRST =
      Pattern.compile("([a-z&+. ]+?) ?#?(-?\\d+(?:[.,]\\d+)?)(/0)?");

  private WrittenGauge() {}

  /** The diameter in mm or what is wrong; empty when no gauge is written here at all. */
  static Optional<Read<Double>> read(String typed) {
    String text = Written.tidy(typed).toLowerCase(Locale.ROOT);
    Matcher numberFirst = NUMBER_FIRST.matcher(text);
    if (numberFirst.matches()) {
      boolean aught = numberFirst.group(2) != null;
      return of(typed, numberFirst.group(3), numberFirst.group(1), aught);
    }
    Matcher nameFirst = NAME_FIRST.matcher(text);
    if (nameFirst.matches()) {
      return of(typed, nameFirst.group(1), nameFirst.group(2), nameFirst.group(3) != null);
    }
    return Optional.empty();
  }

  private static Optional<Read<Double>> of(
      String typed, String name, String digits, boolean aught) {
    // Older tables write 2/0 as 00, 7/0 as 0000000.
    boolean noughts = !aught && digits.matches("0+");
    boolean nought = aught || noughts;
    double number = noughts ? digits.length() : Double.parseDouble(digits.replace(',', '.'));
    return switch (name.replaceAll("[ .]", "")) {
      case "awg", "b&s", "b+s", "bands" -> Optional.of(awg(typed, number, nought));
      case "swg" -> Optional.of(swg(typed, number, nought));
      case "ga", "gauge", "gauges" ->
          Optional.of(whichGauge(digits + (aught ? "/0" : ""), nought ? 1 - number : number));
      default -> misspelt(name, digits);
    };
  }

  private static Optional<Read<Double>> misspelt(String name, String digits) {
    return Nearest.of(name, List.of("AWG", "SWG", "B&S"))
        .map(
            gauge ->
                Read.bad(
                    Written.quoted(name)
                        + " is not a gauge. Did you mean "
                        + digits
                        + " "
                        + gauge
                        + "?"));
  }

  private static Read<Double> awg(String typed, double number, boolean aught) {
    // 1/0, 2/0, 3/0, 4/0 are the numbers 0, −1, −2, −3 of the formula.
    double n = aught ? 1 - number : number;
    boolean known = n >= Gauge.THICKEST_AWG && n <= Gauge.THINNEST_AWG && isOne(number, aught);
    return known ? Read.good(Gauge.awgMm(n)) : noSuch(typed);
  }

  private static Read<Double> swg(String typed, double number, boolean aught) {
    double n = aught ? 1 - number : number;
    boolean known = n == Math.rint(n) && Math.abs(n) < 100 && isOne(number, aught);
    Read<Double> mm = known ? Gauge.swgMm((int) n) : noSuch(typed);
    return mm.isGood() ? mm : noSuch(typed);
  }

  /** There is no 0/0, and a number without noughts is none below 0. */
  private static boolean isOne(double number, boolean aught) {
    return aught ? number >= 1 : number >= 0;
  }

  private static Read<Double> noSuch(String typed) {
    return Read.bad(
        Written.quoted(typed)
            + " is not in the gauge's list. Write a number such as 19 AWG or 19 SWG,"
            + " or the size, as in 0.9 mm.");
  }

  /** Asks back, with both sizes; n is 0 for 1/0, −1 for 2/0. */
  private static Read<Double> whichGauge(String digits, double n) {
    String sizes = "";
    if (n >= Gauge.THICKEST_AWG && n <= Gauge.THINNEST_AWG) {
      String awg = UnitStyle.METRIC.wire(Gauge.awgMm(n));
      String swg =
          n == Math.rint(n) && Gauge.swgMm((int) n) instanceof Read.Good<Double> mm
              ? ", " + digits + " SWG is " + UnitStyle.METRIC.wire(mm.value())
              : "";
      sizes = " " + digits + " AWG is " + awg + swg + ".";
    }
    return Read.bad(
        digits
            + " of which gauge? Write "
            + digits
            + " AWG (also called B&S, usual in America) or "
            + digits
            + " SWG (British)."
            + sizes);
  }
}
