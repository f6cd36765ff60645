package linkwright.link;

/** How far a centre line reaches, exactly: its ends and the places where an arc turns back. */
final class Extent {
  private double minX = Double.POSITIVE_INFINITY;
  private double maxX = Double.NEGATIVE_INFINITY;
  private double minY = Double.POSITIVE_INFINITY;
  private double maxY = Double.NEGATIVE_INFINITY;

  /** Widens this extent by a stretch. */
  Extent add(Stretch stretch) {
    add(stretch.start());
    add(stretch.end());
    if (!stretch.isStraight()) {
      // Where the wire runs along an axis it turns back from the other one.
      double quarter = Math.PI / 2;
      double from = Math.min(stretch.heading(), stretch.endHeading());
      double to = Math.max(stretch.heading(), stretch.endHeading());
      for (double k = Math.ceil(from / quarter); k * quarter < to; k++) {
        add(stretch.turned(Math.abs(k * quarter - stretch.heading())));
      }
    }
    return this;
  }

  private void add(Point point) {
    minX = Math.min(minX, point.xMm());
    maxX = Math.max(maxX, point.xMm());
    minY = Math.min(minY, point.yMm());
    maxY = Math.max(maxY, point.yMm());
  }

  double minX() {
    return minX;
  }

  double maxX() {
    return maxX;
  }

  double minY() {
    return minY;
  }

  double maxY() {
    return maxY;
  }
}
