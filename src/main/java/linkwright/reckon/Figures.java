package linkwright.reckon;

import java.util.Locale;
import linkwright.quantity.Decimals;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Metal;

/** Bare numbers in sentences. */
final class Figures {
  private Figures() {}

  /** Four digits that count, never as a power of ten; more where the whole part has more. */
  static String number(double value) {
    return Decimals.counting(value, 4);
  }

  /** A metal's name inside a sentence. */
  static String named(Metal metal) {
    return inside(metal.name());
  }

  /** A name at the beginning of a sentence. */
  static String begun(String name) {
    return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
  }

  /** A name inside a sentence: sterling silver, but CuZn30. */
  static String inside(String name) {
    boolean word =
        name.length() > 1
            && Character.isUpperCase(name.charAt(0))
            && Character.isLowerCase(name.charAt(1))
            && name.split(" ", 2)[0].chars().skip(1).allMatch(Character::isLowerCase);
    return word ? name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1) : name;
  }

  /** A share as a percentage, to a tenth. */
  static String percent(double share) {
    return Decimals.percent(share, 1);
  }

  /** A force: pounds; or newtons, and beside them what that is as a weight hung on it. */
  static String force(double newtons, UnitStyle units) {
    if (units == UnitStyle.INCH) {
      return units.pull(newtons);
    }
    return Decimals.counting(newtons, 3)
        + " N ("
        + Decimals.counting(newtons / 9.80665, 2)
        + " kg hung on it)";
  }

  /** So many of something. */
  static String count(long number, String one) {
    return number + " " + one + (number == 1 ? "" : one.endsWith("s") ? "es" : "s");
  }
}
