package linkwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CuttingReferenceTest {
  /**
   * Textbook example of operations research, from memory; optimum computed: linear bound 18.333.
   */
  @Test
  void lengthsOf17For25Times3And20Times5And15Times9AreNineteen() {
    LengthsNeeded needed =
        Cutting.fewestLengths(
            17,
            List.of(new BlankWish(3, 25), new BlankWish(5, 20), new BlankWish(9, 15)),
            0,
            () -> false);

    assertThat(needed).isEqualTo(new LengthsNeeded(true, 19, true));
  }

  /** Computed independently. */
  @Test
  void lengthsOf1000ForTwelveBlanksOfFourSizesAreFour() {
    LengthsNeeded needed =
        Cutting.fewestLengths(
            1000,
            List.of(
                new BlankWish(450, 2),
                new BlankWish(360, 2),
                new BlankWish(310, 3),
                new BlankWish(140, 4)),
            0,
            () -> false);

    assertThat(needed).isEqualTo(new LengthsNeeded(true, 4, true));
  }

  /** One size of blank has a closed form: ⌊(S + k)/(b + k)⌋ from each length. */
  @ParameterizedTest(name = "{0} mm in blanks of {1} mm, kerf {2} mm: {3}")
  @CsvSource({
    "412, 38.1, 0.3, 10",
    "96, 38.1, 0.3, 2",
    "76.5, 38.1, 0.3, 2",
    "76.4, 38.1, 0.3, 1",
    "76.2, 38.1, 0, 2",
    "38.1, 38.1, 0.3, 1",
    "38, 38.1, 0.3, 0",
  })
  void blanksOfOneSizeFollowTheClosedForm(double stock, double blank, double kerf, int blanks) {
    CutPlan plan =
        Cutting.plan(
            CutOrder.of(List.of(stock), List.of(new BlankWish(blank, 50)), Optional.empty(), kerf));

    assertThat(plan.blanks()).containsExactly(blanks);
    assertThat(plan.proved()).isTrue();
  }
}
