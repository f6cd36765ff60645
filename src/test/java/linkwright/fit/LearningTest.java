package linkwright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.link.Bending;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class LearningTest {
  private static final Shape BAR = new BarShape(2);
  private static final Maker PRIOR = Maker.unknown(0.003);
  private static final LinkSize WISH = new LinkSize(15, 4);
  private static final Map<String, Double> END = Map.of("end", 3.0);

  private static Maker learn(Tried... tried) {
    return new Learning(BAR, PRIOR, List.of(tried), WISH).learn();
  }

  private static double grown(Maker maker) {
    return BarShape.grown(maker.bending());
  }

  private static double clearanceSpread(Maker maker) {
    return Math.sqrt(maker.covariance().at(1, 1));
  }

  private static Tried measured(double blankMm, double endMm, Bending hands) {
    Map<String, Double> formers = Map.of("end", endMm);
    FormedSize size = BAR.size(blankMm, formers, hands).orElseThrow();
    return ShortPieces.measured(blankMm, formers, size.lengthMm(), size.widthMm());
  }

  private static double lengthMm(Maker maker, double blankMm) {
    return BAR.size(blankMm, END, maker.bending()).orElseThrow().lengthMm();
  }

  private static Tried judged(Verdict... verdicts) {
    return ShortPieces.judged(28, END, List.of(verdicts));
  }

  @Nested
  class Measured {
    @Test
    void withoutPiecesNothingIsLearned() {
      Maker maker = learn();
      assertThat(maker).isEqualTo(PRIOR);
      assertThat(maker.extraTurnSpreadDeg()).isCloseTo(12, within(1e-9));
    }

    @Test
    void manyPiecesOverUnlikeFormersFindTheHands() {
      Bending hands = new Bending(0.003, 0.04, 0.8, -9);
      Tried[] tried = new Tried[60];
      for (int i = 0; i < tried.length; i++) {
        tried[i] = measured(30 + i % 7, 1.5 + i % 5, hands);
      }
      Maker maker = learn(tried);
      assertThat(grown(maker)).isCloseTo(1.07, within(0.003));
      assertThat(maker.bending().lostMm()).isCloseTo(0.8, within(0.15));
      assertThat(maker.bending().extraTurnDeg()).isCloseTo(-9, within(1.5));
    }

    @Test
    void oneByOneIsNearlyAsGoodAsAllAtOnce() {
      Bending hands = new Bending(0.003, 0.03, 0.4, 8);
      Tried first = measured(28, 3, hands);
      Tried second = measured(29, 2.5, hands);
      Maker after = new Learning(BAR, learn(first), List.of(second), WISH).learn();
      assertThat(grown(after)).isCloseTo(grown(learn(first, second)), within(0.002));
      assertThat(lengthMm(after, 28)).isCloseTo(lengthMm(learn(first, second), 28), within(0.05));
    }

    @Test
    void aPieceMeasuredOneWayOnlyCounts() {
      Tried length = new Tried(28, END, OptionalDouble.of(14), OptionalDouble.empty(), List.of());
      Tried width = new Tried(28, END, OptionalDouble.empty(), OptionalDouble.of(4.3), List.of());
      assertThat(lengthMm(learn(length), 28)).isCloseTo(14, within(0.25));
      assertThat(grown(learn(width))).isGreaterThan(1.05);
      assertThat(learn(width).bending().extraTurnDeg()).isCloseTo(0, within(1e-9));
    }

    @Test
    void eachPieceNarrowsWhatIsKnown() {
      Tried piece = measured(28, 3, PRIOR.bending());
      Maker one = learn(piece);
      Maker two = learn(piece, piece);
      assertThat(clearanceSpread(one)).isLessThan(clearanceSpread(PRIOR));
      assertThat(clearanceSpread(two)).isLessThan(clearanceSpread(one));
      assertThat(two.extraTurnSpreadDeg()).isLessThan(one.extraTurnSpreadDeg());
    }

    @Test
    void aBlankThatSuchHandsCouldNotFormTeachesNothing() {
      Maker maker = learn(ShortPieces.measured(10, END, 15, 4));
      assertThat(grown(maker)).isCloseTo(1.03, within(1e-9));
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
      Tried tooLong = ShortPieces.judged(27, END, List.of(Verdict.SHORTER));
      assertThat(lengthMm(learn(tooLong), 27)).isGreaterThan(lengthMm(PRIOR, 27) + 0.2);
    }

    @Test
    void whatWasAlreadySureIsHardlyMoved() {
      Tried plain = ShortPieces.judged(40, END, List.of(Verdict.SHORTER));
      assertThat(lengthMm(learn(plain), 40)).isCloseTo(lengthMm(PRIOR, 40), within(0.001));
    }

    @Test
    void widerAndNarrowerSpeakOfTheWidth() {
      assertThat(grown(learn(judged(Verdict.WIDER)))).isLessThan(1.025);
      assertThat(grown(learn(judged(Verdict.NARROWER)))).isGreaterThan(1.035);
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
      assertThat(maker.bending().lostMm()).isZero();
      assertThat(maker.lostSpreadMm()).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void wordsAboutWireAndEyeSayNothingOfTheHands() {
      Maker maker = learn(judged(Verdict.HEAVIER_WIRE, Verdict.EYE_LARGER));
      assertThat(maker.bending().extraTurnDeg()).isZero();
      assertThat(maker.extraTurnSpreadDeg()).isCloseTo(12, within(1e-9));
    }

    @Test
    void aMeasuredLengthGoesBeforeAVerdict() {
      Tried both =
          new Tried(
              28, END, OptionalDouble.of(16), OptionalDouble.empty(), List.of(Verdict.LONGER));
      assertThat(lengthMm(learn(both), 28)).isCloseTo(16, within(0.25));
    }
  }
}
