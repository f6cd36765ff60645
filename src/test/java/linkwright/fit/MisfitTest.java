package linkwright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.link.Pattern;
import linkwright.link.PatternFiles;
import org.junit.jupiter.api.Test;

/** What is out of reason is asked about before it is kept. */
class MisfitTest {
  private static final Pattern HOOK = PatternFiles.named("hook-link");
  private static final Maker NEW = Maker.unknown(0.0027);
  private static final Tried FIRST = ShortPieces.measured(27.5, Map.of("eye", 2.5), 14.1, 4.6);
  private static final Maker KNOWN =
      Fit.learn(HOOK, 0.9, NEW, List.of(FIRST, FIRST), new LinkSize(14, 4.6));

  private static Expected expected(Maker maker) {
    return Fit.expect(HOOK, 0.9, maker, 27.5, Map.of("eye", 2.5)).orThrow();
  }

  private static Optional<Misfit> length(Maker maker, double mm) {
    return expected(maker).misfitOfLength(OptionalDouble.of(mm));
  }

  @Test
  void whatIsInReasonIsNot() {
    assertThat(length(KNOWN, 14.3)).isEmpty();
    assertThat(length(NEW, 15.5)).isEmpty();
    assertThat(expected(KNOWN).misfitOfWidth(OptionalDouble.of(4.7))).isEmpty();
  }

  @Test
  void aDecimalSignThatSlippedIsSuggested() {
    assertThat(length(KNOWN, 140).orElseThrow().meantMm()).hasValue(14);
    assertThat(length(KNOWN, 14.1 / 25.4).orElseThrow().meantMm().getAsDouble())
        .isCloseTo(14.1, within(1e-9));
    assertThat(length(NEW, 140)).isPresent();
  }

  @Test
  void anotherMissIsToBeMeasuredAgain() {
    assertThat(length(KNOWN, 16.9).orElseThrow().meantMm()).isEmpty();
    assertThat(expected(KNOWN).misfitOfWidth(OptionalDouble.of(6.5))).isPresent();
  }

  @Test
  void aPieceThatWasOnlyJudgedIsNot() {
    assertThat(expected(KNOWN).misfitOfLength(OptionalDouble.empty())).isEmpty();
  }
}
