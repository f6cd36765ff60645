package linkwright.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Wire that came to hand since the plan and wire that went, for each kind of piece it serves.
 *
 * @param added the lengths that were added, in order
 * @param usedMm piece → wire cut so far, kerf included
 * @param discardedMm piece → wire lost or scrapped uncut
 */
public record WireLedger(
    List<Fact.WireAdded> added, Map<String, Double> usedMm, Map<String, Double> discardedMm) {
  static final WireLedger EMPTY = new WireLedger(List.of(), Map.of(), Map.of());

  /** Wire cut for that kind of piece so far, in mm. */
  public double usedMm(String piece) {
    return usedMm.getOrDefault(piece, 0.0);
  }

  /** Wire of that kind that went without becoming blanks, in mm. */
  public double discardedMm(String piece) {
    return discardedMm.getOrDefault(piece, 0.0);
  }

  /** Lengths added for that kind of piece since the plan, in mm, in order. */
  public List<Double> addedMm(String piece) {
    return added.stream()
        .filter(wire -> wire.piece().equals(piece))
        .map(Fact.WireAdded::lengthMm)
        .toList();
  }

  WireLedger after(Fact fact) {
    if (fact instanceof Fact.WireAdded wire) {
      List<Fact.WireAdded> more = new ArrayList<>(added);
      more.add(wire);
      return new WireLedger(List.copyOf(more), usedMm, discardedMm);
    }
    if (fact instanceof Fact.WireCut cut) {
      return new WireLedger(
          added, plus(usedMm, cut.piece(), cut.count() * cut.eachMm()), discardedMm);
    }
    if (fact instanceof Fact.WireDiscarded gone) {
      return new WireLedger(added, usedMm, plus(discardedMm, gone.piece(), gone.lengthMm()));
    }
    if (fact instanceof Fact.TestPieceTried tried) {
      return new WireLedger(added, plus(usedMm, "link", tried.blankMm()), discardedMm);
    }
    return this;
  }

  private static Map<String, Double> plus(Map<String, Double> sums, String key, double add) {
    Map<String, Double> sum = new LinkedHashMap<>(sums);
    sum.merge(key, add, Double::sum);
    return Map.copyOf(sum);
  }
}
