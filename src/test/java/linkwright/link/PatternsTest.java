package linkwright.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The patterns that ship, at the sizes at which they are usually made. */
class PatternsTest {
  private static Stream<DynamicTest> each(java.util.function.Consumer<Pattern> check) {
    return PatternFiles.all().stream()
        .map(pattern -> DynamicTest.dynamicTest(pattern.id(), () -> check.accept(pattern)));
  }

  @Test
  void allThatAreExpectedShip() {
    assertThat(PatternFiles.all())
        .extracting(Pattern::id)
        .contains(
            "round",
            "oval",
            "long",
            "figure-of-eight",
            "scroll",
            "bar-two-eyes",
            "hook-link",
            "s-hook",
            "hook",
            "eye");
  }

  @TestFactory
  Stream<DynamicTest> isSound() {
    return each(
        pattern -> {
          assertThat(PatternCheck.of(pattern)).isEmpty();
          assertThat(pattern.says()).endsWith(".");
          assertThat(pattern.usual()).isPresent();
        });
  }

  @TestFactory
  Stream<DynamicTest> doesNotCrossItself() {
    return each(pattern -> assertThat(Shapes.usual(pattern).crossings()).isEmpty());
  }

  @TestFactory
  Stream<DynamicTest> letsItsRingThroughEyeAndMouth() {
    return each(
        pattern -> {
          UsualSizes usual = pattern.usual().orElseThrow();
          Formed formed = Shapes.usual(pattern);
          double ringInsideMm = usual.ringInsideMm().orElse(formed.insideLengthMm());
          double ringWireMm = usual.ringWireMm().orElse(usual.wireMm());
          assertThat(Passage.of(formed, ringInsideMm, ringWireMm))
              .isNotEmpty()
              .allSatisfy(passage -> assertThat(passage.troubles()).isEmpty());
        });
  }

  @TestFactory
  Stream<DynamicTest> closesItsJointsButForTheHookLinkWhoseEyesStartOpen() {
    return each(
        pattern -> {
          boolean opens = pattern.id().equals("hook-link");
          assertThat(Shapes.usual(pattern).jointGaps())
              .allSatisfy(gap -> assertThat(gap.closes()).isEqualTo(!opens));
        });
  }

  @TestFactory
  Stream<DynamicTest> isPulledFromEyeToEye() {
    return each(
        pattern -> {
          Formed formed = Shapes.usual(pattern);
          assertThat(formed.insideLengthMm())
              .isCloseTo(formed.lengthMm() - 2 * formed.wireMm(), within(1e-9));
        });
  }

  /** Common practice, no source: figures that the trade knows for a scroll of 0.9 mm wire. */
  @Test
  void aScrollOfThirtyEightMillimetresIsAboutFourteenByFive() {
    Formed scroll = Shapes.form(PatternFiles.named("scroll"), 0.9, 38.1);
    assertThat(scroll.lengthMm()).isCloseTo(14, Percentage.withPercentage(5));
    assertThat(scroll.widthMm()).isCloseTo(5, Percentage.withPercentage(8));
    assertThat(scroll.wireMm()).isEqualTo(0.9);
    assertThat(scroll.crossings()).isEmpty();
  }

  /** Common practice, no source. */
  @Test
  void aScrollOfAnInchNeedsSmallerFormersAndComesOutChunky() {
    Pattern scroll = PatternFiles.named("scroll");
    assertThat(Shapes.read(scroll, 0.9, 25.4).problem().orElseThrow()).contains("31.34 mm");
    Formed chunky = Forming.form(scroll, 0.9, 25.4, Map.of("bow", 2.0), Bending.TRUE).orThrow();
    assertThat(chunky.lengthMm() / chunky.widthMm()).isLessThan(2.4);
  }
}
