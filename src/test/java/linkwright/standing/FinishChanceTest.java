package linkwright.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import linkwright.plan.LinksOfSize;
import linkwright.plan.Plan;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.routine.PieceKind;
import linkwright.yield.Rate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The chance that is told beside what comes of a chain that is made by that rule many times. */
class FinishChanceTest {
  private static final int RUNS = 20_000;
  private static final long SEED = 20261126;

  @ParameterizedTest(name = "{0}, {1} lost")
  @CsvSource(
      delimiter = ';',
      value = {
        "1390 mm; 5 %",
        "1420 mm; 5 %",
        "500 mm, 500 mm, 520 mm; 5 %",
        "700 mm, 300 mm, 300 mm, 200 mm; 10 %",
        "900 mm, 800 mm; 15 %"
      })
  void is_what_comes_of_cutting_as_told_and_giving_what_is_over_to_what_falls_short(
      String stock, String loss) {
    Wishes wishes =
        Wishes.common()
            .with(WishKeys.STOCK, stock)
            .with(WishKeys.USUAL_LOSS, loss)
            .with(WishKeys.KERF, "0.3 mm");
    Standing standing = Standing.ofWish(wishes.texts(), JobBook.HANDBOOK);
    Random random = new Random(SEED);
    int finished = 0;
    for (int run = 0; run < RUNS; run++) {
      finished += new Making(standing, random).finishes() ? 1 : 0;
    }
    double came = (double) finished / RUNS;
    assertThat(standing.chance().orElseThrow())
        .as("seed " + SEED + ", came true " + came)
        .isBetween(0.02, 0.9999)
        .isCloseTo(came, within(0.015));
  }

  @ParameterizedTest(name = "{0} and {1} for rings, {2} lost")
  @CsvSource(
      delimiter = ';',
      value = {"1300 mm; 605 mm; 7 %", "1320 mm; 640 mm; 10 %", "2 m; 1 m; 7 %", "1 m, 412 mm; 600 mm; 3 %"})
  void of_several_sizes_none_makes_up_for_another(String stock, String ringStock, String loss) {
    Wishes wishes =
        Wishes.common()
            .without(WishKeys.LINK_BLANK)
            .with(WishKeys.WIRE, "1.3 mm")
            .with(WishKeys.LINK_PATTERN, "long")
            .with(WishKeys.LINK_LENGTH, "15 mm")
            .with(WishKeys.LINK_WIDTH, "6 mm")
            .with(WishKeys.LINK_REPEAT, "2 long + 1 round ring=5 mm + 1 oval length=12 mm")
            .with(WishKeys.RING_INSIDE, "3.4 mm")
            .with(WishKeys.RING_WIRE, "0.7 mm")
            .with(WishKeys.RING_ENDS, "5 mm")
            .with(WishKeys.FINISHED, "45 cm")
            .with(WishKeys.KERF, "0.2 mm")
            .with(WishKeys.STOCK, stock)
            .with(WishKeys.RING_STOCK, ringStock)
            .with(WishKeys.CONFIDENCE, "95 %")
            .with(WishKeys.USUAL_LOSS, loss);
    Standing standing = Standing.ofWish(wishes.texts(), JobBook.HANDBOOK);
    Random random = new Random(SEED);
    int finished = 0;
    for (int run = 0; run < RUNS; run++) {
      finished += new Making(standing, random).finishesEachSize() ? 1 : 0;
    }
    double came = (double) finished / RUNS;
    assertThat(standing.chance().orElseThrow())
        .as("seed " + SEED + ", came true " + came)
        .isGreaterThan(0.02)
        .isCloseTo(came, within(0.015));
  }

  /** One chain made at the bench: each piece comes good or is lost. */
  private static final class Making {
    private final Standing standing;
    private final Plan plan;
    private final Random random;
    private final List<Double> over = new ArrayList<>();
    private int links;
    private int rings;
    private final double linkLoss;
    private final double ringLoss;

