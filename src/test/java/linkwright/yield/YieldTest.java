package linkwright.yield;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class YieldTest {
  private static int blanks(BlanksToCut cut) {
    assertThat(cut).isInstanceOf(BlanksToCut.Blanks.class);
    return ((BlanksToCut.Blanks) cut).blanks();
  }

  @Nested
  class HowManyToCut {
    @Test
    void noneAreCutWhenNoneAreWanted() {
      assertThat(Yield.cut(0, 27, 3, 0.05, 0.9)).isEqualTo(new BlanksToCut.Blanks(0, 1));
      assertThat(Yield.cut(0, 0, 50, 1, 1)).isEqualTo(new BlanksToCut.Blanks(0, 1));
    }

    @Test
    void theNumberIsTheFewestThatGivesTheChance() {
      Rate loss = Rate.usual(0.05).seen(9, 1);
      int blanks = blanks(Yield.cut(18, 9, 1, 0.05, 0.9));
      assertThat(ChanceOfEnough.of(18, blanks, loss)).isGreaterThanOrEqualTo(0.9);
      assertThat(ChanceOfEnough.of(18, blanks - 1, loss)).isLessThan(0.9);
    }

    @Test
    void oneGoodLinkFromAHabitOfTenPiecesIsTheRateItself() {
      assertThat(ChanceOfEnough.of(1, 1, Rate.usual(0.05))).isCloseTo(0.95, within(1e-12));
    }

    @Test
    void lossesSoFarAskForMoreAndGoodPiecesForFewer() {
      int before = blanks(Yield.cut(20, 0, 0, 0.05, 0.9));
      assertThat(blanks(Yield.cut(20, 5, 5, 0.05, 0.9))).isGreaterThan(before);
      assertThat(blanks(Yield.cut(20, 200, 0, 0.05, 0.9))).isLessThan(before);
    }

    @Test
    void everyPieceLostSoFarStillHasAnAnswer() {
      int blanks = blanks(Yield.cut(5, 0, 10, 0.05, 0.9));
      assertThat(blanks).isBetween(6, 100);
    }
  }

  @Nested
  class AtTheEdges {
    @Test
    void aHabitWithoutLossesCutsNoSpareUntilOneIsLost() {
      assertThat(Yield.cut(27, 0, 0, 0, 1)).isEqualTo(new BlanksToCut.Blanks(27, 1));
      assertThat(blanks(Yield.cut(27, 0, 1, 0, 0.9))).isGreaterThan(27);
    }

    @Test
    void aHabitOfLosingAllIsToldUntilOneComesGood() {
      assertThat(Yield.cut(3, 0, 4, 1, 0.9))
          .isInstanceOfSatisfying(
              BlanksToCut.OutOfReach.class,
              told -> assertThat(told.sentence()).contains("By this loss every piece is scrapped"));
      assertThat(ChanceOfEnough.of(3, 1000, Rate.usual(1))).isZero();
      assertThat(blanks(Yield.cut(1, 5, 0, 1, 0.9))).isGreaterThan(1);
    }

    @Test
    void certaintyIsToldToBeOutOfReach() {
      assertThat(Yield.cut(3, 0, 0, 0.05, 1))
          .isInstanceOfSatisfying(
              BlanksToCut.OutOfReach.class,
              told -> assertThat(told.sentence()).contains("ask for a chance below 100 %"));
    }

    @Test
    void moreThanHandsCanMakeIsTold() {
      assertThat(Yield.cut(Integer.MAX_VALUE, 0, 0, 0.05, 0.9))
          .isInstanceOf(BlanksToCut.OutOfReach.class);
      assertThat(Yield.cut(1000, 0, 1_000_000, 0.5, 0.99))
          .isInstanceOf(BlanksToCut.OutOfReach.class);
    }

    @Test
    void largeNumbersStayNumbers() {
      Rate loss = Rate.usual(0.4).seen(60_000, 40_000);
      int blanks = blanks(Yield.cut(300_000, loss, 0.5));
      assertThat(blanks).isBetween(499_000, 501_000);
      assertThat(ChanceOfEnough.of(300_000, 1_000_000, loss)).isCloseTo(1, within(1e-9));
      assertThat(ChanceOfEnough.of(1_000_000, 1_000_000, loss)).isZero();
    }

    @Test
    void whereNoneAreWantedAllIsDone() {
      assertThat(ChanceOfEnough.of(0, 0, Rate.usual(0.5))).isEqualTo(1);
    }

    @Test
    void tooFewBlanksGiveNoChance() {
      assertThat(ChanceOfEnough.of(5, 4, Rate.usual(0.05))).isZero();
      assertThat(ChanceOfEnough.of(5, 0, Rate.usual(0))).isZero();
    }

    @Test
    void argumentsOutsideTheirDomainAreNamed() {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> Yield.cut(-1, 0, 0, 0.05, 0.9))
          .withMessageContaining("more")
          .withMessageContaining("-1");
      assertThatIllegalArgumentException()
          .isThrownBy(() -> Yield.cut(1, 0, -2, 0.05, 0.9))
          .withMessage("failed must be 0 or more: -2");
      assertThatIllegalArgumentException()
          .isThrownBy(() -> Yield.cut(1, -3, 0, 0.05, 0.9))
          .withMessage("succeeded must be 0 or more: -3");
      assertThatIllegalArgumentException()
          .isThrownBy(() -> new Rate(Double.POSITIVE_INFINITY, 1))
          .withMessageContaining("failures");
      assertThatIllegalArgumentException()
          .isThrownBy(() -> new Rate(1, Double.POSITIVE_INFINITY))
          .withMessageContaining("successes");
      assertThatIllegalArgumentException()
          .isThrownBy(() -> Yield.cut(1, 0, 0, Double.NaN, 0.9))
          .withMessageContaining("NaN");
      assertThatIllegalArgumentException()
          .isThrownBy(() -> Yield.cut(1, 0, 0, 0.05, 0))
          .withMessageContaining("confidence");
    }
  }

  @Nested
  class Properties {
    private static final long SEED = 20261;

    @Test
    void oneBlankMoreNeverLowersTheChance() {
      Random random = new Random(SEED);
      for (int i = 0; i < 300; i++) {
        Rate loss =
            Rate.usual(random.nextDouble()).seen(random.nextInt(40), 2 * random.nextInt(40));
        int more = 1 + random.nextInt(60);
        double last = 0;
        for (int blanks = more - 1; blanks < more + 80; blanks++) {
          double chance = ChanceOfEnough.of(more, blanks, loss);
          assertThat(chance).as("seed %d, run %d, %s", SEED, i, loss).isBetween(last, 1.0);
          last = chance;
        }
      }
    }

    @Test
    void aHigherConfidenceNeverAsksForFewerBlanks() {
      Random random = new Random(SEED);
      for (int i = 0; i < 300; i++) {
        Rate loss = Rate.usual(0.9 * random.nextDouble()).seen(random.nextInt(40), 0);
        int more = 1 + random.nextInt(60);
        int at80 = blanks(Yield.cut(more, loss, 0.8));
        assertThat(blanks(Yield.cut(more, loss, 0.95)))
            .as("seed %d, run %d, %s", SEED, i, loss)
            .isGreaterThanOrEqualTo(at80);
      }
    }
  }

  @Test
  void theShareExpectedToBeLostLiesBetweenTheHabitAndWhatWasSeen() {
    // Beta(10 · 0.1 + 3, 10 · 0.9 + 7): 4 of 20.
    assertThat(Rate.usual(0.1).seen(7, 3).mean()).isCloseTo(0.2, within(1e-12));
    assertThat(Rate.usual(0.1).mean()).isCloseTo(0.1, within(1e-12));
  }

  @Nested
  class Redos {
    @Test
    void theyAreTheFailuresOverTheSuccessesLessOne() {
      // 19 joints, 6 of them done again, on a habit of 10 %: (1 + 6)/(9 + 19 − 1).
      assertThat(Rate.usual(0.1).seen(19, 6).expectedRedosPerJoint())
          .hasValueCloseTo(7.0 / 27, within(1e-12));
    }

    @Test
    void theyAreUnknownWhileAlmostNothingCameGood() {
      assertThat(Rate.usual(0.95).seen(0, 3).expectedRedosPerJoint()).isEmpty();
      assertThat(new Rate(2, 1).expectedRedosPerJoint()).isEmpty();
    }

    @Test
    void aHabitWithoutFailuresExpectsNone() {
      assertThat(Rate.usual(0).expectedRedosPerJoint()).hasValue(0);
    }
  }

  /** One lot by two ways: the sum of the beta negative binomial, and the integral over the rate. */
  @Test
  void one_lot_together_is_as_likely_as_alone() {
    for (double usual : new double[] {0, 0.01, 0.05, 0.3, 0.9, 1}) {
      for (int lost : new int[] {0, 3, 200}) {
        Rate loss = Rate.usual(usual).seen(40, lost);
        for (int more : new int[] {0, 1, 20, 300}) {
          double[][] needed =
              Together.further(
                  java.util.List.of(new SizeLot(more, more + 2)), java.util.List.of(), loss, 30, 0);
          double sum = 0;
          for (int further = 0; further <= 30; further++) {
            sum += needed[further][0];
            assertThat(sum)
                .as(usual + " " + lost + " " + more + " " + further)
                .isCloseTo(ChanceOfEnough.of(more, more + 2 + further, loss), within(1e-6));
          }
        }
      }
    }
  }
}
