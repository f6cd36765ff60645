package linkwright.quantity;

import java.util.Optional;

/**
 * Amounts out of reason at a bench where chain is made by hand: each answers with what to ask, or
 * nothing. The limits are this program's choice, wide enough that a large order passes.
 */
public final class OutOfReason {
  /** Links of one job. */
  public static final int MANY_PIECES = 2_000;

  /** Wire of one job, mm. */
  public static final double MUCH_WIRE_MM = 30_000;

  /** A chain that goes round a waist three times, mm. */
  public static final double LONG_CHAIN_MM = 3_000;

  /** The share of pieces lost at which the cause is looked for, and not more are cut. */
  public static final double HIGH_LOSS = 0.5;

  /** How far a weight may be off what is reckoned, as a share: wire, solder and scales together. */
  public static final double WEIGHT_OFF = 0.25;

  private OutOfReason() {}

  /**
   * A number of pieces.
   *
   * @param what what they are, in the plural: {@code blanks}
   */
  public static Optional<Doubtful> pieces(int number, String what) {
    return asked(number > MANY_PIECES, number + " " + what + ": as many as that?", "");
  }

  /** Wire on hand or needed, mm. */
  public static Optional<Doubtful> wire(double mm, UnitStyle style) {
    return asked(
        mm > MUCH_WIRE_MM, style.length(mm) + " of wire: as much as that?", style.length(mm / 10));
  }

  /** A finished length, mm. */
  public static Optional<Doubtful> finishedLength(double mm, UnitStyle style) {
    return asked(
        mm > LONG_CHAIN_MM,
        "A chain of " + style.length(mm) + ": as long as that?",
        style.length(mm / 10));
  }

  /** A usual loss, as a share. */
  public static Optional<Doubtful> usualLoss(double share) {
    return asked(
        share >= HIGH_LOSS,
        Decimals.percent(share, 1) + " of the pieces usually lost: as many as that?",
        Decimals.percent(share / 10, 1));
  }

  /**
   * A weight beside what is reckoned, both in g.
   *
   * @param what what was weighed, with its article: {@code the chain}
   */
  public static Optional<Doubtful> weight(
      double weighedG, double reckonedG, String what, UnitStyle style) {
    double off = reckonedG > 0 ? weighedG / reckonedG - 1 : 0;
    return asked(
        Math.abs(off) > WEIGHT_OFF,
        style.mass(weighedG)
            + " for "
            + what
            + " is "
            + Decimals.percent(Math.abs(off), 0)
            + (off > 0 ? " more" : " less")
            + " than the "
            + style.mass(reckonedG)
            + " reckoned: is it right?",
        "");
  }

  private static Optional<Doubtful> asked(boolean doubtful, String question, String meant) {
    return doubtful ? Optional.of(new Doubtful(question, meant)) : Optional.empty();
  }
}
