package linkwright.cutting;

/**
 * The best way found to cut one wire: a quick one, and where the wire and the pieces do not by
 * themselves prove it the best, the best of all ways, as far as the budget reaches.
 *
 * @param lacking repeats that are let go
 * @param counts what is cut from each length
 * @param proved whether no way lets fewer repeats go, nor, where none is let go, takes fewer
 *     lengths
 */
record BestCut(int lacking, CutCounts counts, boolean proved) {

  static BestCut of(WireToCut wire) {
    int fewest = wire.fewestLacking();
    CutCounts quick = QuickCut.of(wire, fewest);
    int lacking = wire.lacking(quick);
    int[] pieces = wire.without(lacking);
    CutCounts cut = quick.only(pieces);
    boolean proved = lacking == fewest && cut.opened() == wire.fewestLengths(pieces);
    BestCut found = new BestCut(lacking, cut, proved);
    CuttingBudget budget = new CuttingBudget();
    BestCut best = proved ? found : found.orBetter(wire, fewest, budget);
    boolean over = best.lacking > 0 && wire.lengths().length > 0;
    return (over ? best.lessMissing(wire, budget) : best).withFewerCoils(wire, budget);
  }

  /**
   * The same chain, and from what is over the further pieces after which the least wire is missing.
   * The rest of the chain needs them too, whenever its wire comes.
   */
  private BestCut lessMissing(WireToCut wire, CuttingBudget budget) {
    CutTable table = new CutTable(wire, wire.wanted(), CutTable.ANY, budget);
    for (int j = 0; j < wire.lengths().length; j++) {
      if (!table.grow()) {
        return new BestCut(lacking, counts.filled(wire), proved);
      }
    }
    int[] most = table.leastMissing(wire.without(lacking));
    if (wire.missing(most) >= wire.missing(counts.pieces(wire.kinds()))) {
      return this;
    }
    int lengths = 1;
    while (!table.yields(lengths, most, CutTable.ANY)) {
      lengths++;
    }
    return new BestCut(lacking, table.cut(lengths, most, CutTable.ANY), proved);
  }

  private BestCut orBetter(WireToCut wire, int fewest, CuttingBudget budget) {
    CutTable table = new CutTable(wire, wire.without(fewest), CutTable.ANY, budget);
    int lengths = lacking == fewest ? counts.opened() : wire.lengths().length;
    int enough = 0;
    int reached = lacking + 1;
    for (int n = 1; n <= lengths && reached > fewest; n++) {
      if (!table.grow()) {
        return this;
      }
      while (reached > fewest && table.yields(n, wire.without(reached - 1), CutTable.ANY)) {
        reached--;
        enough = n;
      }
    }
    CutCounts best = table.cut(enough, wire.without(reached), CutTable.ANY);
    return new BestCut(reached, best, true);
  }

  private BestCut withFewerCoils(WireToCut wire, CuttingBudget budget) {
    int[] pieces = counts.pieces(wire.kinds());
    int known = counts.coils();
    int fewest = wire.fewestCoils(pieces[wire.ring()]);
    int lengths = counts.opened();
    if (known == fewest || !proved) {
      return this;
    }
    CutTable table = new CutTable(wire, pieces, known - 1, budget);
    for (int n = 1; n <= lengths; n++) {
      if (!table.grow()) {
        return this;
      }
    }
    for (int coils = fewest; coils < known; coils++) {
      if (table.yields(lengths, pieces, coils)) {
        return new BestCut(lacking, table.cut(lengths, pieces, coils), true);
      }
    }
    return this;
  }
}
