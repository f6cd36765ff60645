package linkwright.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import linkwright.routine.PieceKind;

/**
 * Wire that came to hand since the plan and wire that went, for each kind of piece it serves.
 *
 * @param added the lengths that were added, in order
 * @param usedMm piece → wire cut so far, kerf included
 * @param discardedMm piece → wire that went uncut: lost, scrapped or given back
 * @param returnedMm piece → of that, what was given back into the drawer
 * @param uncut pieces that were made though no wire was entered as cut for them
 * @param tried test pieces that were cut: their blanks are in what was used, their kerf is not
 * @param coils coils of rings that were cut and left; the tail of each is in nothing else
 * @param coiling whether rings are being cut, off a coil that may give more
 */
public record WireLedger(
    List<Fact.WireAdded> added,
    Map<PieceKind, Double> usedMm,
    Map<PieceKind, Double> discardedMm,
    Map<PieceKind, Double> returnedMm,
    List<UncutWire> uncut,
    int tried,
    int coils,
    boolean coiling) {
  static final WireLedger EMPTY =
      new WireLedger(List.of(), Map.of(), Map.of(), Map.of(), List.of(), 0, 0, false);

  /** Wire cut for that kind of piece so far, in mm. */
  public double usedMm(PieceKind piece) {
    return usedMm.getOrDefault(piece, 0.0);
  }

  /** Wire of that kind that went without becoming blanks, in mm. */
  public double discardedMm(PieceKind piece) {
    return discardedMm.getOrDefault(piece, 0.0);
  }

  /** Wire of that kind that was given back into the drawer, in mm. */
  public double returnedMm(PieceKind piece) {
    return returnedMm.getOrDefault(piece, 0.0);
  }

  /** Lengths added for that kind of piece since the plan, in mm, in order. */
  public List<Double> addedMm(PieceKind piece) {
    return added.stream()
        .filter(wire -> wire.piece().equals(piece))
        .map(Fact.WireAdded::lengthMm)
        .toList();
  }

  /** After pieces came into being that were counted nowhere before: their wire is gone too. */
  WireLedger uncut(Piles before, Piles after, UncutWire of) {
    int links = came(PieceKind.LINK, before, after);
    int rings = came(PieceKind.RING, before, after);
    if (links + rings == 0) {
      return this;
    }
    List<UncutWire> more = new ArrayList<>(uncut);
    more.add(of.with(links, rings));
    // Rings of a trial length came off a coil of their own.
    int wound = rings > 0 ? 1 : 0;
    return new WireLedger(
        added, usedMm, discardedMm, returnedMm, List.copyOf(more), tried, coils + wound, coiling);
  }

  private static int came(PieceKind piece, Piles before, Piles after) {
    return Math.max(0, after.of(piece).alive() - before.of(piece).alive());
  }

  WireLedger after(Fact fact) {
    if (fact instanceof Fact.WireAdded wire) {
      List<Fact.WireAdded> more = new ArrayList<>(added);
      more.add(wire);
      return new WireLedger(
          List.copyOf(more), usedMm, discardedMm, returnedMm, uncut, tried, coils, coiling);
    }
    if (fact instanceof Fact.WireCut cut) {
      boolean ring = PieceKind.RING.equals(cut.piece());
      return (ring ? this : coilLeft()).used(cut.piece(), cut.count() * cut.eachMm(), tried, ring);
    }
    if (fact instanceof Fact.StepOpened || fact instanceof Fact.StepDone) {
      return coilLeft();
    }
    if (fact instanceof Fact.WireDiscarded gone) {
      return gone(plus(discardedMm, gone.piece(), gone.lengthMm()), returnedMm);
    }
    if (fact instanceof LotFact.StockReturned back) {
      double mm = back.lengthMm().orElse(0);
      return gone(plus(discardedMm, back.piece(), mm), plus(returnedMm, back.piece(), mm));
    }
    return fact instanceof Fact.TestPieceTried piece
        ? used(PieceKind.LINK, piece.blankMm(), tried + 1, coiling)
        : this;
  }

  private WireLedger used(PieceKind piece, double mm, int nowTried, boolean nowCoiling) {
    Map<PieceKind, Double> used = plus(usedMm, piece, mm);
    return new WireLedger(added, used, discardedMm, returnedMm, uncut, nowTried, coils, nowCoiling);
  }

  private WireLedger gone(Map<PieceKind, Double> goneMm, Map<PieceKind, Double> backMm) {
    return new WireLedger(added, usedMm, goneMm, backMm, uncut, tried, coils, coiling);
  }

  /** Once other work is begun, what is left of a coil is its tail. */
  private WireLedger coilLeft() {
    return coiling
        ? new WireLedger(added, usedMm, discardedMm, returnedMm, uncut, tried, coils + 1, false)
        : this;
  }

  private static Map<PieceKind, Double> plus(
      Map<PieceKind, Double> sums, PieceKind key, double add) {
    return MapSums.plus(sums, key, add, Double::sum);
  }
}
