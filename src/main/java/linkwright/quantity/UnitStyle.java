package linkwright.quantity;

import java.util.OptionalInt;

/** How amounts are written for the user. */
public enum UnitStyle {
  /** Millimetres, metres from one metre up, grams. */
  METRIC {
    @Override
    public String length(double mm) {
      return Math.abs(mm) >= 1000
          ? Decimals.upTo(mm / 1000, 3) + " m"
          : Decimals.upTo(mm, small(mm, 10)) + " mm";
    }

    @Override
    public String wire(double mm) {
      return Decimals.upTo(mm, 3) + " mm";
    }

    @Override
    public String mass(double grams) {
      return Decimals.upTo(grams, Math.abs(grams) < 1 ? 3 : small(grams, 100)) + " g";
    }
  },
  /** Inches, wire of a gauge by its American number first, pennyweights. */
  INCH {
    @Override
    public String length(double mm) {
      double inches = mm / 25.4;
      return Decimals.upTo(inches, Math.abs(inches) < 10 ? 3 : small(inches, 100)) + " in";
    }

    @Override
    public String wire(double mm) {
      double inches = mm / 25.4;
      String size = Decimals.upTo(inches, inches < 0.03 ? 4 : 3) + " in";
      if (mm <= 0) {
        return size;
      }
      OptionalInt number = Gauge.awgWithin(mm, 0.01);
      OptionalInt near = Gauge.awgWithin(mm, 0.025);
      if (number.isPresent()) {
        return aught(number.getAsInt()) + " AWG (" + size + ")";
      }
      return near.isPresent() ? size + " (near " + aught(near.getAsInt()) + " AWG)" : size;
    }

    @Override
    public String mass(double grams) {
      double pennyweights = grams / 1.55517384;
      return Decimals.upTo(pennyweights, Math.abs(pennyweights) < 1 ? 3 : small(pennyweights, 100))
          + " dwt";
    }

    @Override
    public String wireExample(double mm) {
      return aught((int) Math.round(Gauge.nearestAwg(mm))) + " AWG";
    }

    @Override
    public String lengthExample(double mm) {
      double inches = mm / 25.4;
      return Decimals.upTo(inches, Math.max(0, 1 - (int) Math.floor(Math.log10(inches)))) + " in";
    }

    @Override
    public String lengthUnit() {
      return "in";
    }

    @Override
    public String gaugeOrLengthUnit() {
      return "AWG";
    }

    @Override
    public String massUnit() {
      return "dwt";
    }
  };

  /** A temperature, whole degrees: Celsius, or Fahrenheit for those who work in inches. */
  public String temperature(double celsius) {
    return this == INCH ? Math.round(celsius * 9 / 5 + 32) + " °F" : Math.round(celsius) + " °C";
  }

  /** A pull: newtons, or pounds of force (NIST Handbook 44, Appendix C: 4.448222 N). */
  public String pull(double newtons) {
    if (this == INCH) {
      double pounds = newtons / 4.4482216;
      return pounds > 0 && pounds < 0.05
          ? "below 0.1 lbf"
          : Decimals.upTo(pounds, newtons < 45 ? 1 : 0) + " lbf";
    }
    return newtons > 0 && newtons < 1 ? "below 1 N" : Math.round(newtons) + " N";
  }

  /** A stress: megapascals, or thousands of pounds of force per square inch. */
  public String stress(double mpa) {
    return Decimals.upTo(mpa / ksi(), this == INCH ? 1 : 0) + (this == INCH ? " ksi" : " MPa");
  }

  /** Megapascals in the unit of a stress. */
  private double ksi() {
    return this == INCH ? 6.894757 : 1;
  }

  /** A stress with its doubt. */
  public String stress(double mpa, double doubtMpa) {
    double one = ksi();
    int places = this == INCH ? 1 : 0;
    return Decimals.upTo(mpa / one, places)
        + " ± "
        + Decimals.upTo(doubtMpa / one, places)
        + (this == INCH ? " ksi" : " MPa");
  }

  /** A length as it stands in a field, to 0.01 mm or finer, whatever {@link #length} rounds to. */
  public String typed(double mm) {
    return this == INCH ? Decimals.upTo(mm / 25.4, 4) + " in" : Decimals.upTo(mm, 2) + " mm";
  }

  /** A length as it stands in a field, exactly: what one sum gave goes into the next. */
  public String exact(double mm) {
    return this == INCH ? Decimals.upTo(mm / 25.4, 4) + " in" : Decimals.upTo(mm, 3) + " mm";
  }

  /** A length that is to be enough: up to the next millimetre, or the next eighth of an inch. */
  public String enough(double mm) {
    double up = this == INCH ? 25.4 / 8 : 1;
    return length(Math.ceil(mm / up) * up);
  }

  /** A wire's thickness as an example of what to type: the nearest gauge for its users. */
  public String wireExample(double mm) {
    return wire(mm);
  }

  /** A length as an example of what to type; in inches with two digits, as one says it. */
  public String lengthExample(double mm) {
    return Decimals.upTo(mm, 3) + " mm";
  }

  /** The unit of a length that was typed without one. */
  public String lengthUnit() {
    return "mm";
  }

  /** The unit of a wire's thickness that was typed as a whole number. */
  public String gaugeOrLengthUnit() {
    return lengthUnit();
  }

  /** The unit of a mass that was typed without one. */
  public String massUnit() {
    return "g";
  }

  /**
   * A length that is forecast, rounded by its doubt: {@code 457 ± 17 mm}. A setting is never
   * written so.
   *
   * @param doubtMm one standard deviation, mm; 0 or less for a length without any
   */
  public final String about(double mm, double doubtMm) {
    if (!(doubtMm > 0)) {
      return length(mm);
    }
    String unit = length(mm);
    double scale = scale(unit);
    return Decimals.withDoubt(mm / scale, doubtMm / scale) + unit.substring(unit.indexOf(' '));
  }

  /** The same length without its doubt, where that stands beside it already. */
  public final String roundedBy(double mm, double doubtMm) {
    if (!(doubtMm > 0)) {
      return length(mm);
    }
    String unit = length(mm);
    double scale = scale(unit);
    return Decimals.roundedBy(mm / scale, doubtMm / scale) + unit.substring(unit.indexOf(' '));
  }

  private static double scale(String written) {
    return written.endsWith(" in") ? 25.4 : written.endsWith(" m") ? 1000 : 1;
  }

  /** A length for reading, with its unit. */
  public abstract String length(double mm);

  /** A wire's thickness, with its unit; for those who work in inches its gauge first, if any. */
  public abstract String wire(double mm);

  /** A mass, with its unit. */
  public abstract String mass(double grams);

  private static int small(double value, double below) {
    return Math.abs(value) < below ? 2 : 1;
  }

  private static String aught(int number) {
    return number > 0 ? Integer.toString(number) : (1 - number) + "/0";
  }
}
