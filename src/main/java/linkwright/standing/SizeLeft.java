package linkwright.standing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import linkwright.job.LinkSizes;
import linkwright.job.Pile;
import linkwright.job.Piles;
import linkwright.plan.LinksOfSize;
import linkwright.plan.Plan;
import linkwright.routine.PieceKind;
import linkwright.standing.stock.StockLeft;
import linkwright.yield.BlanksToCut;
import linkwright.yield.Rate;
import linkwright.yield.Yield;

/**
 * What is still to do for the links of one size. Links of which no size was said are taken to be
 * those that were named first, as far as these lack.
 *
 * @param name what they are called
 * @param wanted how many the chain takes
 * @param good how many came good
 * @param inWork how many are cut and not judged yet
 * @param toCut further blanks so that enough come good with the wished chance; empty if no number
 *     is enough
 * @param canCut further blanks that the wire on hand gives
 */
public record SizeLeft(
    String name, int wanted, int good, int inWork, OptionalInt toCut, int canCut) {

  /** Each size of a chain that has several, in the order in which they were named. */
  static List<SizeLeft> of(Plan plan, Piles piles, Rate loss, StockLeft stock) {
    List<LinksOfSize> sizes = plan.sizes();
    int[] good = new int[sizes.size()];
    int[] inWork = new int[sizes.size()];
    Pile rest = rest(plan, piles);
    for (int i = 0; i < sizes.size() && !piles.sizes().piles().isEmpty(); i++) {
      Pile pile = piles.of(PieceKind.LINK, sizes.get(i).name());
      good[i] = StillToDo.good(pile);
      inWork[i] = pile.alive() - good[i];
    }
    int restGood = StillToDo.good(rest);
    int restInWork = rest.alive() - restGood;
    List<SizeLeft> all = new ArrayList<>();
    for (int i = 0; i < sizes.size(); i++) {
      boolean last = i == sizes.size() - 1;
      int wanted = sizes.get(i).links();
      int itsGood = last ? restGood : Math.min(restGood, Math.max(0, wanted - good[i]));
      restGood -= itsGood;
      int lacks = Math.max(0, wanted - good[i] - itsGood);
      OptionalInt needed = needed(lacks, loss, plan.wish().confidence());
      int room = Math.max(0, needed.orElse(lacks) - inWork[i]);
      int itsWork = last ? restInWork : Math.min(restInWork, room);
      restInWork -= itsWork;
      int work = inWork[i] + itsWork;
      OptionalInt toCut =
          needed.isPresent()
              ? OptionalInt.of(Math.max(0, needed.getAsInt() - work))
              : OptionalInt.empty();
      int canCut = stock.canCut(PieceKind.LINK, sizes.get(i).eachMm(plan.wish()), plan.wish());
      all.add(new SizeLeft(sizes.get(i).name(), wanted, good[i] + itsGood, work, toCut, canCut));
    }
    return all;
  }

  /** Links of no said size, and of sizes that the plan has no more. */
  private static Pile rest(Plan plan, Piles piles) {
    List<String> names = plan.sizes().stream().map(LinksOfSize::name).toList();
    return piles.sizes().piles().isEmpty()
        ? piles.of(PieceKind.LINK)
        : piles.sizes().without(names).orElseGet(() -> piles.of(PieceKind.LINK, LinkSizes.UNSAID));
  }

  private static OptionalInt needed(int lacks, Rate loss, double confidence) {
    return Yield.cut(lacks, loss, confidence) instanceof BlanksToCut.Blanks enough
        ? OptionalInt.of(enough.blanks())
        : OptionalInt.empty();
  }

  /** Good ones still wanted. */
  public int more() {
    return Math.max(0, wanted - good);
  }

  /** Further blanks to cut; where no number is enough, as many as still lack. */
  public int toCutOrAsMany() {
    return toCut.orElse(least());
  }

  /** As many further blanks as would do if none were lost. */
  public int least() {
    return Math.max(0, more() - inWork);
  }
}
