package linkwright.hands;

import java.util.Optional;
import linkwright.plan.ChainWish;
import linkwright.plan.WishedRing;
import linkwright.routine.PieceKind;

/**
 * How much longer one piece of thin wire takes at the bench than the same of ordinary wire.
 *
 * <p>Common practice, no source: makers tell of 20 to 40 h for a fine chain. Thin wire makes small
 * links, and the hand that sets solder on a joint or closes it does not become finer with them. The
 * rule is this program's choice: ordinary wire over this one to the power of {@value #POWER},
 * chosen so that 45 cm of round trace chain of 0.3 and of 0.4 mm wire, four times as wide inside,
 * take so long, and loop-in-loop of the same rings 15 h and more; ordinary wire of {@value
 * #ORDINARY_MM} mm and more takes what the routine says. Work that is done for all pieces together
 * takes no longer.
 *
 * @param linkWireMm the links' wire, mm; 0 where it is not known
 * @param ringWireMm the rings' wire, mm; 0 where it is not known
 */
public record Fineness(double linkWireMm, double ringWireMm) {
  /** Where no wire is known. */
  public static final Fineness UNKNOWN = new Fineness(0, 0);

  /** Wire of that thickness and more takes what the routine says, mm. */
  public static final double ORDINARY_MM = 0.8;

  private static final double POWER = 0.75;

  /** That of a wished chain. */
  public static Fineness of(Optional<ChainWish> wish) {
    return wish.map(
            known ->
                new Fineness(
                    known.wireMm(), known.ring().map(WishedRing::wireMm).orElseGet(known::wireMm)))
        .orElse(UNKNOWN);
  }

  /** Whether some of the wire is so thin that its pieces are counted longer. */
  public boolean counts() {
    return times(PieceKind.LINK) > 1 || times(PieceKind.RING) > 1;
  }

  /**
   * How many times as long as usual one piece takes.
   *
   * @param kind the kind of piece; what is no ring is of the links' wire
   */
  public double times(PieceKind kind) {
    double wire = PieceKind.RING.equals(kind) ? ringWireMm : linkWireMm;
    return wire > 0 && wire < ORDINARY_MM ? Math.pow(ORDINARY_MM / wire, POWER) : 1;
  }
}
