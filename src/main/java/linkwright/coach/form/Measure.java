package linkwright.coach.form;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import linkwright.quantity.BareNumber;
import linkwright.quantity.Decimals;
import linkwright.quantity.SaidIn;
import linkwright.quantity.UnitStyle;

/** What a field takes, and so the unit that a number typed without one has. */
public enum Measure {
  /** Words. */
  WORDS,
  /** A number that has no unit: pieces, money. */
  NUMBER,
  /** A length, or several. */
  LENGTH,
  /** The thickness of wire, or several. */
  WIRE,
  /** A mass. */
  MASS,
  /** A share of a whole. */
  SHARE,
  /** A stretch of time. */
  TIME;

  private static final Pattern EXAMPLE = Pattern.compile("\\{(mm|wire|g):([0-9.]+)\\}");

  /** What was typed, with the user's unit where a number came without one. */
  public String complete(String typed, UnitStyle units) {
    return switch (this) {
      case WORDS, NUMBER -> typed;
      case LENGTH -> BareNumber.complete(typed, units.lengthUnit());
      case WIRE ->
          BareNumber.complete(
              typed, BareNumber.isWhole(typed) ? units.gaugeOrLengthUnit() : units.lengthUnit());
      case MASS -> BareNumber.complete(typed, units.massUnit());
      case SHARE -> BareNumber.asShare(typed);
      case TIME -> BareNumber.complete(typed, "min");
    };
  }

  /** The text with its examples, such as {@code {mm:38}}, in the user's units. */
  public static String inUnits(String text, UnitStyle units) {
    Matcher example = EXAMPLE.matcher(text);
    return example.replaceAll(
        found -> {
          double amount = Decimals.read(found.group(2)).orElseThrow();
          return Matcher.quoteReplacement(
              switch (found.group(1)) {
                case "wire" -> units.wireExample(amount);
                case "mm" -> units.lengthExample(amount);
                default -> SaidIn.units(found.group(2) + " " + found.group(1), units);
              });
        });
  }

  /** The text with amounts that were written in metric units in the user's. */
  public static String translated(String text, UnitStyle units) {
    return SaidIn.units(text, units);
  }
}
