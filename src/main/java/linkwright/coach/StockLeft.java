package linkwright.coach;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import linkwright.job.WireLedger;
import linkwright.job.plan.Plan;
import linkwright.job.plan.Wish;

/**
 * Wire on hand now: the lengths planned and added, less what was cut. Which length a blank came
 * from is not asked at the bench; the shortest lengths are taken to be used up first.
 *
 * @param linksMm lengths of the links' wire, mm, shortest first
 * @param ringsMm lengths of the rings' wire; empty where the rings come from the links' wire
 */
public record StockLeft(List<Double> linksMm, Optional<List<Double>> ringsMm) {
  public StockLeft {
    linksMm = List.copyOf(linksMm);
    ringsMm = ringsMm.map(List::copyOf);
  }

  static StockLeft of(Optional<Plan> plan, WireLedger ledger) {
    if (plan.isEmpty()) {
      return new StockLeft(List.of(), Optional.empty());
    }
    Wish wish = plan.get().wish();
    List<Double> links = new ArrayList<>(wish.stockMm());
    links.addAll(ledger.addedMm("link"));
    double gone = ledger.usedMm("link") + ledger.discardedMm("link");
    Optional<List<Double>> rings = wish.ringStockMm();
    double ringsGone = ledger.usedMm("ring") + ledger.discardedMm("ring");
    if (rings.isEmpty()) {
      links.addAll(ledger.addedMm("ring"));
      return new StockLeft(less(links, gone + ringsGone), Optional.empty());
    }
    List<Double> ringLengths = new ArrayList<>(rings.get());
    ringLengths.addAll(ledger.addedMm("ring"));
    return new StockLeft(less(links, gone), Optional.of(less(ringLengths, ringsGone)));
  }

  private static List<Double> less(List<Double> lengths, double goneMm) {
    List<Double> left = new ArrayList<>(lengths);
    left.sort(Comparator.naturalOrder());
    double gone = goneMm;
    while (!left.isEmpty() && gone > 0) {
      double shortest = left.get(0);
      if (shortest > gone) {
        left.set(0, shortest - gone);
      } else {
        left.remove(0);
      }
      gone -= shortest;
    }
    left.sort(Comparator.naturalOrder());
    return left;
  }

  /** Wire left for that kind of piece, mm. */
  public double leftMm(String piece) {
    return of(piece).stream().mapToDouble(Double::doubleValue).sum();
  }

  private List<Double> of(String piece) {
    return piece.equals("ring") ? ringsMm.orElse(linksMm) : linksMm;
  }

  /** Pieces that the wire left gives, each length by itself; rings lose a tail on each coil. */
  int canCut(String piece, double eachMm, Wish wish) {
    if (!(eachMm > 0)) {
      return 0;
    }
    boolean ring = piece.equals("ring");
    double spare = ring ? -wish.coilTailMm() : wish.kerfMm();
    return of(piece).stream()
        .mapToInt(length -> Math.max(0, (int) Math.floor((length + spare) / eachMm + 1e-9)))
        .sum();
  }
}
