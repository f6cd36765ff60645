package linkwright.standing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.plan.Plan;
import linkwright.routine.PieceKind;
import linkwright.yield.BlanksToCut;
import linkwright.yield.SizeLot;
import linkwright.yield.Together;
import linkwright.yield.Yield;

/**
 * The chance that links and rings both come good from what is in work and the wire on hand, when it
 * is cut as {@link WireStand} says: as many links and rings as are to be cut, and then what is over
 * goes to whatever falls short, to the links first, then to the rings at the ends. Wire of one
 * length is not joined to the next; a further coil takes a tail of its own. No size of link makes
 * up for another; of three sizes and more, further ones of all but the longest are taken at their
 * mean blank.
 *
 * <p>Links of all sizes are lost at one unknown rate, rings at another ({@link Together}). A
 * simulation of the same rule agrees ({@code FinishChanceTest}).
 */
final class FinishChance {
  /** Further pieces for the ends of a chain beyond which none is asked about. */
  private static final int MOST_ENDS = 12;

  private FinishChance() {}

  /** The chance, 0 to 1. */
  static double of(Plan plan, Map<PieceKind, StillToDo> left, WireStand wire) {
    StillToDo links = left.get(PieceKind.LINK);
    Optional<Rings> rings =
        Optional.ofNullable(left.get(PieceKind.RING)).map(still -> new Rings(plan, still, wire));
    LinkLots lots = LinkLots.of(plan, links, cut(plan, wire));
    List<List<Double>> firsts = rests(plan, over(wire.links()), lots.firstEachMm(), most(links));
    List<List<List<Double>>> rests =
        firsts.stream()
            .map(first -> rests(plan, first, lots.othersEachMm(), lots.most(links)))
            .toList();
    int others = rests.stream().mapToInt(List::size).max().orElse(1);
    double[][] needed =
        Together.further(lots.first(), lots.others(), links.ahead(), firsts.size() - 1, others - 1);
    double chance = 0;
    for (int i = 0; i < rests.size(); i++) {
      for (int j = 0; j < rests.get(i).size(); j++) {
        List<Double> rest = rests.get(i).get(j);
        if (needed[i][j] > 0) {
          chance += needed[i][j] * rings.map(each -> each.enough(rest)).orElse(1.0);
        }
      }
    }
    return Math.min(1, chance);
  }

  /**
   * The links in two groups, the size of the longest blank and the others, so that what is cut
   * beyond the plan takes its own wire; exact for two sizes.
   *
   * @param first the longest
   * @param firstEachMm wire that one takes, mm
   * @param others all others; none where links are alike
   * @param othersEachMm wire that one of them takes, in the mean of those that lack, mm
   */
  private record LinkLots(
      List<SizeLot> first, double firstEachMm, List<SizeLot> others, double othersEachMm) {
    static LinkLots of(Plan plan, StillToDo links, List<Integer> cut) {
      if (!plan.sized()) {
        return new LinkLots(
            List.of(new SizeLot(links.more(), links.inWork() + cut.get(0))),
            plan.linkEachMm(),
            List.of(),
            0);
      }
      int longest = 0;
      for (int i = 1; i < plan.sizes().size(); i++) {
        boolean more = links.sizes().get(i).more() > 0;
        boolean longer = each(plan, i) > each(plan, longest);
        boolean none = links.sizes().get(longest).more() == 0;
        longest = (more && (longer || none)) ? i : longest;
      }
      List<SizeLot> others = new ArrayList<>();
      double mm = 0;
      int lacking = 0;
      for (int i = 0; i < plan.sizes().size(); i++) {
        if (i != longest) {
          SizeLeft size = links.sizes().get(i);
          others.add(new SizeLot(size.more(), size.inWork() + cut.get(i)));
          mm += size.more() * each(plan, i);
          lacking += size.more();
        }
      }
      SizeLeft size = links.sizes().get(longest);
      return new LinkLots(
          List.of(new SizeLot(size.more(), size.inWork() + cut.get(longest))),
          each(plan, longest),
          others,
          lacking == 0 ? 0 : mm / lacking);
    }

    private static double each(Plan plan, int size) {
      return plan.sizes().get(size).eachMm(plan.wish());
    }

    /** Further ones of the others beyond which none is asked about. */
    int most(StillToDo links) {
      return others.isEmpty() ? 0 : FinishChance.most(links);
    }
  }

  /** The rings that join and, where there are any, those at the ends. */
  private static final class Rings {
    private final Plan plan;
    private final Optional<List<Double>> apart;
    private final double[][] needed;
    private final double eachEndMm;

