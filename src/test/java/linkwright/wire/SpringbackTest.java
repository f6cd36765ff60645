package linkwright.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SpringbackTest {
  @Test
  void hardWireOpensMoreThanSoftAndAWideTurnMoreThanATightOne() {
    double soft = Springback.growth(0.9, 3, 75_000, 124).orElseThrow();
    double hard = Springback.growth(0.9, 3, 75_000, 425).orElseThrow();
    double wide = Springback.growth(0.9, 12, 75_000, 124).orElseThrow();
    assertThat(soft).isGreaterThan(1).isLessThan(hard).isLessThan(wide);
  }

  @Test
  void theInsideFollowsFromTheGrowthOfTheCentreLine() {
    double growth = Springback.growth(0.9, 3, 75_000, 124).orElseThrow();
    assertThat(Springback.insideMm(0.9, 3, 75_000, 124).orElseThrow())
        .isCloseTo(growth * 3.9 - 0.9, within(1e-12));
  }

  @Test
  void wireThatIsOnlySprungGoesStraightAgain() {
    // Yielding begins at κ = 2σ/(Ed): R = 75000 · 0.9 / (2 · 124) = 272.18 mm.
    double edge = 2 * 272.1774 - 0.9;
    assertThat(Springback.insideMm(0.9, edge + 0.1, 75_000, 124)).isEmpty();
    assertThat(Springback.growth(0.9, 1e9, 75_000, 124)).isEmpty();
    assertThat(Springback.insideMm(0.9, edge - 5, 75_000, 124).orElseThrow()).isGreaterThan(edge);
  }

  @Test
  void theFormerForAWishedInsideIsFoundAgain() {
    long seed = 11;
    Random random = new Random(seed);
    int sprung = 0;
    for (int i = 0; i < 1000; i++) {
      double wire = 0.3 + 2 * random.nextDouble();
      double former = 0.3 + 15 * random.nextDouble();
      double modulus = 70_000 + 100_000 * random.nextDouble();
      double yield = 30 + 600 * random.nextDouble();
      OptionalDouble inside = Springback.insideMm(wire, former, modulus, yield);
      if (inside.isPresent()) {
        sprung++;
        assertThat(Springback.formerFor(inside.getAsDouble(), wire, modulus, yield).orElseThrow())
            .as("seed %d, run %d", seed, i)
            .isCloseTo(former, within(1e-9 * former));
      }
    }
    assertThat(sprung).as("seed %d", seed).isGreaterThan(500);
  }

  @Test
  void anInsideThatNoFormerLeavesIsNone() {
    // Thin springy wire round nothing at all is wider than this already.
    double least = Springback.insideMm(0.2, 1e-9, 20_000, 2000).orElseThrow();
    assertThat(Springback.formerFor(least / 2, 0.2, 20_000, 2000)).isEmpty();
    assertThat(Springback.formerFor(least * 1.1, 0.2, 20_000, 2000)).isPresent();
  }

  @Test
  void theInsideGrowsWithTheFormerWithoutAJump() {
    double before = 0;
    for (double former = 0.1; former < 300; former *= 1.01) {
      double inside = Springback.insideMm(0.9, former, 75_000, 124).orElseThrow();
      assertThat(inside).isGreaterThan(before).isGreaterThanOrEqualTo(former);
      before = inside;
    }
  }

  @Test
  void stressNextToNothingLeavesNoSpringback() {
    assertThat(Springback.growth(0.9, 3, 1e300, 1e-300).orElseThrow()).isEqualTo(1);
    assertThat(Springback.insideMm(0.9, 3, 1e-300, 1e300)).isEmpty();
  }

  @Test
  void wireThickerThanItsFormerIsReckonedAndCautioned() {
    assertThat(Springback.insideMm(1.2, 0.8, 75_000, 124).orElseThrow()).isGreaterThan(0.8);
    assertThat(Springback.caution(1.2, 0.8).orElseThrow()).contains("about 60 %");
    assertThat(Springback.caution(0.9, 0.9)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void sizesThatAreNoneAreAProgrammersError(double none) {
    assertThatThrownBy(() -> Springback.insideMm(none, 3, 75_000, 124))
        .hasMessageContaining("wireMm");
    assertThatThrownBy(() -> Springback.insideMm(0.9, none, 75_000, 124))
        .hasMessageContaining("formerMm");
    assertThatThrownBy(() -> Springback.growth(0.9, 3, none, 124))
        .hasMessageContaining("modulusMpa");
    assertThatThrownBy(() -> Springback.growth(0.9, 3, 75_000, none))
        .hasMessageContaining("yieldMpa");
    assertThatThrownBy(() -> Springback.formerFor(none, 0.9, 75_000, 124))
        .hasMessageContaining("insideMm");
  }
}
