package linkwright.yield;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Losses counted while pieces are on their way. */
class LossOnTheWayTest {
  private static final long SEED = 20261126;
  private static final int RUNS = 4_000;

  @Test
  void a_run_of_which_all_are_judged_is_counted_as_good_and_lost() {
    // 40 begun: 2 lost at the forming, 3 at the soldering, 1 when judged.
    Rate told =
        LossOnTheWay.seen(
            0.05, List.of(new StagePassed(38, 2), new StagePassed(35, 3), new StagePassed(34, 1)));
    Rate plain = Rate.usual(0.05).seen(34, 6);
    assertThat(told.failures()).isCloseTo(plain.failures(), within(1e-9));
    assertThat(told.successes()).isCloseTo(plain.successes(), within(1e-9));
  }

  @Test
  void two_of_thirty_three_lost_at_the_soldering_are_no_fifth_of_all() {
    // 64 formed, 31 through the soldering, 2 melted: 6 % of those that were soldered.
    double share =
        LossOnTheWay.seen(
                0.04,
                List.of(
                    new StagePassed(64, 0),
                    new StagePassed(31, 2),
                    new StagePassed(0, 0),
                    new StagePassed(0, 0)))
            .mean();
    assertThat(share).isBetween(0.04, 0.08);
  }

  @Test
  void a_loss_never_makes_less_be_believed_lost() {
    for (int passed = 0; passed < 60; passed++) {
      List<StagePassed> before = List.of(new StagePassed(passed, 0), new StagePassed(0, 0));
      List<StagePassed> after = List.of(new StagePassed(passed, 1), new StagePassed(0, 0));
      assertThat(LossOnTheWay.seen(0.2, after).mean())
          .isGreaterThan(LossOnTheWay.seen(0.2, before).mean());
    }
  }

  @Test
  void where_nothing_or_everything_is_usually_lost_that_is_kept_until_it_is_seen_otherwise() {
    List<StagePassed> none = List.of(new StagePassed(0, 0), new StagePassed(0, 0));
    assertThat(LossOnTheWay.seen(0, none).mean()).isZero();
    assertThat(LossOnTheWay.seen(1, none).mean()).isEqualTo(1);
    List<StagePassed> good = List.of(new StagePassed(9, 0), new StagePassed(9, 0));
    assertThat(LossOnTheWay.seen(1, good).mean()).isBetween(0.1, 0.9);
  }

  /**
   * Makers whose true loss is spread about the usual one as the usual says, split over four stages;
   * when part of the run is through the hot stage the blanks still to cut are told and cut, all are
   * made, and enough must come good about as often as was wished, wherever on the way the loss
   * really is.
   */
  @ParameterizedTest(name = "{0} usually lost, {1} of the loss at the soldering, {2} at the check")
  @CsvSource({"0.05, 0.25, 0.25", "0.05, 1, 0", "0.12, 1, 0", "0.12, 0.5, 0.5", "0.12, 0, 1"})
  void the_chance_told_in_mid_run_holds(double usual, double soldered, double checked) {
    Random random = new Random(SEED);
    double rest = (1 - soldered - checked) / 2;
    double[] parts = {rest, soldered, rest, checked};
    int wanted = 40;
    int finished = 0;
    int cut = 0;
    int cutByJudgedAlone = 0;
    for (int run = 0; run < RUNS; run++) {
      double lossTrue = drawn(usual, random);
      double[] fails = new double[4];
      for (int i = 0; i < 4; i++) {
        fails[i] = 1 - Math.pow(1 - lossTrue, parts[i]);
      }
      int begun = blanks(wanted, Rate.usual(usual));
      int formed = passing(begun, fails[0], random);
      int toSolder = Math.min(formed, 10 + random.nextInt(20));
      int through = passing(toSolder, fails[1], random);
      OnTheWay way =
          new OnTheWay(
              usual,
              List.of(
                  new StagePassed(formed, begun - formed),
                  new StagePassed(through, toSolder - through),
                  new StagePassed(0, 0),
                  new StagePassed(0, 0)),
              List.of(0, formed - toSolder, through, 0));
      int inWork = formed - toSolder + through;
      int more = way.further(List.of(wanted), 0.9).further().orElseThrow();
      cut += more;
      Rate judgedAlone = Rate.usual(usual).seen(0, begun - formed + toSolder - through);
      cutByJudgedAlone += Math.max(0, blanks(wanted, judgedAlone) - inWork);
      int soldering = formed - toSolder + passing(more, fails[0], random);
      int good = through + passing(soldering, fails[1], random);
      good = passing(passing(good, fails[2], random), fails[3], random);
      finished += good >= wanted ? 1 : 0;
    }
    assertThat((double) finished / RUNS).as("seed " + SEED).isGreaterThan(0.89);
    assertThat(cut).as("seed " + SEED).isLessThanOrEqualTo(cutByJudgedAlone);
  }

