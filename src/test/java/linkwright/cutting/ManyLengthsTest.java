package linkwright.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ManyLengthsTest {
  static CutOrder order(long seed, double share, double from, double to) {
    Random random = new Random(seed);
    List<Double> stock = new ArrayList<>();
    double all = 0;
    for (int i = 0; i < 1000; i++) {
      double mm = Math.round((from + (to - from) * random.nextDouble()) * 10) / 10.0;
      stock.add(mm);
      all += mm;
    }
    // one link of each size and three rings
    double set = 38.1 + 25.4 + 31 + 0.9 + 3 * 11.032;
    int sets = (int) (all * share / set);
    return CutOrder.of(
        stock,
        List.of(new BlankWish(38.1, sets), new BlankWish(25.4, sets), new BlankWish(31, sets)),
        Optional.of(RingWish.atBothEnds(11.032, 10, 3 * sets + 1)),
        0.3);
  }

  @Test
  void scratch() {
    for (double[] range : new double[][] {{50, 600}, {20, 200}, {400, 412}, {90, 1200}}) {
      for (double share : new double[] {0.3, 0.8, 1.5}) {
        int proved = 0;
        long worst = 0;
        StringBuilder s = new StringBuilder();
        for (int seed = 1; seed <= 10; seed++) {
          CutOrder order = order(seed, share, range[0], range[1]);
          long start = System.nanoTime();
          CutPlan plan = Cutting.plan(order);
          long took = (System.nanoTime() - start) / 1_000_000;
          if (seed > 2) worst = Math.max(worst, took);
          proved += plan.proved() ? 1 : 0;
          s.append(
              String.format(
                  " %d/%d/%d%s", plan.links(), plan.opened(), took, plan.proved() ? "" : "?"));
        }
        System.out.println(
            range[0]
                + ".."
                + range[1]
                + " share "
                + share
                + " proved "
                + proved
                + " worst ms "
                + worst
                + s);
      }
    }
  }
}
