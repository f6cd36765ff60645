package linkwright.link;

import java.util.ArrayList;
import java.util.List;

/** Finds how well the joints close. */
final class JointGaps {
  private final Formed link;
  private final CentreLine line;
  private final double wireMm;
  private final double lengthMm;

  JointGaps(Formed link) {
    this.link = link;
    this.line = link.centreLine();
    this.wireMm = link.wireMm();
    this.lengthMm = line.lengthMm();
  }

  List<JointGap> all() {
    List<JointGap> gaps = new ArrayList<>();
    boolean firstTipTaken = link.pattern().joints().contains(Joint.FIRST_TIP_TO_BODY);
    boolean firstCurlTaken = false;
    for (Joint joint : link.pattern().joints()) {
      switch (joint) {
        case TIP_TO_TIP -> gaps.add(tipToTip());
        case FIRST_TIP_TO_BODY -> gaps.add(tipToBody(joint, true));
        case LAST_TIP_TO_BODY -> gaps.add(tipToBody(joint, false));
        case TIP_TO_BODY -> {
          gaps.add(tipToBody(joint, !firstTipTaken));
          firstTipTaken = true;
        }
        case CURL_TO_BODY -> {
          gaps.add(new CurlGap(line, wireMm, !firstCurlTaken).find());
          firstCurlTaken = true;
        }
      }
    }
    return List.copyOf(gaps);
  }

  /** Between two end faces: along the last tip's heading, and aside where they miss each other. */
  private JointGap tipToTip() {
    Point first = line.at(0);
    Point last = line.at(lengthMm);
    double heading = line.headingAt(lengthMm);
    double dx = first.xMm() - last.xMm();
    double dy = first.yMm() - last.yMm();
    double ahead = dx * Math.cos(heading) + dy * Math.sin(heading);
    double aside = dy * Math.cos(heading) - dx * Math.sin(heading);
    double gap = Math.abs(aside) < 1e-6 * wireMm ? ahead : Math.hypot(ahead, aside);
    return new JointGap(Joint.TIP_TO_TIP, true, lengthMm, gap - link.surplusMm());
  }

  private JointGap tipToBody(Joint joint, boolean firstTip) {
    TipFace tip = new TipFace(line, wireMm, firstTip);
    double fromMm = turnedBackMm(firstTip);
    double best = Double.POSITIVE_INFINITY;
    double bestMm = lengthMm;
    int steps = (int) Math.min(20_000, Math.max(32, Math.ceil((lengthMm - fromMm) * 32 / wireMm)));
    double stepMm = (lengthMm - fromMm) / steps;
    for (int i = 0; i <= steps; i++) {
      double distance = tip.distanceMm(fromTip(firstTip, fromMm + i * stepMm));
      if (distance < best) {
        best = distance;
        bestMm = fromMm + i * stepMm;
      }
    }
    for (double stride = stepMm / 2; stride > 1e-9 * wireMm; stride /= 2) {
      for (double tryMm : new double[] {bestMm - stride, bestMm + stride}) {
        if (tryMm >= fromMm && tryMm <= lengthMm) {
          double distance = tip.distanceMm(fromTip(firstTip, tryMm));
          if (distance < best) {
            best = distance;
            bestMm = tryMm;
          }
        }
      }
    }
    double meets = firstTip ? bestMm : lengthMm - bestMm;
    return new JointGap(joint, firstTip, meets, best - wireMm / 2);
  }

  private Point fromTip(boolean firstTip, double alongMm) {
    return line.at(firstTip ? alongMm : lengthMm - alongMm);
  }

  /**
   * How far from a tip the wire first faces back, having turned by half a turn: before that it is
   * the tip's own wire, not a stem it could meet. Where it never does, everything beyond the first
   * (π/2 + 1)·d.
   */
  private double turnedBackMm(boolean firstTip) {
    double tipHeading = line.headingAt(firstTip ? 0 : lengthMm);
    double leastMm = Math.min(lengthMm, (Math.PI / 2 + 1) * wireMm);
    double stepMm = Math.max(wireMm / 16, lengthMm / 20_000);
    for (double mm = leastMm; mm < lengthMm; mm += stepMm) {
      double heading = line.headingAt(firstTip ? mm : lengthMm - mm);
      if (Math.abs(heading - tipHeading) >= Math.PI - 1e-9) {
        return mm;
      }
    }
    return leastMm;
  }
}
