package linkwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * The plan beside every possible way to cut, tried one by one: few lengths and few pieces, no
 * bounds and no cleverness. Lengths are whole millimetres here and kerfs whole too.
 */
class ExhaustiveComparisonTest {
  private static final int RUNS = 400;

  @Test
  void noWayToCutIsBetter() {
    for (int seed = 1; seed <= RUNS; seed++) {
      CutOrder order = order(new Random(seed));
      CutPlan plan = Cutting.plan(order);
      Best best = best(order, plan);
      String told = "seed " + seed + " " + order;

      assertThat(plan.proved()).as(told).isTrue();
      assertThat(lacking(order, pieces(plan))).as("lacking, " + told).isEqualTo(best.lacking);
      assertThat(plan.shortMm()).as("missing, " + told).isEqualTo(best.missing, within(1e-6));
      assertThat(PlanCounts.opened(plan)).as("opened, " + told).isEqualTo(best.cost / 100);
      assertThat(PlanCounts.coils(plan)).as("coils, " + told).isEqualTo(best.cost % 100);
    }
  }

  private static CutOrder order(Random random) {
    List<Double> stock = new ArrayList<>();
    for (int i = random.nextInt(4); i >= 0; i--) {
      stock.add(20.0 + random.nextInt(101));
    }
    List<BlanksWanted> blanks = new ArrayList<>();
    int wanted = 0;
    for (int i = random.nextInt(3); i >= 0; i--) {
      BlanksWanted blank =
          new BlanksWanted(
              16 + random.nextInt(30),
              1 + random.nextInt(3),
              1 + random.nextInt(2),
              random.nextInt(2));
      blanks.add(blank);
      wanted += blank.wanted();
    }
    RingsWanted rings =
        new RingsWanted(
            7 + random.nextInt(6),
            random.nextInt(11),
            wanted + 1,
            1 + random.nextInt(3),
            random.nextInt(3));
    return CutOrder.of(
        stock,
        blanks,
        random.nextInt(4) == 0 ? Optional.empty() : Optional.of(rings),
        random.nextInt(3));
  }

  /**
   * The fewest repeats lacking; then the least wire missing, mm; and for the pieces of the plan
   * opened lengths × 100 + coils, the least.
   */
  private record Best(int lacking, double missing, int cost) {
    boolean beats(Best other) {
      if (lacking != other.lacking) {
        return lacking < other.lacking;
      }
      return missing < other.missing - 1e-6;
    }
  }

  private static Best best(CutOrder order, CutPlan plan) {
    Map<List<Integer>, Integer> reached = new HashMap<>();
    int kinds = order.blanks().size() + 1;
    reached.put(new ArrayList<>(Collections.nCopies(kinds, 0)), 0);
    for (double stock : order.stockMm()) {
      List<int[]> ways = new ArrayList<>();
      ways(order, stock, new int[kinds], 0, ways);
      Map<List<Integer>, Integer> further = new HashMap<>();
      reached.forEach(
          (made, cost) -> {
            for (int[] way : ways) {
              add(order, further, made, cost, way);
            }
          });
      reached = further;
    }
    Best best = new Best(Integer.MAX_VALUE, 0, 0);
    for (Map.Entry<List<Integer>, Integer> way : reached.entrySet()) {
      List<Integer> made = way.getKey();
      Best one = new Best(lacking(order, made), missing(order, made), way.getValue());
      best = one.beats(best) ? one : best;
    }
    return new Best(best.lacking, best.missing, reached.getOrDefault(pieces(plan), 0));
  }

  private static List<Integer> pieces(CutPlan plan) {
    List<Integer> pieces = new ArrayList<>(plan.blanks());
    pieces.add(plan.rings());
    return pieces;
  }

  private static double missing(CutOrder order, List<Integer> made) {
    double missing = 0;
    for (int k = 0; k < order.blanks().size(); k++) {
      BlanksWanted blank = order.blanks().get(k);
      missing += (blank.wanted() - made.get(k)) * (blank.mm() + order.kerfMm());
    }
    int rings = order.rings().map(RingsWanted::wanted).orElse(0) - made.get(made.size() - 1);
    return rings > 0 ? missing + order.rings().orElseThrow().coilMm(rings) : missing;
  }

