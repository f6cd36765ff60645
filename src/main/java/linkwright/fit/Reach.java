package linkwright.fit;

/** How near in size the best blank and formers come to a wish. */
public enum Reach {
  /** Both sizes, the length to 3 %, the width to 8 %. */
  REACHED,
  /** Even the shortest blank that works gives too long a link. */
  TOO_LONG,
  /** The link is shorter than wished whatever the blank, as a round one over too small a former. */
  TOO_SHORT,
  /** No former owned comes near the wished width. */
  WIDTH_OFF;

  /** A length that is off by no more than this share is reached. Our own choice. */
  public static final double LENGTH_OFF = 0.03;

  /** The same of a width. */
  static final double WIDTH_OFF_BY = 0.08;

  /** How near a size comes to a wish. */
  static Reach of(FormedSize size, LinkSize wish) {
    double length = size.lengthMm() / wish.lengthMm() - 1;
    if (Math.abs(length) > LENGTH_OFF) {
      return length > 0 ? TOO_LONG : TOO_SHORT;
    }
    return Math.abs(size.widthMm() / wish.widthMm() - 1) > WIDTH_OFF_BY ? WIDTH_OFF : REACHED;
  }
}