  /**
   * 28 links wait for the last check after three of 31 were lost before it: what is cut anew does,
   * and is one more at most than would, in a simulation that draws what each stage loses.
   */
  @ParameterizedTest(name = "{0} usually lost: {1} more, {2} if they were new ones")
  @CsvSource({"0.04, 3, 7", "0.08, 5, 9", "0.12, 7, 11"})
  void of_pieces_that_came_far_few_are_cut_anew(double usual, int asked, int asNew) {
    List<StagePassed> stages =
        List.of(
            new StagePassed(31, 0),
            new StagePassed(30, 1),
            new StagePassed(28, 2),
            new StagePassed(0, 0));
    int further =
        new OnTheWay(usual, stages, List.of(0, 0, 0, 28))
            .further(List.of(28), 0.9)
            .further()
            .orElseThrow();
    assertThat(further).isEqualTo(asked);
    assertThat(blanks(28, LossOnTheWay.seen(usual, stages)) - 28).isEqualTo(asNew);
    assertThat(finished(usual, stages, further)).as("seed " + SEED).isGreaterThan(0.895);
    assertThat(finished(usual, stages, further - 2)).as("seed " + SEED).isLessThan(0.9);
  }

  /** How often 28 come good of 28 that wait for the last stage and so many new ones. */
  private static double finished(double usual, List<StagePassed> stages, int further) {
    Random random = new Random(SEED);
    int finished = 0;
    for (int run = 0; run < 5 * RUNS; run++) {
      int there = further;
      for (int i = 0; i < stages.size(); i++) {
        Rate stage = LossOnTheWay.byStage(usual, stages).get(i);
        double lost = gamma(stage.failures(), random);
        double fails = lost / (lost + gamma(stage.successes(), random));
        there = passing(there + (i == stages.size() - 1 ? 28 : 0), fails, random);
      }
      finished += there >= 28 ? 1 : 0;
    }
    return finished / (5.0 * RUNS);
  }

  private static int blanks(int wanted, Rate loss) {
    return Yield.cut(wanted, loss, 0.9) instanceof BlanksToCut.Blanks enough ? enough.blanks() : 0;
  }

  private static int passing(int pieces, double fails, Random random) {
    int passed = 0;
    for (int i = 0; i < pieces; i++) {
      passed += random.nextDouble() < fails ? 0 : 1;
    }
    return passed;
  }

  /** A share drawn from what is usually lost. */
  private static double drawn(double usual, Random random) {
    Rate rate = Rate.usual(usual);
    double lost = gamma(rate.failures(), random);
    return lost / (lost + gamma(rate.successes(), random));
  }

  /** G. Marsaglia, W. W. Tsang, ACM Trans. Math. Softw. 26 (2000) 363, from memory. */
  private static double gamma(double shape, Random random) {
    if (shape < 1) {
      return gamma(shape + 1, random) * Math.pow(random.nextDouble(), 1 / shape);
    }
    double d = shape - 1.0 / 3;
    while (true) {
      double x = random.nextGaussian();
      double v = Math.pow(1 + x / Math.sqrt(9 * d), 3);
      if (v > 0 && Math.log(random.nextDouble()) < x * x / 2 + d - d * v + d * Math.log(v)) {
        return d * v;
      }
    }
  }
}