  /** PlanCounts up one by one: so many repeats fewer are wanted until what is made is enough. */
  private static int lacking(CutOrder order, List<Integer> made) {
    int repeats = 0;
    while (!enough(order, made, repeats)) {
      repeats++;
    }
    return repeats;
  }

  private static boolean enough(CutOrder order, List<Integer> made, int lacking) {
    int spares = order.rings().map(rings -> up(rings.spare(), rings.perRepeat())).orElse(0);
    for (BlanksWanted blank : order.blanks()) {
      spares = Math.max(spares, up(Math.min(blank.spare(), blank.wanted()), blank.perRepeat()));
    }
    for (int k = 0; k < order.blanks().size(); k++) {
      BlanksWanted blank = order.blanks().get(k);
      int spare = Math.min(blank.spare(), blank.wanted());
      if (made.get(k) < left(blank.wanted(), spare, blank.perRepeat(), lacking, spares)) {
        return false;
      }
    }
    int most = spares;
    int rings = made.get(made.size() - 1);
    return order.rings().stream()
        .allMatch(
            wish -> rings >= left(wish.wanted(), wish.spare(), wish.perRepeat(), lacking, most));
  }

  private static int up(int pieces, int perRepeat) {
    return (pieces + perRepeat - 1) / perRepeat;
  }

  /** Spares go first, a repeat at a time; once none of any kind is left, the chain's own do. */
  private static int left(int wanted, int spare, int perRepeat, int repeats, int ofSpares) {
    int left = wanted;
    for (int gone = 0; gone < repeats; gone++) {
      int least = gone < ofSpares ? wanted - spare : 0;
      left = Math.max(Math.min(left, least), left - perRepeat);
    }
    return Math.max(0, left);
  }

  private static void add(
      CutOrder order, Map<List<Integer>, Integer> to, List<Integer> made, int cost, int[] way) {
    List<Integer> sum = new ArrayList<>();
    int pieces = 0;
    for (int k = 0; k < way.length; k++) {
      sum.add(made.get(k) + way[k]);
      pieces += way[k];
    }
    for (int k = 0; k < order.blanks().size(); k++) {
      if (sum.get(k) > order.blanks().get(k).wanted()) {
        return;
      }
    }
    int ringsAtMost = order.rings().map(RingsWanted::wanted).orElse(0);
    sum.set(way.length - 1, Math.min(ringsAtMost, sum.get(way.length - 1)));
    int all = cost + (pieces > 0 ? 100 : 0) + (way[way.length - 1] > 0 ? 1 : 0);
    to.merge(sum, all, Math::min);
  }

  /** Every count of pieces whose wire, laid out piece by piece and kerf by kerf, is there. */
  private static void ways(CutOrder order, double stock, int[] way, int kind, List<int[]> ways) {
    if (kind == way.length) {
      ways.add(way.clone());
      return;
    }
    boolean rings = kind == way.length - 1;
    int most =
        rings
            ? order.rings().map(RingsWanted::wanted).orElse(0)
            : order.blanks().get(kind).wanted();
    for (int n = 0; n <= most; n++) {
      way[kind] = n;
      if (!fits(order, stock, way)) {
        break;
      }
      ways(order, stock, way, kind + 1, ways);
    }
    way[kind] = 0;
  }

  private static boolean fits(CutOrder order, double stock, int[] way) {
    double left = stock;
    int rings = way[way.length - 1];
    if (rings > 0) {
      left -= rings * order.rings().orElseThrow().turnMm();
      left -= order.rings().orElseThrow().tailMm();
      if (left < 0) {
        return false;
      }
      // the cut that frees the coil: in the tail, and past it where that is shorter than the kerf
      left = Math.max(0, left - pastTail(order));
    }
    for (int k = 0; k < order.blanks().size(); k++) {
      for (int n = 0; n < way[k]; n++) {
        left -= order.blanks().get(k).mm();
        if (left < 0) {
          return false;
        }
        left = Math.max(0, left - order.kerfMm());
      }
    }
    return true;
  }

  private static double pastTail(CutOrder order) {
    return Math.max(0, order.kerfMm() - order.rings().orElseThrow().tailMm());
  }
}
