package linkwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class DecimalsTest {
  @Test
  void areRoundedHalfUpAsOnPaper() {
    assertThat(Decimals.upTo(1.005, 2)).isEqualTo("1.01");
    assertThat(Decimals.upTo(2.5, 0)).isEqualTo("3");
    assertThat(Decimals.fixed(0.125, 2)).isEqualTo("0.13");
    assertThat(Decimals.percent(0.0525, 1)).isEqualTo("5.3 %");
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

  @Test
  void areFinite() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Decimals.upTo(Double.NaN, 2))
        .withMessageContaining("NaN");
  }
}
