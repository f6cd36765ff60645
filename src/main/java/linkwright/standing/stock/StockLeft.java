package linkwright.standing.stock;

import java.util.List;
import java.util.Optional;
import linkwright.job.WireLedger;
import linkwright.plan.ChainWish;
import linkwright.plan.Plan;
import linkwright.routine.PieceKind;

/**
 * Wire on hand now: the lengths planned and added, less what was cut. Which length a blank came
 * from is not asked at the bench; see {@link WireLengths}.
 *
 * @param linksMm lengths of the links' wire, mm, shortest first
 * @param ringsMm lengths of the rings' wire; empty where the rings come from the links' wire
 */
public record StockLeft(List<Double> linksMm, Optional<List<Double>> ringsMm) {
  public StockLeft {
    linksMm = List.copyOf(linksMm);
    ringsMm = ringsMm.map(List::copyOf);
  }

  /** What is left of a plan's wire and of what came since. */
  public static StockLeft of(Optional<Plan> plan, WireLedger ledger) {
    if (plan.isEmpty()) {
      return new StockLeft(List.of(), Optional.empty());
    }
    return new StockLeft(
        left(WireLengths.ofLinks(plan.get(), ledger)),
        WireLengths.ofRings(plan.get(), ledger).map(StockLeft::left));
  }

  private static List<Double> left(List<WireLengths> lengths) {
    return lengths.stream().map(WireLengths::leftMm).filter(mm -> mm > 0).sorted().toList();
  }

  /** Wire left for that kind of piece, mm. */
  public double leftMm(PieceKind piece) {
    return of(piece).stream().mapToDouble(Double::doubleValue).sum();
  }

  private List<Double> of(PieceKind piece) {
    return PieceKind.RING.equals(piece) ? ringsMm.orElse(linksMm) : linksMm;
  }

  /** Pieces that the wire left gives, each length by itself; rings lose a tail on each coil. */
  public int canCut(PieceKind piece, double eachMm, ChainWish wish) {
    if (!(eachMm > 0)) {
      return 0;
    }
    boolean ring = PieceKind.RING.equals(piece);
    double spare = ring ? -wish.coilTailMm() : wish.kerfMm();
    return of(piece).stream()
        .mapToInt(length -> Math.max(0, (int) Math.floor((length + spare) / eachMm + 1e-9)))
        .sum();
  }
}
