package linkwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Random;
import org.junit.jupiter.api.Test;

class DecimalsTest {
  @Test
  void areRoundedHalfUpAsOnPaper() {
    assertThat(Decimals.upTo(1.005, 2)).isEqualTo("1.01");
    assertThat(Decimals.upTo(2.5, 0)).isEqualTo("3");
    assertThat(Decimals.fixed(0.125, 2)).isEqualTo("0.13");
    assertThat(Decimals.percent(0.0525, 1)).isEqualTo("5.3 %");
  }

  /** Parts added in another order are the same sum, to the last digit that is told. */
  @Test
  void a_tie_falls_on_one_side_however_its_parts_were_added() {
    Random random = new Random(20261126);
    for (int i = 0; i < 2_000; i++) {
      double tie = (random.nextInt(100_000) + 0.5) / 100 * 25.4;
      double one = random.nextDouble() * tie;
      double other = random.nextDouble() * (tie - one);
      double parts = one + other + (tie - one - other);
      assertThat(UnitStyle.INCH.length(parts)).isEqualTo(UnitStyle.INCH.length(tie));
      assertThat(UnitStyle.METRIC.length(parts)).isEqualTo(UnitStyle.METRIC.length(tie));
    }
    assertThat(Decimals.upTo(13.325 * 25.4 / 25.4, 2)).isEqualTo("13.33");
    assertThat(Decimals.upTo(Math.nextDown(13.325), 2)).isEqualTo("13.33");
    assertThat(Decimals.upTo(13.3249999, 2)).isEqualTo("13.32");
  }

  @Test
  void loseZerosThatSayNothingUnlessTheyAreAskedFor() {
    assertThat(Decimals.upTo(12.30, 2)).isEqualTo("12.3");
    assertThat(Decimals.upTo(1200, 2)).isEqualTo("1200");
    assertThat(Decimals.fixed(12.3, 2)).isEqualTo("12.30");
    assertThat(Decimals.counting(123456, 4)).isEqualTo("123456");
    assertThat(Decimals.counting(0.00123456, 3)).isEqualTo("0.00123");
  }

  @Test
  void haveATrueMinusAndNoMinusBeforeNothing() {
    assertThat(Decimals.upTo(-1.5, 1)).isEqualTo("−1.5");
    assertThat(Decimals.upTo(-0.001, 2)).isEqualTo("0");
    assertThat(Decimals.fixed(-0.001, 2)).isEqualTo("0.00");
  }

  /** The examples that the rule's own text gives: 0.827 ± 0.119 and 0.827 ± 0.367 (from memory). */
  @Test
  void areRoundedByTheirDoubt() {
    assertThat(Decimals.withDoubt(0.827, 0.119)).isEqualTo("0.83 ± 0.12");
    assertThat(Decimals.withDoubt(0.827, 0.367)).isEqualTo("0.8 ± 0.4");
    assertThat(Decimals.withDoubt(14.02, 0.96)).isEqualTo("14 ± 1");
    assertThat(Decimals.withDoubt(397.4, 31.8)).isEqualTo("397 ± 32");
    assertThat(Decimals.withDoubt(397.4, 62)).isEqualTo("400 ± 60");
    assertThat(Decimals.withDoubt(14.2, 1)).isEqualTo("14.2 ± 1.0");
    assertThat(Decimals.roundedBy(381.64, 31.8)).isEqualTo("382");
    assertThat(Decimals.foreseen(1571, 1)).isEqualTo("1570");
    assertThat(Decimals.foreseen(12.34, 1)).isEqualTo("12.3");
    assertThat(UnitStyle.METRIC.about(456.9, 17.2)).isEqualTo("457 ± 17 mm");
    assertThat(UnitStyle.METRIC.about(1205, 17.2)).isEqualTo("1.205 ± 0.017 m");
    assertThat(UnitStyle.INCH.about(457.2, 16.9)).isEqualTo("18.0 ± 0.7 in");
    assertThat(UnitStyle.METRIC.about(14.26, 0)).isEqualTo("14.3 mm");
  }

  @Test
  void areFinite() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Decimals.upTo(Double.NaN, 2))
        .withMessageContaining("NaN");
  }

  @Test
  void what_is_told_is_read_with_its_digits() {
    assertThat(Decimals.asTold("0.30")).contains(new java.math.BigDecimal("0.30"));
    assertThat(Decimals.asTold(Decimals.upTo(-1.25, 2)))
        .contains(new java.math.BigDecimal("-1.25"));
    assertThat(Decimals.asTold("7")).contains(new java.math.BigDecimal("7"));
    for (String none :
        java.util.List.of("", "-", "007", "5/16", "1.87 in", "12:30", "2026-03-02")) {
      assertThat(Decimals.asTold(none)).as(none).isEmpty();
    }
  }
}
