package linkwright.wire;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import linkwright.quantity.Length;
import linkwright.quantity.Read;
import linkwright.quantity.UnitStyle;

/**
 * A wire cut across, with its sizes.
 *
 * @param section its shape
 * @param widthMm its width, mm; the diameter of round wire
 * @param thicknessMm its thickness, mm; strip has one of its own and half-round a lower one than
 *     half its width where that is given, else it follows from the width
 */
public record WireSection(Section section, double widthMm, double thicknessMm) {
  private static final double SAME_MM = 0.0005;

  /** Slices of half-round wire. */
  private static final int SLICES = 2000;

  private static final Pattern WORD_FIRST =
      Pattern.compile("(?i)\\s*(half[ -]?round|D|square|strip|round)\\b\\s*(\\S.*?)\\s*");
  private static final Pattern WORD_LAST =
      Pattern.compile("(?i)\\s*(\\S.*?)\\s+(half[ -]?round|D|square|strip|round)\\s*");
  private static final Pattern BY = Pattern.compile("(?i)\\s*(?:[x×]|\\bby\\b)\\s*");

  /** Sizes that are not above 0 are the programmer's fault. */
  public WireSection {
    Domain.above0("widthMm", widthMm);
    thicknessMm =
        switch (section) {
          case ROUND, SQUARE -> widthMm;
          case HALF_ROUND -> thicknessMm > 0 ? Math.min(thicknessMm, widthMm / 2) : widthMm / 2;
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
   * {@code 3 mm x 1 mm}, {@code 3 x 1 mm} or {@code 12 AWG x 18 AWG}.
   */
  public static Read<WireSection> read(Section section, String typed) {
    if (section == Section.ROUND && namesSection(typed)) {
      return read(typed);
    }
    boolean twoSizes = BY.matcher(typed).find();
    if (section == Section.STRIP || (section == Section.HALF_ROUND && twoSizes)) {
      return readTwo(section, typed);
    }
    return Length.readWire(typed).map(width -> new WireSection(section, width.mm(), width.mm()));
  }

  /**
   * Reads wire of any section: round by its size alone, the others with their word, {@code
   * half-round 2 mm x 1 mm}, {@code D 2 mm}, {@code square 1.5 mm}, {@code strip 3 x 1 mm}.
   */
  public static Read<WireSection> read(String typed) {
    Matcher first = WORD_FIRST.matcher(typed);
    if (first.matches()) {
      return read(named(first.group(1)), first.group(2));
    }
    Matcher last = WORD_LAST.matcher(typed);
    return last.matches() ? read(named(last.group(2)), last.group(1)) : read(Section.ROUND, typed);
  }

  /** Whether the text names its section: {@code half-round 2 mm x 1 mm}. */
  public static boolean namesSection(String typed) {
    return WORD_FIRST.matcher(typed).matches() || WORD_LAST.matcher(typed).matches();
  }

  private static Section named(String word) {
    return switch (word.toLowerCase(Locale.ROOT).charAt(0)) {
      case 'h', 'd' -> Section.HALF_ROUND;
      case 'r' -> Section.ROUND;
      default -> word.equalsIgnoreCase("strip") ? Section.STRIP : Section.SQUARE;
    };
  }

  /** Whether the other is the same wire, to half a thousandth of a millimetre. */
  public boolean isLike(WireSection other) {
    return section == other.section
        && Math.abs(widthMm - other.widthMm) < SAME_MM
        && Math.abs(thicknessMm - other.thicknessMm) < SAME_MM;
  }

  /** As it is read back: round by its size alone. */
  public String said(UnitStyle units) {
    return switch (section) {
      case ROUND -> units.wire(widthMm);
      case SQUARE -> section.word() + " " + units.wire(widthMm);
      case HALF_ROUND, STRIP ->
          section.word() + " " + units.length(widthMm) + " x " + units.length(thicknessMm);
    };
  }

  /** Wire of the same shape, so thick, mm. */
  public WireSection asThickAs(double mm) {
    return new WireSection(section, widthMm * mm / thicknessMm, mm);
  }

  /**
   * Area of the section.
   *
   * <p>Round πd²/4, square s², half round of width d πd²/8, a lower half round the segment of a
   * circle over its width, strip w·t.
   *
   * @return mm², above 0
   * @throws IllegalArgumentException if the area overflows
   */
  public double areaMm2() {
    double area =
        switch (section) {
          case ROUND -> Math.PI * widthMm * widthMm / 4;
          case SQUARE -> widthMm * widthMm;
          case HALF_ROUND -> segmentMm2();
          case STRIP -> widthMm * thicknessMm;
        };
    return Domain.result("areaMm2", area);
  }

  /**
   * Plastic modulus for bending over its flat side: yield stress times it is the fully plastic
   * moment.
   *
   * <p>Round d³/6, square s³/4, strip w·t²/4, half-round ∫|y − m| dA about the line that halves its
   * area, by the midpoint rule; 0.354 r³ for the half disc. Source: any text on plastic design
   * (from memory); held by independent sums in the tests.
   *
   * @return mm³, above 0
   */
  public double plasticMm3() {
    return switch (section) {
      case ROUND -> Math.pow(widthMm, 3) / 6;
      case SQUARE -> Math.pow(widthMm, 3) / 4;
      case STRIP -> widthMm * thicknessMm * thicknessMm / 4;
      case HALF_ROUND -> {
        double middle = middleMm();
        double sum = 0;
        for (int i = 0; i < SLICES; i++) {
          sum += Math.abs(sliceMm(i) - middle) * chordMm(sliceMm(i)) * thicknessMm / SLICES;
        }
        yield sum;
      }
    };
  }

  /** The line that halves its area, from its inner side, flat side in, mm. */
  public double middleMm() {
    if (section != Section.HALF_ROUND) {
      return thicknessMm / 2;
    }
    double half = areaMm2() / 2;
    double below = 0;
    for (int i = 0; i < SLICES; i++) {
      double slice = chordMm(sliceMm(i)) * thicknessMm / SLICES;
      if (below + slice >= half) {
        return (i + (half - below) / slice) * thicknessMm / SLICES;
      }
      below += slice;
    }
    return thicknessMm / 2;
  }

  /**
   * The centroid of its area, from its inner side, flat side in, mm: the line that keeps its length
   * when it is bent, and that turned about gives the volume (Pappus). Half its thickness, but 4r/3π
   * = 0.424 r for the half disc. Source: any text on mechanics; held by an independent sum in the
   * tests.
   */
  public double centroidMm() {
    if (section != Section.HALF_ROUND) {
      return thicknessMm / 2;
    }
    double moment = 0;
    double area = 0;
    for (int i = 0; i < SLICES; i++) {
      moment += sliceMm(i) * chordMm(sliceMm(i));
      area += chordMm(sliceMm(i));
    }
    return moment / area;
  }

  /** The diameter of the round wire of the same area, mm. */
  public double roundOfAreaMm() {
    return section == Section.ROUND ? widthMm : 2 * Math.sqrt(areaMm2() / Math.PI);
  }

  private double sliceMm(int slice) {
    return (slice + 0.5) * thicknessMm / SLICES;
  }

  /** Width of half-round wire so far above its flat side, mm. */
  private double chordMm(double aboveMm) {
    double radius = (widthMm * widthMm / 4 + thicknessMm * thicknessMm) / (2 * thicknessMm);
    double from = radius - thicknessMm + aboveMm;
    return 2 * Math.sqrt(Math.max(0, radius * radius - from * from));
  }

  /** The segment of a circle of that chord and height; half the disc at half the width. */
  private double segmentMm2() {
    double radius = (widthMm * widthMm / 4 + thicknessMm * thicknessMm) / (2 * thicknessMm);
    double toChord = radius - thicknessMm;
    return radius * radius * Math.acos(toChord / radius) - toChord * widthMm / 2;
  }

  private static Read<WireSection> readTwo(Section section, String typed) {
    String[] sides = BY.split(typed, -1);
    if (sides.length != 2) {
      return Read.bad(
          "“"
              + typed.strip()
              + "” is not a "
              + section.word()
              + ". Write its width and its thickness, as in 3 mm x 1 mm.");
    }
    Read<Length> thickness = Length.readWire(sides[1]);
    Read<Length> width = Length.readWidth(sides[0]);
    if (!width.isGood() && sides[0].matches("[\\d.,/ ]+")) {
      // 3 x 1 mm, 12 x 18 AWG: one unit serves both.
      width = Length.readWidth(sides[0] + " " + sides[1].replaceFirst("^[\\d.,/ ]+", ""));
    }
    return Read.all(List.of(width, thickness))
        .map(both -> new WireSection(section, both.get(0).mm(), both.get(1).mm()))
        .flatMap(
            wire ->
                section == Section.HALF_ROUND
                        && thickness.orThrow().mm() > wire.widthMm() / 2 + 0.005
                    ? Read.bad(
                        "Half-round wire is at most half as thick as it is wide: width first, then"
                            + " thickness, as in half-round 2 mm x 1 mm.")
                    : Read.good(wire));
  }
}
