package linkwright.link;

import java.util.ArrayList;
import java.util.List;
import linkwright.quantity.Read;

/**
 * A walked centre line laid along its line of pull.
 *
 * @param stretches in the link's frame
 * @param extent how far they reach there
 * @param eyes the first tip's and the last tip's; one alone for a ring
 */
record Pulled(List<Stretch> stretches, Extent extent, List<Eye> eyes) {

  static Read<Pulled> of(List<Stretch> walked, List<PatternPart> bits, double wireMm) {
    if (walked.size() == 1 && !walked.get(0).isStraight()) {
      return Read.good(ring(walked.get(0), wireMm));
    }
    int first = -1;
    int last = -1;
    for (int at = 0; at < bits.size(); at++) {
      if (bits.get(at) instanceof Bend bend && bend.eye()) {
        first = first < 0 ? at : first;
        last = at;
      }
    }
    double middleMm = walked.get(walked.size() - 1).toMm() / 2;
    Point from = pullCentre(walked.get(first), middleMm);
    Point to = pullCentre(walked.get(last), middleMm);
    if (from.distanceMm(to) < 1e-6 * wireMm) {
      return Read.bad(
          "The two eyes have the same centre, so the link can't be pulled: move them apart with a"
              + " longer blank or another turn.");
    }
    double along = Math.atan2(to.yMm() - from.yMm(), to.xMm() - from.xMm());
    // First along the pull, then to the middle of the length: a shift leaves every extent exact.
    List<Stretch> laid = seen(walked, from.xMm(), from.yMm(), along);
    Extent reach = extent(laid);
    List<Stretch> centred = seen(laid, (reach.minX() + reach.maxX()) / 2, 0, 0);
    return Read.good(
        new Pulled(
            centred,
            extent(centred),
            List.of(
                eye(centred, first, middleMm, wireMm, -1),
                eye(centred, last, middleMm, wireMm, 1))));
  }

  /** A ring is pulled any way: its joint is laid at the top, its centre at the origin. */
  private static Pulled ring(Stretch bend, double wireMm) {
    Point centre = bend.startCentre();
    List<Stretch> laid = seen(List.of(bend), centre.xMm(), centre.yMm(), 0);
    double radius = bend.startRadiusMm();
    Eye eye =
        new Eye(
            new Point(0, 0),
            new Point(-(radius - wireMm / 2), 0),
            2 * radius - wireMm,
            0,
            bend.toMm());
    return new Pulled(laid, extent(laid), List.of(eye));
  }

  private static List<Stretch> seen(List<Stretch> stretches, double x, double y, double along) {
    List<Stretch> seen = new ArrayList<>(stretches.size());
    for (Stretch stretch : stretches) {
      seen.add(stretch.seenFrom(x, y, along));
    }
    return seen;
  }

  private static Extent extent(List<Stretch> stretches) {
    Extent extent = new Extent();
    for (Stretch stretch : stretches) {
      extent.add(stretch);
    }
    return extent;
  }

  private static boolean endsNearerTheMiddle(Stretch bend, double middleMm) {
    return Math.abs(bend.toMm() - middleMm) <= Math.abs(bend.fromMm() - middleMm);
  }

  private static Point pullCentre(Stretch bend, double middleMm) {
    return endsNearerTheMiddle(bend, middleMm) ? bend.endCentre() : bend.startCentre();
  }

  /**
   * An eye. The next element slides outwards along the wire as far as it turns to the same hand, so
   * bends beside the eye that go on turning its way belong to the place where it bears.
   */
  private static Eye eye(
      List<Stretch> stretches, int at, double middleMm, double wireMm, int outwards) {
    Stretch bend = stretches.get(at);
    Extent inner = new Extent().add(bend);
    for (int i = at - 1; i >= 0 && goesOn(stretches.get(i), bend); i--) {
      inner.add(stretches.get(i));
    }
    for (int i = at + 1; i < stretches.size() && goesOn(stretches.get(i), bend); i++) {
      inner.add(stretches.get(i));
    }
    double reach = outwards < 0 ? inner.minX() : inner.maxX();
    Point centre = pullCentre(bend, middleMm);
    double radius = endsNearerTheMiddle(bend, middleMm) ? bend.endRadiusMm() : bend.startRadiusMm();
    return new Eye(
        centre,
        new Point(reach - outwards * wireMm / 2, centre.yMm()),
        2 * radius - wireMm,
        bend.fromMm(),
        bend.toMm());
  }

  private static boolean goesOn(Stretch next, Stretch bend) {
    return next.turn() * bend.turn() > 0;
  }
}
