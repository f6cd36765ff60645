package linkwright.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
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
 * @param uncut piece → pieces that were made though no wire was entered as cut for them
 */
public record WireLedger(
    List<Fact.WireAdded> added,
    Map<PieceKind, Double> usedMm,
    Map<PieceKind, Double> discardedMm,
    Map<PieceKind, Double> returnedMm,
    Map<PieceKind, Integer> uncut) {
  static final WireLedger EMPTY = new WireLedger(List.of(), Map.of(), Map.of(), Map.of(), Map.of());

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

  /** Pieces of that kind that were made though no wire was entered as cut for them. */
  public int uncut(PieceKind piece) {
    return uncut.getOrDefault(piece, 0);
  }

  /** After pieces came into being that were counted nowhere before: their wire is gone too. */
  WireLedger uncut(Piles before, Piles after) {
    Map<PieceKind, Integer> more = new LinkedHashMap<>(uncut);
    after
        .byPiece()
        .forEach(
            (piece, pile) -> {
              int came = pile.alive() - before.of(piece).alive();
              if (came > 0) {
                more.merge(piece, came, Integer::sum);
              }
            });
    return new WireLedger(added, usedMm, discardedMm, returnedMm, Map.copyOf(more));
  }

  WireLedger after(Fact fact) {
    if (fact instanceof Fact.WireAdded wire) {
      List<Fact.WireAdded> more = new ArrayList<>(added);
      more.add(wire);
      return new WireLedger(List.copyOf(more), usedMm, discardedMm, returnedMm, uncut);
    }
    if (fact instanceof Fact.WireCut cut) {
      double mm = cut.count() * cut.eachMm();
      return new WireLedger(added, plus(usedMm, cut.piece(), mm), discardedMm, returnedMm, uncut);
    }
    if (fact instanceof Fact.WireDiscarded gone) {
      Map<PieceKind, Double> less = plus(discardedMm, gone.piece(), gone.lengthMm());
      return new WireLedger(added, usedMm, less, returnedMm, uncut);
    }
    if (fact instanceof LotFact.StockReturned back && back.lengthMm().isPresent()) {
      double mm = back.lengthMm().getAsDouble();
      return new WireLedger(
          added,
          usedMm,
          plus(discardedMm, back.piece(), mm),
          plus(returnedMm, back.piece(), mm),
          uncut);
    }
    if (fact instanceof Fact.TestPieceTried tried) {
      return new WireLedger(
          added, plus(usedMm, PieceKind.LINK, tried.blankMm()), discardedMm, returnedMm, uncut);
    }
    return this;
  }

  private static Map<PieceKind, Double> plus(
      Map<PieceKind, Double> sums, PieceKind key, double add) {
    Map<PieceKind, Double> sum = new LinkedHashMap<>(sums);
    sum.merge(key, add, Double::sum);
    return Map.copyOf(sum);
  }
}
