package linkwright.link;

import linkwright.quantity.UnitStyle;
import linkwright.wire.SolderNeed;

/**
 * How well one joint closes.
 *
 * @param joint which joint
 * @param firstTip whether it is the first tip's; true for a joint of both tips
 * @param andMm where along the wire it meets, in millimetres from the first tip
 * @param gapMm between the two surfaces, in millimetres; below 0 where they overlap
 */
public record JointGap(Joint joint, boolean firstTip, double andMm, double gapMm) {
  /** The widest gap that solder still fills, in millimetres. */
  public static final double FILLS_MM = SolderNeed.WIDEST_GAP_MM;

  /** Whether the joint is fit to be soldered as it stands. */
  public boolean closes() {
    return Math.abs(gapMm) <= FILLS_MM;
  }

  /** What to say of this joint at the bench, with lengths in the user's units. */
  public String says(UnitStyle units) {
    String gap = units.length(Math.abs(gapMm));
    if (closes()) {
      return ends() + " closes.";
    }
    if (gapMm > 0) {
      return ends()
          + " stands "
          + gap
          + " off "
          + meets()
          + ": close it, solder will not bridge it.";
    }
    return ends() + " runs " + gap + " into " + meets() + ": bend it back or cut it shorter.";
  }

  private String ends() {
    String which = firstTip ? "first" : "last";
    return switch (joint) {
      case TIP_TO_TIP -> "One tip";
      case CURL_TO_BODY -> "The " + which + " tip's curl";
      default -> "The " + which + " tip";
    };
  }

  private String meets() {
    return joint == Joint.TIP_TO_TIP ? "the other" : "the wire";
  }
}
