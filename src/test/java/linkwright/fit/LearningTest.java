package linkwright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class LearningTest {
  private static final Shape BAR = new BarShape(2);
  private static final Maker PRIOR = Maker.unknown(1.03);
  private static final LinkSize WISH = new LinkSize(15, 4);
  private static final Map<String, Double> END = Map.of("end", 3.0);

  private static Maker learn(Tried... tried) {
    return new Learning(BAR, PRIOR, List.of(tried), WISH).learn();
  }

  private static Tried measured(double blankMm, double endMm, Maker hands) {
    Map<String, Double> formers = Map.of("end", endMm);
    FormedSize size = BAR.size(blankMm, formers, hands).orElseThrow();
    return Tried.measured(blankMm, formers, size.lengthMm(), size.widthMm());
  }

  private static double lengthMm(Maker maker, double blankMm) {
    return BAR.size(blankMm, END, maker).orElseThrow().lengthMm();
  }

  private static Tried judged(Verdict... verdicts) {
    return Tried.judged(28, END, List.of(verdicts));
  }

  @Nested
  class Measured {
    @Test
    void withoutPiecesNothingIsLearned() {
      Maker maker = learn();
      assertThat(maker.growth()).isEqualTo(1.03);
      assertThat(maker.growthSpread()).isCloseTo(0.03, within(1e-12));
      assertThat(maker.extraTurnSpreadDeg()).isCloseTo(12, within(1e-9));
    }

    @Test
    void onePieceAgreesWithTheClosedForm() {
      // Straight-line shape and normal noise: the posterior is (P⁻¹ + JᵀN⁻¹J)⁻¹, worked out here
      // with the matrices of an outside library.
      Tried piece = Tried.measured(28, END, 15.9, 4.11);
      double perDeg = 3 * Math.PI / 180;
      RealMatrix j =
          MatrixUtils.createRealMatrix(new double[][] {{3 - 15, -1, -perDeg}, {3, 0, 0}});
      double turn = perDeg * 4 / Math.sqrt(2);
      RealMatrix noise =
          MatrixUtils.createRealMatrix(new double[][] {{turn * turn + 0.01, 0}, {0, 0.01}});
      RealMatrix prior = MatrixUtils.createRealDiagonalMatrix(new double[] {0.0009, 0.25, 144});
      RealMatrix posterior =
          MatrixUtils.inverse(
              MatrixUtils.inverse(prior)
                  .add(j.transpose().multiply(MatrixUtils.inverse(noise)).multiply(j)));
      FormedSize at = BAR.size(28, END, PRIOR).orElseThrow();
      double[] moved =
          posterior
              .multiply(j.transpose())
              .multiply(MatrixUtils.inverse(noise))
              .operate(new double[] {15.9 - at.lengthMm(), 4.11 - at.widthMm()});
      Maker maker = learn(piece);
      assertThat(maker.growth()).isCloseTo(1.03 + moved[0], within(1e-9));
      assertThat(maker.lostMm()).isCloseTo(moved[1], within(1e-8));
      assertThat(maker.extraTurnDeg()).isCloseTo(moved[2], within(1e-6));
      assertThat(maker.covariance().growthGrowth())
          .isCloseTo(posterior.getEntry(0, 0), within(1e-10));
      assertThat(maker.covariance().lostTurn()).isCloseTo(posterior.getEntry(1, 2), within(1e-7));
      assertThat(maker.covariance().turnTurn()).isCloseTo(posterior.getEntry(2, 2), within(1e-6));
    }

    @Test
    void manyPiecesOverUnlikeFormersFindTheHands() {
      Maker hands = new Maker(1.07, 0.8, -9, Covariance.ofSpreads(0, 0, 0));
      Tried[] tried = new Tried[60];
      for (int i = 0; i < tried.length; i++) {
        tried[i] = measured(30 + i % 7, 1.5 + i % 5, hands);
      }
      Maker maker = learn(tried);
      assertThat(maker.growth()).isCloseTo(1.07, within(0.003));
      assertThat(maker.lostMm()).isCloseTo(0.8, within(0.15));
      assertThat(maker.extraTurnDeg()).isCloseTo(-9, within(1.5));
    }

    @Test
    void oneByOneIsAsGoodAsAllAtOnce() {
      Maker hands = new Maker(1.05, 0.4, 8, Covariance.ofSpreads(0, 0, 0));
      Tried first = measured(28, 3, hands);
      Tried second = measured(29, 2.5, hands);
      Maker after = new Learning(BAR, learn(first), List.of(second), WISH).learn();
      assertThat(after.growth()).isCloseTo(learn(first, second).growth(), within(1e-6));
      assertThat(after.extraTurnDeg()).isCloseTo(learn(first, second).extraTurnDeg(), within(1e-3));
    }

    @Test
    void aPieceMeasuredOneWayOnlyCounts() {
      Tried length = new Tried(28, END, OptionalDouble.of(14), OptionalDouble.empty(), List.of());
      Tried width = new Tried(28, END, OptionalDouble.empty(), OptionalDouble.of(4.3), List.of());
      assertThat(lengthMm(learn(length), 28)).isCloseTo(14, within(0.1));
      assertThat(learn(width).growth()).isGreaterThan(1.05);
      assertThat(learn(width).extraTurnDeg()).isCloseTo(0, within(1e-9));
    }

    @Test
    void eachPieceNarrowsWhatIsKnown() {
      Tried piece = measured(28, 3, PRIOR);
      Maker one = learn(piece);
      Maker two = learn(piece, piece);
      assertThat(one.growthSpread()).isLessThan(PRIOR.growthSpread());
      assertThat(two.growthSpread()).isLessThan(one.growthSpread());
      assertThat(two.extraTurnSpreadDeg()).isLessThan(one.extraTurnSpreadDeg());
    }

    @Test
    void aBlankThatSuchHandsCouldNotFormTeachesNothing() {
      Maker maker = learn(Tried.measured(10, END, 15, 4));
      assertThat(maker.growth()).isEqualTo(1.03);
      assertThat(maker.extraTurnSpreadDeg()).isCloseTo(12, within(1e-9));
    }
  }

  @Nested
  class Judged {
    @Test
    void longerTeachesThatTheHandsMakeItShorterThanThought() {
      assertThat(lengthMm(learn(judged(Verdict.LONGER)), 28)).isLessThan(lengthMm(PRIOR, 28) - 0.2);
    }

    @Test
    void shorterTeachesTheOpposite() {
      Tried tooLong = Tried.judged(27, END, List.of(Verdict.SHORTER));
      assertThat(lengthMm(learn(tooLong), 27)).isGreaterThan(lengthMm(PRIOR, 27) + 0.2);
    }

    @Test
    void whatWasAlreadySureIsHardlyMoved() {
      Tried plain = Tried.judged(40, END, List.of(Verdict.SHORTER));
      assertThat(lengthMm(learn(plain), 40)).isCloseTo(lengthMm(PRIOR, 40), within(0.001));
    }

    @Test
    void widerAndNarrowerSpeakOfTheWidth() {
      assertThat(learn(judged(Verdict.WIDER)).growth()).isLessThan(1.025);
      assertThat(learn(judged(Verdict.NARROWER)).growth()).isGreaterThan(1.035);
    }

    @Test
    void rightDrawsTheSizeToTheWishAndNarrowsWhatIsKnown() {
      Maker maker = learn(judged(Verdict.RIGHT));
      assertThat(Math.abs(lengthMm(maker, 28) - 15)).isLessThan(Math.abs(lengthMm(PRIOR, 28) - 15));
      assertThat(maker.extraTurnSpreadDeg()).isLessThan(PRIOR.extraTurnSpreadDeg());
    }

    @Test
    void oppositeVerdictsSayNothing() {
      Maker maker = learn(judged(Verdict.LONGER, Verdict.SHORTER));
      assertThat(maker.lostMm()).isZero();
      assertThat(maker.lostSpreadMm()).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void wordsAboutWireAndEyeSayNothingOfTheHands() {
      Maker maker = learn(judged(Verdict.HEAVIER_WIRE, Verdict.EYE_LARGER));
      assertThat(maker.extraTurnDeg()).isZero();
      assertThat(maker.extraTurnSpreadDeg()).isCloseTo(12, within(1e-9));
    }

    @Test
    void aMeasuredLengthGoesBeforeAVerdict() {
      Tried both =
          new Tried(
              28, END, OptionalDouble.of(16), OptionalDouble.empty(), List.of(Verdict.LONGER));
      assertThat(lengthMm(learn(both), 28)).isCloseTo(16, within(0.15));
    }
  }
}
