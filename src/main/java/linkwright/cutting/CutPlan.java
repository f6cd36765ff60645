package linkwright.cutting;

import java.util.List;

/**
 * The best way found to cut an order.
 *
 * <p>Best means, in this order: (1) the most chain – most links that have their rings, or most
 * whole repeats; the shorter of the blanks wanted are taken first; rings wanted beyond those that
 * the links take come last; (2) the fewest lengths opened, so that the rest stays in few and long
 * pieces. {@code proved} speaks of these two. Among plans that open equally few, shorter lengths
 * are opened rather than longer ones, which is sought and not proved.
 *
 * @param cuts one for each stock length, in the order's own order, links' wire first
 * @param blanks blanks of each size cut, in the order's order
 * @param rings rings cut
 * @param links links (blanks of all sizes), or whole repeats where the order counts in repeats
 * @param shortBlanks blanks of each size that are missing
 * @param shortRings rings that are missing
 * @param shortLinksMm links' wire missing: for each missing blank its length and one kerf
 * @param shortRingsMm rings' wire missing: the missing turns and the tail of one more coil
 * @param proved whether no better plan exists; if not, this is the best found in the time given
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
    boolean proved) {

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

  /** What is left of each stock length, mm, in the order's own order; 0 for one used up. */
  public List<Double> leftMm() {
    return cuts.stream().map(Cut::restMm).toList();
  }
}
