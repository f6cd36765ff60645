package linkwright.reckon;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import linkwright.quantity.Decimals;
import linkwright.quantity.Read;

/** Reads numbers that are neither a length nor a mass: a stress, a density. */
final class PlainNumbers {
  private static final Pattern NUMBER = Pattern.compile("([+-]?\\d+(?:[.,]\\d+)?)\\s*(.*)");

  /** NIST Special Publication 811, Appendix B.8. */
  private static final double MPA_IN_KSI = 6.894757;

  private PlainNumbers() {}

  /** A stress in MPa, more than nothing; typed in MPa, which may be left out, or in ksi. */
  static Read<Double> stressMpa(String typed) {
    String bare = typed.strip().toLowerCase(Locale.ROOT);
    if (bare.endsWith("ksi")) {
      String number = bare.substring(0, bare.length() - 3);
      return amount(number, "stress", "18 ksi", List.of(""), 1e5).map(ksi -> ksi * MPA_IN_KSI);
    }
    return amount(typed, "stress", "124 MPa", List.of("", "mpa", "n/mm2", "n/mm²"), 1e5);
  }

  /** A density in g/cm³, more than nothing; the unit may be left out. */
  static Read<Double> density(String typed) {
    return amount(
        typed, "density", "9.6 g/cm3", List.of("", "g/cm3", "g/cm³", "g/cc", "g/ml"), 100);
  }

  private static Read<Double> amount(
      String typed, String what, String example, List<String> units, double most) {
    Matcher matcher = NUMBER.matcher(typed.replace('−', '-'));
    if (!matcher.matches() || !units.contains(matcher.group(2).toLowerCase(Locale.ROOT))) {
      return Read.bad("“" + typed + "” is not a " + what + ". Write it like " + example + ".");
    }
    double value = Decimals.read(matcher.group(1)).orElseThrow();
    if (!(value > 0)) {
      return Read.bad("“" + typed + "” is no " + what + ": it has to be more than 0.");
    }
    return value > most
        ? Read.bad("“" + typed + "” is more than any metal has. Write it like " + example + ".")
        : Read.good(value);
  }
}
