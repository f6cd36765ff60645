package linkwright.coach;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import linkwright.job.WireLedger;
import linkwright.job.plan.Wish;

/**
 * Every length of wire that came to hand, with what went from it. Which length a blank came from is
 * not asked at the bench; as in {@link StockLeft}, the shortest are taken to be used up first.
 *
 * @param mm its length when it came, mm
 * @param cutMm cut from it so far, kerf included, mm
 * @param lostMm lost or scrapped uncut, mm
 */
record WireLengths(double mm, double cutMm, double lostMm) {
  double leftMm() {
    return Math.max(0, mm - cutMm - lostMm);
  }

  /** The links' wire; the rings' too where they are cut from it. */
  static List<WireLengths> ofLinks(Wish wish, WireLedger ledger) {
    List<Double> lengths = new ArrayList<>(wish.stockMm());
    lengths.addAll(ledger.addedMm("link"));
    boolean shared = wish.ringStockMm().isEmpty();
    if (shared) {
      lengths.addAll(ledger.addedMm("ring"));
    }
    return of(
        lengths,
        ledger.usedMm("link") + (shared ? ledger.usedMm("ring") : 0),
        ledger.discardedMm("link") + (shared ? ledger.discardedMm("ring") : 0));
  }

  /** The rings' wire, where it is another. */
  static Optional<List<WireLengths>> ofRings(Wish wish, WireLedger ledger) {
    return wish.ringStockMm()
        .map(
            stock -> {
              List<Double> lengths = new ArrayList<>(stock);
              lengths.addAll(ledger.addedMm("ring"));
              return of(lengths, ledger.usedMm("ring"), ledger.discardedMm("ring"));
            });
  }

  private static List<WireLengths> of(List<Double> lengths, double cutMm, double lostMm) {
    List<Double> shortestFirst = new ArrayList<>(lengths);
    shortestFirst.sort(Comparator.naturalOrder());
    List<WireLengths> found = new ArrayList<>();
    double cut = cutMm;
    double lost = lostMm;
    for (double length : shortestFirst) {
      double cutHere = Math.min(length, cut);
      double lostHere = Math.min(length - cutHere, lost);
      cut -= cutHere;
      lost -= lostHere;
      found.add(new WireLengths(length, cutHere, lostHere));
    }
    return found;
  }
}
