package linkwright.link;

import java.util.ArrayList;
import java.util.List;

/**
 * Contacts of the wire with itself that are meant: a tip's last d against the stem that its joint
 * names, two tips that close against each other, and bends that cross other wire on purpose.
 */
final class MeantContacts {
  private final Formed link;
  private final double wireMm;
  private final double lengthMm;
  private final List<JointGap> joints = new ArrayList<>();

  MeantContacts(Formed link) {
    this.link = link;
    this.wireMm = link.wireMm();
    this.lengthMm = link.centreLine().lengthMm();
    link.jointGaps().stream().filter(gap -> gap.joint() != Joint.CURL_TO_BODY).forEach(joints::add);
  }

  /** Whether the contact of two places, the first nearer the first tip, is meant. */
  boolean meant(double atMm, double andMm) {
    return onPurpose(atMm) || onPurpose(andMm) || joined(atMm, andMm);
  }

  private boolean onPurpose(double alongMm) {
    return link.bits().get(link.centreLine().stretchAt(alongMm).bit()) instanceof Bend bend
        && bend.overOnPurpose();
  }

  private boolean joined(double atMm, double andMm) {
    for (JointGap gap : joints) {
      boolean firstTip = atMm <= wireMm;
      boolean lastTip = andMm >= lengthMm - wireMm;
      boolean joined =
          gap.joint() == Joint.TIP_TO_TIP
              ? firstTip && lastTip
              : gap.firstTip()
                  ? firstTip && onStem(andMm, gap.andMm())
                  : lastTip && onStem(atMm, gap.andMm());
      if (joined) {
        return true;
      }
    }
    return false;
  }

  /** What a tip's last d can touch of the stem lies within 3d of the place where they meet. */
  private boolean onStem(double alongMm, double meetsMm) {
    return Math.abs(alongMm - meetsMm) <= 3 * wireMm;
  }
}
