package linkwright.cutting;

import java.util.List;

/**
 * The best way found to cut an order.
 *
 * <p>Best means, in this order: (1) the most chain: most links that have their rings, or most whole
 * repeats; of the blanks wanted the shorter are taken first; rings wanted beyond those that the
 * links take come last. Then the least waste: (2) the fewest lengths opened, for each opened leaves
 * an end; (3) from those the fewest coils, for each loses a tail. Beyond that the shorter of the
 * lengths that will do are opened, so that long ones stay whole; this is not part of any proof, nor
 * is the bit of a kerf that is saved where a length ends with a piece.
 *
 * @param cuts one for each stock length, in the order's own order, links' wire first
 * @param blanks blanks of each size cut, in the order's order
 * @param rings rings cut
 * @param links links (blanks of all sizes), or whole repeats where the order counts in repeats
 * @param shortBlanks blanks of each size that are missing
 * @param shortRings rings that are missing
 * @param shortLinksMm links' wire missing: for each missing blank its length and one kerf
 * @param shortRingsMm rings' wire missing: the missing turns and the tail of one more coil
 * @param proved whether no plan is better by (1) and (2); if not, this is the best found in the
 *     time given
 * @param coilsProved whether, besides, none is better by (3)
 */
public record CutPlan(
    List<Cut> cuts,
    List<Integer> blanks,
    int rings,
    int links,
    List<Integer> shortBlanks,
    int shortRings,
    double shortLinksMm,
    double shortRingsMm,
    boolean proved,
    boolean coilsProved) {

  /** Copies the lists. */
  public CutPlan {
    cuts = List.copyOf(cuts);
    blanks = List.copyOf(blanks);
    shortBlanks = List.copyOf(shortBlanks);
  }

  /** Wire missing in all, mm; 0 when everything wanted is cut. */
  public double shortMm() {
    return shortLinksMm + shortRingsMm;
  }

  /** Whether everything wanted is cut. */
  public boolean complete() {
    return shortRings == 0 && shortBlanks.stream().allMatch(missing -> missing == 0);
  }

  /** How many stock lengths something is cut from. */
  public int opened() {
    return (int) cuts.stream().filter(Cut::opened).count();
  }

  /** How many coils the rings are wound in. */
  public int coils() {
    return (int) cuts.stream().filter(cut -> cut.rings() > 0).count();
  }

  /** What is left of each stock length, mm, in the order's own order; 0 for one used up. */
  public List<Double> leftMm() {
    return cuts.stream().map(Cut::restMm).toList();
  }
}
