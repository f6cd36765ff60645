package linkwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What holds of every plan, on orders by chance. */
class CuttingPropertiesTest {
  @Test
  void piecesAndKerfsAndRestAreTheStockAndNeverMore() {
    long seed = 20_261;
    Random random = new Random(seed);
    for (int run = 0; run < 200; run++) {
      CutOrder order = random(random);
      CutPlan plan = Cutting.plan(order);
      int rings = 0;
      int[] blanks = new int[order.blanks().size()];
      for (LengthCut cut : plan.cuts()) {
        String told = "seed " + seed + " run " + run + " " + order + " " + cut;
        double parts = cut.piecesMm() + cut.coilMm() + cut.kerfsMm() + cut.restMm();
        assertThat(parts).as(told).isEqualTo(cut.stockMm(), within(1e-9));
        assertThat(cut.stockMm()).as(told).isLessThanOrEqualTo(order.stockMm().get(cut.place()));
        assertThat(List.of(cut.restMm(), cut.kerfsMm())).as(told).allMatch(mm -> mm >= 0);
        rings += cut.rings();
        double bare = 0;
        for (int k = 0; k < cut.blanks().size(); k++) {
          blanks[k] += cut.blanks().get(k);
          bare += cut.blanks().get(k) * order.blanks().get(k).mm();
        }
        assertThat(bare).as(told).isLessThanOrEqualTo(cut.piecesMm() + 1e-9);
      }
      assertThat(rings).isEqualTo(plan.rings());
      assertThat(Arrays.stream(blanks).boxed().toList()).isEqualTo(plan.blanks());
    }
  }

  @Test
  void allLengthsTenTimesAsLongGiveTheSameCounts() {
    long seed = 7_431;
    Random random = new Random(seed);
    for (int run = 0; run < 60; run++) {
      CutOrder order = random(random);
      CutPlan plan = Cutting.plan(order);
      CutPlan scaled = Cutting.plan(scaled(order, 10));
      assertThat(scaled.blanks()).as("seed %d run %d", seed, run).isEqualTo(plan.blanks());
      assertThat(PlanCounts.opened(scaled)).isEqualTo(PlanCounts.opened(plan));
    }
  }

  @Test
  void theOrderOfTheLengthsChangesNothing() {
    long seed = 99;
    Random random = new Random(seed);
    for (int run = 0; run < 60; run++) {
      CutOrder order = random(random);
      List<Double> shuffled = new ArrayList<>(order.stockMm());
      Collections.shuffle(shuffled, random);
      CutOrder other = CutOrder.of(shuffled, order.blanks(), order.rings(), order.kerfMm());
      assertThat(Cutting.plan(other).blanks())
          .as("seed %d run %d", seed, run)
          .isEqualTo(Cutting.plan(order).blanks());
    }
  }

  private static CutOrder scaled(CutOrder order, double by) {
    return CutOrder.of(
        order.stockMm().stream().map(mm -> mm * by).toList(),
        order.blanks().stream().map(b -> BlanksWanted.each(b.mm() * by, b.wanted())).toList(),
        order.rings().map(r -> RingsWanted.each(r.turnMm() * by, r.tailMm() * by, r.wanted())),
        order.kerfMm() * by);
  }

  private static CutOrder random(Random random) {
    List<Double> stock = new ArrayList<>();
    for (int i = random.nextInt(9); i >= 0; i--) {
      stock.add(random.nextInt(4000) / 10.0);
    }
    List<BlanksWanted> blanks = new ArrayList<>();
    int wanted = 0;
    for (int i = random.nextInt(3); i >= 0; i--) {
      blanks.add(BlanksWanted.each(10 + random.nextInt(400) / 10.0, random.nextInt(20)));
      wanted += blanks.get(blanks.size() - 1).wanted();
    }
    RingsWanted ring = RingsWanted.each(6 + random.nextInt(80) / 10.0, 10, wanted + 1);
    return CutOrder.of(
        stock,
        blanks,
        random.nextBoolean() ? Optional.of(ring) : Optional.empty(),
        random.nextInt(6) / 10.0);
  }
}
