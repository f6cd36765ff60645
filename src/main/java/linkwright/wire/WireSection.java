package linkwright.wire;

import java.util.List;
import linkwright.quantity.Length;
import linkwright.quantity.Read;

/**
 * A wire cut across, with its sizes.
 *
 * @param section its shape
 * @param widthMm its width, mm; the diameter of round wire
 * @param thicknessMm its thickness, mm; only strip has one of its own, the others' follows from
 *     their width whatever is given
 */
public record WireSection(Section section, double widthMm, double thicknessMm) {
  /** Sizes that are not above 0 are the programmer's fault. */
  public WireSection {
    Domain.above0("widthMm", widthMm);
    thicknessMm =
        switch (section) {
          case ROUND, SQUARE -> widthMm;
          case HALF_ROUND -> widthMm / 2;
          case STRIP -> Domain.above0("thicknessMm", thicknessMm);
        };
  }

  /** Round wire. */
  public static WireSection round(double diameterMm) {
    return new WireSection(Section.ROUND, diameterMm, diameterMm);
  }

  /** Flat wire or sheet cut to strip. */
  public static WireSection strip(double widthMm, double thicknessMm) {
    return new WireSection(Section.STRIP, widthMm, thicknessMm);
  }

  /**
   * Reads the size of a wire: {@code 0.9 mm} or {@code 19 AWG}; for strip its width and thickness,
   * {@code 3 mm x 1 mm} or {@code 3 x 1 mm}.
   */
  public static Read<WireSection> read(Section section, String typed) {
    if (section == Section.STRIP) {
      return readStrip(typed);
    }
    return Length.readWire(typed).map(width -> new WireSection(section, width.mm(), width.mm()));
  }

  /**
   * Area of the section.
   *
   * <p>Round πd²/4, square s², half round of width d πd²/8, strip w·t.
   *
   * @return mm², above 0
   * @throws IllegalArgumentException if the area overflows
   */
  public double areaMm2() {
    double area =
        switch (section) {
          case ROUND -> Math.PI * widthMm * widthMm / 4;
          case SQUARE -> widthMm * widthMm;
          case HALF_ROUND -> Math.PI * widthMm * widthMm / 8;
          case STRIP -> widthMm * thicknessMm;
        };
    return Domain.result("areaMm2", area);
  }

  private static Read<WireSection> readStrip(String typed) {
    String[] sides = typed.split("(?i)\\s*(?:[x×]|\\bby\\b)\\s*", -1);
    if (sides.length != 2) {
      return Read.bad(
          "“"
              + typed.strip()
              + "” is not a strip. Write its width and its thickness, as in 3 mm x 1 mm.");
    }
    Read<Length> thickness = Length.readSize(sides[1]);
    Read<Length> width = Length.readSize(sides[0]);
    if (!width.isGood() && sides[0].matches("[\\d.,/ ]+")) {
      // 3 x 1 mm: one unit serves both.
      width = Length.readSize(sides[0] + " " + sides[1].replaceFirst("^[\\d.,/ ]+", ""));
    }
    return Read.all(List.of(width, thickness))
        .map(both -> strip(both.get(0).mm(), both.get(1).mm()));
  }
}
