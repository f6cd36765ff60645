package linkwright.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * One unit of a kind of amount: the names people write for it, the commonest first, and how many of
 * the unit used inside it makes.
 */
record Unit(double inside, List<String> names) {
  static final String LENGTH = "a unit of length";
  static final String MASS = "a unit of weight";
  static final String TIME = "a unit of time";

  /** Exact: the international inch is 25.4 mm. Source: NIST Handbook 44, Appendix C. */
  static final List<Unit> OF_LENGTH =
      List.of(
          unit(1, "mm", "millimetre", "millimetres", "millimeter", "millimeters"),
          unit(10, "cm", "centimetre", "centimetres", "centimeter", "centimeters"),
          unit(1e6, "km", "kilometre", "kilometres", "kilometer", "kilometers"),
          unit(1000, "m", "metre", "metres", "meter", "meters"),
          unit(25.4, "in", "in.", "inch", "inches", "\"", "″", "”", "“", "''", "’’", "′′"),
          unit(304.8, "ft", "ft.", "foot", "feet"),
          unit(0.0254, "thou"));

  /**
   * Exact: grain 64.79891 mg, pennyweight 24 grains, troy ounce 480 grains, ounce 28.349523125 g,
   * carat 0.2 g. Source: NIST Handbook 44, Appendix C.
   */
  static final List<Unit> OF_MASS =
      List.of(
          unit(1, "g", "gram", "grams", "gramme", "grammes", "gm"),
          unit(0.001, "mg", "milligram", "milligrams"),
          unit(1000, "kg", "kilogram", "kilograms", "kilo"),
          unit(1.55517384, "dwt", "pennyweight", "pennyweights", "pwt"),
          unit(31.1034768, "ozt", "oz t", "troy oz", "troy ounce", "troy ounces"),
          unit(0.06479891, "gr", "grain", "grains"),
          unit(
              28.349523125,
              "oz av",
              "oz avdp",
              "oz av.",
              "avoirdupois ounce",
              "avoirdupois ounces"),
          unit(0.2, "ct", "carat", "carats"));

  /** Precious metal is sold by the troy ounce, all else by the common one: these say neither. */
  static final List<String> EITHER_OUNCE = List.of("oz", "oz.", "ounce", "ounces");

  /** Seconds. */
  static final List<Unit> OF_TIME =
      List.of(
          unit(1, "s", "sec", "secs", "second", "seconds"),
          unit(60, "min", "mins", "minute", "minutes"),
          unit(3600, "h", "hr", "hrs", "hour", "hours"));

  private static Unit unit(double inside, String... names) {
    return new Unit(inside, List.of(names));
  }

  static Optional<Unit> named(String name, List<Unit> units) {
    String wanted = name.strip().toLowerCase(Locale.ROOT);
    return units.stream().filter(unit -> unit.names().contains(wanted)).findFirst();
  }

  /** Of which kind a name is a unit, whatever was asked for; empty for one of none. */
  static Optional<String> kindOf(String name) {
    return Map.of(LENGTH, OF_LENGTH, MASS, OF_MASS, TIME, OF_TIME).entrySet().stream()
        .filter(kind -> named(name, kind.getValue()).isPresent())
        .map(Map.Entry::getKey)
        .findFirst();
  }

  /** All names, each unit's commonest first, so that a tie falls on a common one. */
  static List<String> names(List<Unit> units) {
    List<String> names = new ArrayList<>();
    units.forEach(unit -> names.add(unit.names().get(0)));
    units.forEach(unit -> names.addAll(unit.names().subList(1, unit.names().size())));
    return List.copyOf(names);
  }

  /** The short name to write for a name that was nearly right. */
  static Optional<String> meant(String name, List<Unit> units) {
    return Nearest.of(name, names(units))
        .flatMap(known -> named(known, units))
        .map(unit -> unit.names().get(0));
  }
}
