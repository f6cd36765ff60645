package linkwright.quantity;

import java.util.List;

/**
 * A length.
 *
 * @param mm millimetres, finite and not negative
 */
public record Length(double mm) {
  /** Ten kilometres: more wire than any bench holds, and small enough that nothing overflows. */
  private static final double MOST_MM = 1e7;

  /** No wire is thicker than the rods that go to the drawplate; our own choice. */
  private static final double THICKEST_MM = 30;

  private static final String EXAMPLE = "0.9 mm";

  /** A length below nothing, or none at all, is the programmer's fault. */
  public Length {
    if (!(mm >= 0 && mm <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException("mm must be finite and not negative, not " + mm);
    }
  }

  /**
   * Reads a length with its unit: {@code 0.9 mm}, {@code 0,9 mm}, {@code 1 1/2 in}, {@code 16"},
   * {@code 9 cm}, {@code 1 m}, {@code 2 ft}. A comma between digits is a decimal sign; there are no
   * thousands separators. Nothing (0 mm) is a length.
   */
  public static Read<Length> read(String typed) {
    return Written.read(typed, EXAMPLE).flatMap(written -> read(written, typed, "A length"));
  }

  /** Reads a length that has to be more than nothing, such as a former or a blank. */
  public static Read<Length> readSize(String typed) {
    return read(typed).flatMap(length -> moreThanNothing(length, typed));
  }

  /**
   * Reads the size of a wire: a length, or a gauge number with its gauge, {@code 19 AWG}, {@code 19
   * B&S} or {@code 19 SWG}. The gauge is turned into millimetres without rounding.
   */
  public static Read<Length> readWire(String typed) {
    return WrittenGauge.read(typed)
        .map(gauge -> gauge.map(Length::new))
        .orElseGet(() -> readThickness(typed));
  }

  /** Reads how wide a wire is, as broad as strip may be: a length, or a gauge number as above. */
  public static Read<Length> readWidth(String typed) {
    return WrittenGauge.read(typed)
        .map(gauge -> gauge.map(Length::new))
        .orElseGet(() -> readSize(typed));
  }

  private static Read<Length> readThickness(String typed) {
    return readSize(typed).flatMap(length -> asThickness(length, typed));
  }

  /** Refuses what is as thick as no wire, and asks after the unit if another would make it one. */
  private static Read<Length> asThickness(Length length, String typed) {
    if (length.mm() <= THICKEST_MM) {
      return Read.good(length);
    }
    String mm =
        Written.read(typed, EXAMPLE)
            .flatMap(written -> readSize(written.digits() + " mm"))
            .found()
            .filter(meant -> meant.mm() <= THICKEST_MM)
            .map(meant -> "Did you mean " + Decimals.upTo(meant.mm(), 3) + " mm?")
            .orElse("Check the number.");
    return Read.bad(Written.quoted(typed) + " is thicker than any wire is. " + mm);
  }

  /**
   * Reads lengths one after the other: {@code 412 mm,96 mm}. A comma after a unit separates, a
   * comma between digits is a decimal sign; a semicolon always separates. Every item carries its
   * unit. Everything wrong is told at once.
   */
  public static Read<List<Length>> readList(String typed) {
    return Read.all(Items.of(typed).stream().map(Length::read).toList());
  }

  /** Reads wire sizes one after the other, such as the holes of a drawplate. */
  public static Read<List<Length>> readWireList(String typed) {
    return Read.all(Items.of(typed).stream().map(Length::readWire).toList());
  }

  private static Read<Length> read(Written written, String typed, String noun) {
    if (written.rest().matches("['’′]")) {
      return Read.bad(
          "A single " + written.rest() + " may be read as feet or as inches. Write ft or in.");
    }
    return written
        .in(Unit.OF_LENGTH, Unit.LENGTH, EXAMPLE)
        .flatMap(mm -> Written.withinReason(mm, typed, noun, MOST_MM))
        .map(Length::new);
  }

  private static Read<Length> moreThanNothing(Length length, String typed) {
    return length.mm() > 0
        ? Read.good(length)
        : Read.bad(Written.quoted(typed) + " is nothing. It has to be more than 0 mm.");
  }
}
