package linkwright.link;

import java.util.ArrayList;
import java.util.List;

/**
 * Whether a ring, or the neighbour's wire, goes into an eye of a link and moves there.
 *
 * @param eye which eye
 * @param openMm the widest round bar that fits in the eye about its centre, in millimetres
 * @param mouthMm the narrowest way into the eye, in millimetres; 0 where the wire closes it
 * @param soldered whether a joint closes the mouth, so that the ring has to be the one that opens
 * @param troubles sentences, one for each thing that doesn't go; empty when all does
 */
public record Passage(
    Eye eye, double openMm, double mouthMm, boolean soldered, List<String> troubles) {
  public Passage {
    troubles = List.copyOf(troubles);
  }

  /**
   * The passages of a link's eyes, in their order.
   *
   * @param link the formed link
   * @param ringInsideMm the ring's inside diameter, in millimetres; for links joined to each other
   *     the link's own inside length
   * @param ringWireMm the ring's wire, in millimetres
   */
  public static List<Passage> of(Formed link, double ringInsideMm, double ringWireMm) {
    List<Passage> passages = new ArrayList<>();
    for (Eye eye : link.eyes()) {
      double openMm = openMm(link, eye);
      double mouthMm = link.pattern().closed() ? 0 : mouthMm(link, eye);
      boolean soldered = soldered(link, eye);
      List<String> troubles = new ArrayList<>();
      if (openMm < ringWireMm) {
        troubles.add(
            "The ring's wire of "
                + Sizes.mm(ringWireMm)
                + " does not pass the eye, which is open "
                + Sizes.mm(Math.max(0, openMm))
                + ": take a larger eye or thinner wire.");
      }
      if (!soldered && mouthMm < ringWireMm) {
        troubles.add(
            "The ring's wire of "
                + Sizes.mm(ringWireMm)
                + " does not pass the eye's mouth, which is "
                + Sizes.mm(mouthMm)
                + " wide: open the mouth, or solder it and open the ring.");
      }
      if (ringInsideMm < 2 * link.wireMm()) {
        troubles.add(
            "A ring of "
                + Sizes.mm(ringInsideMm)
                + " inside does not hold the wires of two links, "
                + Sizes.mm(2 * link.wireMm())
                + " together: take a larger ring.");
      }
      passages.add(new Passage(eye, openMm, mouthMm, soldered, troubles));
    }
    return List.copyOf(passages);
  }

  /** Fine enough for a hundredth of a wire; never so fine that thin, long wire takes for ever. */
  private static double stepMm(Formed link) {
    return Math.max(link.wireMm() / 16, link.centreLine().lengthMm() / 2_000);
  }

  private static double openMm(Formed link, Eye eye) {
    double nearest = Double.POSITIVE_INFINITY;
    for (Point point : link.centreLine().points(stepMm(link))) {
      nearest = Math.min(nearest, point.distanceMm(eye.centre()));
    }
    return 2 * nearest - link.wireMm();
  }

  /** Between the wire on both sides of the eye, each from a quarter turn past the eye's middle. */
  private static double mouthMm(Formed link, Eye eye) {
    CentreLine line = link.centreLine();
    double lengthMm = line.lengthMm();
    Stretch bend = line.stretchAt((eye.fromMm() + eye.toMm()) / 2);
    double quarterMm = bend.lengthMm() * Math.min(0.5, Math.PI / 2 / Math.abs(bend.turn()));
    double middleMm = (eye.fromMm() + eye.toMm()) / 2;
    List<Point> before = points(line, 0, middleMm - quarterMm, stepMm(link));
    List<Point> after = points(line, middleMm + quarterMm, lengthMm, stepMm(link));
    double nearest = Double.POSITIVE_INFINITY;
    for (Point one : before) {
      for (Point other : after) {
        nearest = Math.min(nearest, one.distanceMm(other));
      }
    }
    return Math.max(0, nearest - link.wireMm());
  }

  private static List<Point> points(CentreLine line, double fromMm, double toMm, double stepMm) {
    int steps = (int) Math.max(1, Math.ceil((toMm - fromMm) / stepMm));
    List<Point> points = new ArrayList<>(steps + 1);
    for (int i = 0; i <= steps; i++) {
      points.add(line.at(fromMm + (toMm - fromMm) * i / steps));
    }
    return points;
  }

  private static boolean soldered(Formed link, Eye eye) {
    if (link.pattern().closed()) {
      return true;
    }
    boolean firstTip = eye.toMm() <= link.centreLine().lengthMm() / 2;
    return link.jointGaps().stream()
        .anyMatch(gap -> gap.joint() == Joint.TIP_TO_TIP || gap.firstTip() == firstTip);
  }
}
