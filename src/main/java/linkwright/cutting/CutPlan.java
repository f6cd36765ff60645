package linkwright.cutting;

import java.util.List;
import java.util.stream.IntStream;

/**
 * The best way found to cut an order.
 *
 * <p>Best means, in this order: (1) the most chain: the fewest repeats for which some piece is
 * lacking, those of spares let go before those of the chain; (2) the least wire missing for the
 * rest, so that what is over serves it as far as it will. Then, for the same pieces, the least
 * waste: (3) the fewest lengths opened, for each opened leaves an end; (4) from those the fewest
 * coils, for each loses a tail, as far as all ways can be tried. Beyond that the shorter of the
 * lengths that will do are opened, so that long ones stay whole.
 *
 * @param order what was asked
 * @param cuts one for each length, in the order's own order, links' wire first
 * @param proved whether no plan makes more chain, nor, where all is cut, takes fewer lengths; if
 *     not, this is the best found
 */
public record CutPlan(CutOrder order, List<LengthCut> cuts, boolean proved) {

  /** Copies the list. */
  public CutPlan {
    cuts = List.copyOf(cuts);
  }

  /** Blanks of each size cut, in the order's order. */
  public List<Integer> blanks() {
    return IntStream.range(0, order.blanks().size())
        .mapToObj(size -> cuts.stream().mapToInt(cut -> cut.blanks().get(size)).sum())
        .toList();
  }

  /** Rings cut. */
  public int rings() {
    return cuts.stream().mapToInt(LengthCut::rings).sum();
  }

  /** Blanks of each size that are missing. */
  public List<Integer> shortBlanks() {
    List<Integer> cut = blanks();
    return IntStream.range(0, cut.size())
        .mapToObj(size -> order.blanks().get(size).wanted() - cut.get(size))
        .toList();
  }

  /** Rings that are missing. */
  public int shortRings() {
    return order.rings().map(rings -> rings.wanted() - rings()).orElse(0);
  }

  /** Links' wire missing, mm: for each missing blank its length and one kerf. */
  public double shortLinksMm() {
    List<Integer> missing = shortBlanks();
    return IntStream.range(0, missing.size())
        .mapToDouble(size -> missing.get(size) * (order.blanks().get(size).mm() + order.kerfMm()))
        .sum();
  }

  /** Rings' wire missing, mm: the missing turns and the tail of one more coil. */
  public double shortRingsMm() {
    return shortRings() == 0 ? 0 : order.rings().orElseThrow().coilMm(shortRings());
  }

  /** Wire missing in all, mm; 0 when everything wanted is cut. */
  public double shortMm() {
    return shortLinksMm() + shortRingsMm();
  }

  /** Whether everything wanted is cut. */
  public boolean complete() {
    return shortRings() == 0 && shortBlanks().stream().allMatch(missing -> missing == 0);
  }

  /** What is left of each length, mm, in the order's own order; 0 for one used up. */
  public List<Double> leftMm() {
    return cuts.stream().map(LengthCut::restMm).toList();
  }
}
