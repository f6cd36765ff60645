package linkwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A thousand unlike lengths, blanks of one size or three, and rings of the same wire. */
class ManyLengthsTest {
  private static final int SEEDS = 10;

  /**
   * @param share the wire that the order takes, by length, of all that is on hand
   */
  private static CutOrder order(long seed, double share, double... blanksMm) {
    Random random = new Random(seed);
    List<Double> stock = new ArrayList<>();
    double all = 0;
    for (int i = 0; i < 1000; i++) {
      double mm = Math.round((50 + 550 * random.nextDouble()) * 10) / 10.0;
      stock.add(mm);
      all += mm;
    }
    int sizes = blanksMm.length;
    double repeat = Arrays.stream(blanksMm).sum() + sizes * (0.3 + 11.032);
    int repeats = (int) (all * share / repeat);
    return CutOrder.of(
        stock,
        Arrays.stream(blanksMm).mapToObj(mm -> BlanksWanted.each(mm, repeats)).toList(),
        Optional.of(new RingsWanted(11.032, 10, sizes * repeats + 1, sizes, 0)),
        0.3);
  }

  @ParameterizedTest(name = "{0} of the wire")
  @ValueSource(doubles = {0.3, 0.8, 1.5})
  void forOneSizeThePlanIsProved(double share) {
    for (int seed = 1; seed <= SEEDS; seed++) {
      CutPlan plan = Cutting.plan(order(seed, share, 38.1));

      assertThat(plan.proved()).as("seed %d", seed).isTrue();
      assertThat(plan.complete()).as("seed %d", seed).isEqualTo(share < 1);
    }
  }

  /** The fewest repeats lacking, as the first release's longer search proved them. */
  @ParameterizedTest(name = "seed {0}: {1} lacking")
  @CsvSource({"1, 1279", "2, 1259", "3, 1280"})
  void forThreeSizesTheBestFoundIsNearTheBestThereIsAndNotCalledProved(int seed, int fewest) {
    CutOrder order = order(seed, 1.5, 38.1, 25.4, 31);
    CutPlan plan = Cutting.plan(order);

    int repeats = order.blanks().get(0).wanted();
    assertThat(plan.proved()).isFalse();
    assertThat(PlanCounts.lacking(plan)).isBetween(fewest, fewest + (repeats - fewest) / 100);
  }

  @Test
  void onceWarmAPlanTakesLessThanATenthOfASecond() {
    for (double[] blanks : List.of(new double[] {38.1}, new double[] {38.1, 25.4, 31})) {
      long[] took = new long[SEEDS];
      for (int seed = -4; seed < SEEDS; seed++) {
        CutOrder order = order(Math.floorMod(seed, SEEDS) + 1, 1.5, blanks);
        // the time of this thread alone, and the better of two: what else runs on the machine takes
        // the cores' caches too
        long best = Long.MAX_VALUE;
        for (int again = 0; again < 2; again++) {
          long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
          CutPlan plan = Cutting.plan(order);
          long ended = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
          assertThat(plan.complete()).isFalse();
          best = Math.min(best, (ended - start) / 1_000_000);
        }
        took[Math.floorMod(seed, SEEDS)] = best;
      }
      System.out.println(
          "Cutting 1,000 lengths, sizes of blank "
              + blanks.length
              + ", ms of processor: "
              + Arrays.toString(took));
      Arrays.sort(took);
      assertThat(took[SEEDS / 2]).isLessThan(100);
    }
  }
}
