package linkwright.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Plans the cutting of blanks and ring coils from the lengths on hand.
 *
 * <p>A length of S yields n blanks b₁ … bₙ with kerf k when Σ(bᵢ + k) ≤ S + k: the last kerf counts
 * only as far as wire remains. A coil of r rings takes r × turn + tail of it. For one size of blank
 * and no rings that is ⌊(S + k)/(b + k)⌋ blanks. What is best, {@link CutPlan} says.
 *
 * <p>Accuracy: whole micrometres, pieces rounded up and stock down. Time and chance: none inside;
 * the caller's {@code giveUp} is asked at every step, and once it says true the best found so far
 * is given back with {@code proved} false. Whether many unlike lengths can be proved in little time
 * depends on them; few lengths are searched through to the end.
 */
public final class Cutting {
  private Cutting() {}

  /** Never gives up before the search's own limit, which is counted in steps. */
  public static CutPlan plan(CutOrder order) {
    return plan(order, () -> false);
  }

  /**
   * The best plan for the order.
   *
   * @param order an order without {@link CutOrder#problems()}
   * @param giveUp asked often; true when the time is up
   * @throws IllegalArgumentException if the order has problems
   */
  public static CutPlan plan(CutOrder order, BooleanSupplier giveUp) {
    List<String> problems = order.problems();
    if (!problems.isEmpty()) {
      throw new IllegalArgumentException("order: " + String.join(" ", problems));
    }
    Best best = new Best(giveUp);
    Thrift thrift = new Thrift(giveUp);
    boolean apart = order.ring().isPresent() && order.ringStockMm().isPresent();
    Wire links = new Wire(order, true, !apart);
    Ladder ladder = ladder(order, links.wanted());
    if (!apart) {
      Best.Level level = best.highest(links.bench(), ladder);
      int[] demand = ladder.at(level.level());
      Thrift.Outcome way = thrift.best(links.bench(), demand, level);
      return told(
          ladder,
          level.level(),
          links,
          links.cuts(way.cut()),
          level.proved() && way.lengthsProved(),
          way.coilsProved());
    }
    Wire rings = new Wire(order, false, true);
    return apart(order, best, thrift, ladder, links, rings);
  }

  private static CutPlan apart(
      CutOrder order, Best best, Thrift thrift, Ladder ladder, Wire links, Wire rings) {
    int sizes = order.blanks().size();
    Best.Level blanks = best.highest(links.bench(), new Ladder.Only(ladder, true));
    int[] none = new int[sizes];
    int ringsWanted = order.ring().orElseThrow().wanted();
    Best.Level coils = best.highest(rings.bench(), new Ladder(none, ringsWanted, 0, 0, 0));
    int level = blanks.level() == ladder.links() ? ladder.top() : blanks.level();
    while (level > 0 && ladder.at(level)[sizes] > coils.level()) {
      level--;
    }
    int[] blankDemand = new Ladder.Only(ladder, true).at(Math.min(level, ladder.links()));
    int[] ringDemand = new Ladder.Only(ladder, false).at(level);
    Thrift.Outcome blankWay = thrift.best(links.bench(), blankDemand, blanks);
    Thrift.Outcome ringWay = thrift.best(rings.bench(), ringDemand, coils);
    List<Cut> cuts = new ArrayList<>(links.cuts(blankWay.cut()));
    cuts.addAll(rings.cuts(ringWay.cut()));
    boolean chain = blanks.proved() || level < blanks.level();
    return told(
        ladder,
        level,
        links,
        cuts,
        chain && coils.proved() && blankWay.lengthsProved() && ringWay.lengthsProved(),
        ringWay.coilsProved());
  }

  private static Ladder ladder(CutOrder order, int[] wanted) {
    Optional<RingWish> ring = order.ring();
    return new Ladder(
        wanted,
        ring.map(RingWish::wanted).orElse(0),
        ring.map(RingWish::perLink).orElse(0),
        ring.map(RingWish::ends).orElse(0),
        order.repeats());
  }

  private static CutPlan told(
      Ladder ladder, int level, Wire wire, List<Cut> cuts, boolean proved, boolean coilsProved) {
    int[] all = ladder.at(level);
    int[] wanted = ladder.at(ladder.top());
    int[] missing = new int[all.length];
    Arrays.setAll(missing, k -> wanted[k] - all[k]);
    int ring = all.length - 1;
    double linksMm = 0;
    for (int k = 0; k < ring; k++) {
      linksMm += Micrometres.mm(wire.bench().piece()[k] * missing[k]);
    }
    double ringsMm =
        missing[ring] == 0
            ? 0
            : Micrometres.mm(wire.bench().turn() * missing[ring] + wire.bench().tail());
    return new CutPlan(
        cuts,
        wire.inOrder(all),
        all[ring],
        Math.min(level, ladder.links()),
        wire.inOrder(missing),
        missing[ring],
        linksMm,
        ringsMm,
        proved,
        proved && coilsProved);
  }

  /**
   * The fewest lengths of one size that yield all the blanks, each once or more.
   *
   * @param stockMm length of each, mm, more than 0
   * @param blanks what is wanted
   * @param kerfMm wire lost to one cut, mm, 0 or more
   * @param giveUp asked often; true when the time is up
   * @throws IllegalArgumentException if a length or number is out of its domain
   */
  public static LengthsNeeded fewestLengths(
      double stockMm, List<BlankWish> blanks, double kerfMm, BooleanSupplier giveUp) {
    int pieces = 0;
    for (BlankWish blank : blanks) {
      if (blank.wanted() > 0 && Micrometres.up(blank.mm()) > Micrometres.down(stockMm)) {
        return new LengthsNeeded(false, 0, true);
      }
      pieces += Math.max(0, blank.wanted());
    }
    CutOrder one = CutOrder.of(List.of(stockMm), blanks, Optional.empty(), kerfMm);
    if (!one.problems().isEmpty()) {
      throw new IllegalArgumentException("order: " + String.join(" ", one.problems()));
    }
    Wire wire = new Wire(one, true, false);
    Bench single = wire.bench();
    if (pieces == 0) {
      return new LengthsNeeded(true, 0, true);
    }
    int[] demand = Arrays.copyOf(wire.wanted(), single.kinds());
    int enough = Greedy.lengthsOf(single, demand);
    long[] stock = new long[enough];
    Arrays.fill(stock, single.stock()[0]);
    Bench bench = new Bench(stock, single.piece(), single.kerf(), single.turn(), single.tail());
    Thrift.Outcome way =
        new Thrift(giveUp).best(bench, demand, Best.Level.of(Greedy.cut(bench, demand)));
    return new LengthsNeeded(true, Loads.opened(way.cut()), way.lengthsProved());
  }
}