    Making(Standing standing, Random random) {
      this.standing = standing;
      this.plan = standing.counted().plan().orElseThrow();
      this.random = random;
      WireStand wire = standing.wire().orElseThrow();
      for (WireStand.Bar bar : wire.links()) {
        links += bar.next().links();
        rings += bar.next().rings();
        over.add(bar.overMm());
      }
      linkLoss = rate(standing.left().get(PieceKind.LINK).loss());
      ringLoss = rate(standing.left().get(PieceKind.RING).loss());
    }

    boolean finishes() {
      int good = good(links, linkLoss);
      while (good < plan.links()) {
        if (!oneMoreLink()) {
          return false;
        }
        good += good(1, linkLoss);
      }
      for (double mm : over) {
        rings += (int) Math.max(0, (mm - plan.wish().coilTailMm()) / plan.ringTurnMm());
      }
      return good(rings, ringLoss) >= plan.allRings();
    }

    /** Each size has its own blanks; what is over goes to whatever link, then ring, is short. */
    boolean finishesEachSize() {
      int[] blanks = new int[plan.sizes().size()];
      int ends = 0;
      WireStand wire = standing.wire().orElseThrow();
      for (WireStand.Bar bar : wire.links()) {
        for (int i = 0; i < blanks.length; i++) {
          blanks[i] += bar.blanks().get(i);
        }
        ends += bar.ends();
      }
      for (int i = 0; i < blanks.length; i++) {
        LinksOfSize size = plan.sizes().get(i);
        if (!made(blanks[i], size.links(), linkLoss, size.eachMm(plan.wish()))) {
          return false;
        }
      }
      if (!made(ends, 2, ringLoss, plan.endRings().orElseThrow().eachMm(plan.wish()))) {
        return false;
      }
      int coiled = 0;
      for (WireStand.Bar bar : wire.rings().orElseThrow()) {
        coiled += bar.next().rings();
        double mm = bar.overMm() - plan.wish().coilTailMm();
        coiled += (int) Math.max(0, mm / plan.ringTurnMm());
      }
      return good(coiled, ringLoss) >= plan.rings();
    }

    private boolean made(int blanks, int wanted, double loss, double eachMm) {
      int good = good(blanks, loss);
      while (good < wanted) {
        if (!oneMore(eachMm - plan.wish().kerfMm())) {
          return false;
        }
        good += good(1, loss);
      }
      return true;
    }

    private boolean oneMoreLink() {
      return oneMore(plan.linkBlankMm());
    }

    private boolean oneMore(double blankMm) {
      int shortest = -1;
      for (int i = 0; i < over.size(); i++) {
        boolean does = over.get(i) >= blankMm;
        if (does && (shortest < 0 || over.get(i) < over.get(shortest))) {
          shortest = i;
        }
      }
      if (shortest < 0) {
        return false;
      }
      over.set(shortest, Math.max(0, over.get(shortest) - blankMm - plan.wish().kerfMm()));
      return true;
    }

    private int good(int pieces, double loss) {
      int good = 0;
      for (int i = 0; i < pieces; i++) {
        good += random.nextDouble() < loss ? 0 : 1;
      }
      return good;
    }

    /** A draw from the Beta distribution, of two from gamma distributions. */
    private double rate(Rate rate) {
      double lost = gamma(rate.failures());
      return lost / (lost + gamma(rate.successes()));
    }

    /** Marsaglia and Tsang, A simple method for generating gamma variables, 2000 (from memory). */
    private double gamma(double shape) {
      if (shape < 1) {
        return gamma(shape + 1) * Math.pow(random.nextDouble(), 1 / shape);
      }
      double d = shape - 1.0 / 3;
      double c = 1 / Math.sqrt(9 * d);
      while (true) {
        double x = random.nextGaussian();
        double v = Math.pow(1 + c * x, 3);
        if (v > 0 && Math.log(1 - random.nextDouble()) < x * x / 2 + d - d * v + d * Math.log(v)) {
          return d * v;
        }
      }
    }
  }
}
