package linkwright.link;

import java.util.List;

/** A blank once formed: its size, its eyes, its joints and where it crosses itself. */
public final class Formed {
  private final Pattern pattern;
  private final List<PatternPart> bits;
  private final double wireMm;
  private final double shortestBlankMm;
  private final double surplusMm;
  private final CentreLine centreLine;
  private final Extent extent;
  private final List<Eye> eyes;

  // Each follows from the rest and takes milliseconds: reckoned when it is first asked for. Two
  // threads
  // that ask at once reckon the same.
  private List<JointGap> gaps;
  private List<Crossing> crossings;

  Formed(
      Pattern pattern,
      List<PatternPart> bits,
      double wireMm,
      double shortestBlankMm,
      double surplusMm,
      Pulled pulled) {
    this.pattern = pattern;
    this.bits = bits;
    this.wireMm = wireMm;
    this.shortestBlankMm = shortestBlankMm;
    this.surplusMm = surplusMm;
    this.centreLine = new CentreLine(pulled.stretches());
    this.extent = pulled.extent();
    this.eyes = List.copyOf(pulled.eyes());
  }

  /** The pattern that it follows. */
  public Pattern pattern() {
    return pattern;
  }

  /** The bits of the whole walk, to which {@link Stretch#bit()} points. */
  List<PatternPart> bits() {
    return bits;
  }

  /** The wire's diameter, in millimetres. */
  public double wireMm() {
    return wireMm;
  }

  /** The shortest blank that reaches round this pattern's bends, in millimetres. */
  public double shortestBlankMm() {
    return shortestBlankMm;
  }

  /** What a closed pattern without a rest does not need of the blank, in millimetres; else 0. */
  double surplusMm() {
    return surplusMm;
  }

  /** The middle of the wire in the link's frame. */
  public CentreLine centreLine() {
    return centreLine;
  }

  /** The eyes, the first tip's before the last tip's; a ring has one, which is the whole ring. */
  public List<Eye> eyes() {
    return eyes;
  }

  /** The extent of the wire along the line of pull, in millimetres; the centre line's plus d. */
  public double lengthMm() {
    return extent.maxX() - extent.minX() + wireMm;
  }

  /** The extent of the wire across the line of pull, in millimetres; the centre line's plus d. */
  public double widthMm() {
    return extent.maxY() - extent.minY() + wireMm;
  }

  /**
   * What the link adds to the chain, in millimetres: along the pull from the place where one
   * neighbour bears to the place where the other does. Length − 2d where the eyes end the link.
   */
  public double insideLengthMm() {
    Point first = eyes.get(0).hook();
    if (eyes.size() == 1) {
      return -2 * first.xMm();
    }
    return eyes.get(1).hook().xMm() - first.xMm();
  }

  /** The link once planished to a thickness, in millimetres, above 0 and at most d. */
  public Planished planished(double thicknessMm) {
    return Planished.of(this, thicknessMm);
  }

  /** How well each joint of the pattern closes. */
  public List<JointGap> jointGaps() {
    List<JointGap> known = gaps;
    if (known == null) {
      known = new JointGaps(this).all();
      gaps = known;
    }
    return known;
  }

  /** Where the wire crosses itself, one for each connected region. */
  public List<Crossing> crossings() {
    List<Crossing> known = crossings;
    if (known == null) {
      known = crossings(Crossings.CLEAR_MM);
      crossings = known;
    }
    return known;
  }

  /**
   * The same where it is pressed in deeper than so many millimetres, which is found sooner.
   * Reckoned at each call.
   */
  public List<Crossing> crossings(double deeperThanMm) {
    return new Crossings(this, deeperThanMm).all();
  }
}
