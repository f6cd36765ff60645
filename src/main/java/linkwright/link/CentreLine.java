package linkwright.link;

import java.util.ArrayList;
import java.util.List;

/**
 * The middle of the wire from the first tip to the last, in the link's frame: the x axis is the
 * line of pull, from the first tip's eye to the last tip's, and the origin lies on it in the middle
 * of the link's length. For a ring the origin is its centre.
 */
public final class CentreLine {
  private final List<Stretch> stretches;
  private final double lengthMm;

  CentreLine(List<Stretch> stretches) {
    this.stretches = List.copyOf(stretches);
    this.lengthMm = stretches.get(stretches.size() - 1).toMm();
  }

  List<Stretch> stretches() {
    return stretches;
  }

  /** Its length along the wire, in millimetres. */
  public double lengthMm() {
    return lengthMm;
  }

  /**
   * Where the wire is at a length along it from the first tip, in millimetres; lengths before the
   * first tip or beyond the last are taken as that tip.
   */
  public Point at(double alongMm) {
    Stretch stretch = stretchAt(alongMm);
    return stretch.after(within(stretch, alongMm));
  }

  /** Which way the wire runs there, in radians from the x axis. */
  double headingAt(double alongMm) {
    Stretch stretch = stretchAt(alongMm);
    return stretch.headingAfter(within(stretch, alongMm));
  }

  Stretch stretchAt(double alongMm) {
    for (Stretch stretch : stretches) {
      if (alongMm <= stretch.toMm()) {
        return stretch;
      }
    }
    return stretches.get(stretches.size() - 1);
  }

  private static double within(Stretch stretch, double alongMm) {
    return Math.min(Math.max(alongMm - stretch.fromMm(), 0), stretch.lengthMm());
  }

  /**
   * Places along the wire, the first at the first tip and the last at the last, evenly spaced.
   *
   * @param stepMm how far apart at most, in millimetres, more than 0
   * @throws IllegalArgumentException if the step is not a finite number above 0
   */
  public List<Point> points(double stepMm) {
    if (!(stepMm > 0 && Double.isFinite(stepMm))) {
      throw new IllegalArgumentException("stepMm must be more than 0: " + stepMm);
    }
    int steps = (int) Math.max(1, Math.ceil(lengthMm / stepMm));
    List<Point> points = new ArrayList<>(steps + 1);
    for (int i = 0; i <= steps; i++) {
      points.add(at(lengthMm * i / steps));
    }
    return List.copyOf(points);
  }
}