    Rings(Plan plan, StillToDo still, WireStand wire) {
      this.plan = plan;
      apart = wire.rings().map(FinishChance::over);
      eachEndMm = plan.endRings().map(ring -> ring.eachMm(plan.wish())).orElse(0.0);
      int ends = wire.links().stream().mapToInt(WireStand.Bar::ends).sum();
      int coiled =
          cutRings(wire.links()) + wire.rings().map(FinishChance::cutRings).orElse(0) - ends;
      List<Integer> lacking = plan.ringsLacking(still.more());
      List<SizeLot> lots =
          lots(plan, still, lacking, lacking.size() > 1 ? List.of(coiled, ends) : List.of(coiled));
      int turns = turns(plan, apart.orElse(over(wire.links())));
      needed =
          Together.further(
              lots.subList(1, lots.size()),
              lots.subList(0, 1),
              still.ahead(),
              lots.size() > 1 ? MOST_ENDS : 0,
              Math.min(turns, most(still)));
    }

    double enough(List<Double> linkWireMm) {
      List<List<Double>> rests = rests(plan, linkWireMm, eachEndMm, needed.length - 1);
      double chance = 0;
      for (int ends = 0; ends < rests.size(); ends++) {
        int turns = turns(plan, apart.orElse(rests.get(ends)));
        for (int more = 0; more < needed[ends].length && more <= turns; more++) {
          chance += needed[ends][more];
        }
      }
      return chance;
    }
  }

  /** What is over after 0, 1, 2 … further pieces, as long as it lasts. */
  private static List<List<Double>> rests(
      Plan plan, List<Double> lengthsMm, double eachMm, int most) {
    List<List<Double>> rests = new ArrayList<>();
    Optional<List<Double>> rest = Optional.of(lengthsMm);
    while (rest.isPresent() && rests.size() <= most) {
      rests.add(rest.get());
      rest = less(plan, rest.get(), eachMm);
    }
    return rests;
  }

  /** Further pieces beyond which none is asked about. */
  private static int most(StillToDo still) {
    return 3 * still.more() + 40;
  }

  /**
   * The sizes with what is wanted and there for each. Those named first are made first, so that the
   * pieces in work are theirs.
   */
  private static List<SizeLot> lots(
      Plan plan, StillToDo still, List<Integer> lacking, List<Integer> cut) {
    List<SizeLot> lots = new ArrayList<>();
    int inWork = still.inWork();
    for (int i = 0; i < lacking.size(); i++) {
      int wanted =
          Yield.cut(lacking.get(i), still.ahead(), plan.wish().confidence())
                  instanceof BlanksToCut.Blanks enough
              ? enough.blanks()
              : lacking.get(i);
      boolean last = i == lacking.size() - 1;
      int here = last ? inWork : Math.min(inWork, Math.max(0, wanted - cut.get(i)));
      inWork -= here;
      lots.add(new SizeLot(lacking.get(i), here + cut.get(i)));
    }
    return lots;
  }

  /** Blanks to be cut of each size. */
  private static List<Integer> cut(Plan plan, WireStand wire) {
    List<Integer> cut = new ArrayList<>();
    for (int i = 0; i < plan.sizes().size(); i++) {
      int size = i;
      cut.add(
          wire.links().stream()
              .map(WireStand.Bar::blanks)
              .filter(blanks -> size < blanks.size())
              .mapToInt(blanks -> blanks.get(size))
              .sum());
    }
    return cut;
  }

  private static int cutRings(List<WireStand.Bar> bars) {
    return bars.stream().mapToInt(bar -> bar.next().rings()).sum();
  }

  private static List<Double> over(List<WireStand.Bar> bars) {
    return bars.stream().map(WireStand.Bar::overMm).sorted().toList();
  }

  private static int turns(Plan plan, List<Double> lengthsMm) {
    return plan.ringTurnMm() > 0
        ? lengthsMm.stream()
            .mapToInt(
                mm -> (int) Math.max(0, (mm - plan.wish().coilTailMm()) / plan.ringTurnMm() + 1e-9))
            .sum()
        : 0;
  }

  /** One piece more off the shortest length that holds it; the last kerf need not be there. */
  private static Optional<List<Double>> less(Plan plan, List<Double> lengthsMm, double each) {
    for (int i = 0; each > 0 && i < lengthsMm.size(); i++) {
      if (lengthsMm.get(i) + plan.wish().kerfMm() + 1e-9 >= each) {
        List<Double> rest = new ArrayList<>(lengthsMm);
        rest.set(i, Math.max(0, lengthsMm.get(i) - each));
        Collections.sort(rest);
        return Optional.of(rest);
      }
    }
    return Optional.empty();
  }
}
