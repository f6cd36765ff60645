package linkwright.standing.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.job.UncutWire;
import linkwright.job.WireLedger;
import linkwright.plan.ChainWish;
import linkwright.plan.Plan;
import linkwright.routine.PieceKind;

/**
 * Every length of wire that came to hand, with what went from it. Which length a blank came from is
 * not asked at the bench: those of the plan are taken to be used up first, the shortest before the
 * longer, then those that came later, in the order they came. So what came last never changes what
 * is left of the others.
 *
 * @param mm its length when it came, mm
 * @param cutMm cut from it so far, kerf included, mm
 * @param lostMm lost or scrapped uncut, mm
 */
public record WireLengths(double mm, double cutMm, double lostMm) {
  /** What is on hand of it now, mm. */
  public double leftMm() {
    return Math.max(0, mm - cutMm - lostMm);
  }

  /** The links' wire; the rings' too where they are cut from it. */
  public static List<WireLengths> ofLinks(Plan plan, WireLedger ledger) {
    ChainWish wish = plan.wish();
    List<Double> lengths = new ArrayList<>(wish.stockMm().stream().sorted().toList());
    boolean shared = wish.ringStockMm().isEmpty();
    ledger.added().stream()
        .filter(wire -> shared || PieceKind.LINK.equals(wire.piece()))
        .forEach(wire -> lengths.add(wire.lengthMm()));
    return of(
        lengths,
        usedByLinks(plan, ledger) + (shared ? usedByRings(plan, ledger) : 0),
        ledger.discardedMm(PieceKind.LINK) + (shared ? ledger.discardedMm(PieceKind.RING) : 0),
        ledger.returnedMm(PieceKind.LINK) + (shared ? ledger.returnedMm(PieceKind.RING) : 0));
  }

  /** The rings' wire, where it is another. */
  public static Optional<List<WireLengths>> ofRings(Plan plan, WireLedger ledger) {
    return plan.wish()
        .ringStockMm()
        .map(
            stock -> {
              List<Double> lengths = new ArrayList<>(stock.stream().sorted().toList());
              lengths.addAll(ledger.addedMm(PieceKind.RING));
              return of(
                  lengths,
                  usedByRings(plan, ledger),
                  ledger.discardedMm(PieceKind.RING),
                  ledger.returnedMm(PieceKind.RING));
            });
  }

  private static double usedByLinks(Plan plan, WireLedger ledger) {
    return ledger.usedMm(PieceKind.LINK)
        + ledger.tried() * plan.wish().kerfMm()
        + ledger.uncut().stream().mapToDouble(made -> uncutLinks(plan, made)).sum();
  }

  private static double usedByRings(Plan plan, WireLedger ledger) {
    double tails = plan.rings() > 0 ? ledger.coils() * plan.wish().coilTailMm() : 0;
    double uncut = ledger.uncut().stream().mapToDouble(made -> uncutRings(plan, made)).sum();
    return ledger.usedMm(PieceKind.RING) + uncut + tails;
  }

  /** By the blank they were made of: what is planned now may be another. */
  private static double uncutLinks(Plan plan, UncutWire made) {
    double kerf = plan.wish().kerfMm();
    return made.links()
        * (made.blankMm().isPresent() && !plan.sized()
            ? made.blankMm().getAsDouble() + kerf
            : plan.linkEachMm());
  }

  /** By the ring that hung. */
  private static double uncutRings(Plan plan, UncutWire made) {
    return made.rings() * plan.ringTurnMm(made.ringInsideMm());
  }

  /** What was given back is no part of a length any more. */
  private static List<WireLengths> of(
      List<Double> lengths, double cutMm, double goneMm, double backMm) {
    List<WireLengths> found = new ArrayList<>();
    double cut = cutMm;
    double gone = goneMm;
    double back = backMm;
    for (double length : lengths) {
      double cutHere = Math.min(length, cut);
      double goneHere = Math.min(length - cutHere, gone);
      double backHere = Math.min(goneHere, back);
      cut -= cutHere;
      gone -= goneHere;
      back -= backHere;
      found.add(new WireLengths(length - backHere, cutHere, goneHere - backHere));
    }
    return found;
  }
}
