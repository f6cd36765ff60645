package linkwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CuttingReferenceTest {
  private static CutPlan fromEqualLengths(int lengths, double mm, List<BlanksWanted> blanks) {
    return Cutting.plan(CutOrder.of(Collections.nCopies(lengths, mm), blanks, Optional.empty(), 0));
  }

  @Nested
  class FewestEqualLengths {
    /**
     * Textbook example of operations research, from memory; optimum computed: linear bound 18.333.
     */
    @Test
    void of17For25Times3And20Times5And15Times9AreNineteen() {
      List<BlanksWanted> blanks =
          List.of(BlanksWanted.each(3, 25), BlanksWanted.each(5, 20), BlanksWanted.each(9, 15));

      CutPlan plan = fromEqualLengths(30, 17, blanks);
      assertThat(plan.complete()).isTrue();
      assertThat(PlanCounts.opened(plan)).isEqualTo(19);
      assertThat(plan.proved()).isTrue();

      CutPlan tooFew = fromEqualLengths(18, 17, blanks);
      assertThat(tooFew.complete()).isFalse();
      assertThat(tooFew.proved()).isTrue();
    }

    /** Computed independently. */
    @Test
    void of1000ForElevenBlanksOfFourSizesAreFour() {
      CutPlan plan =
          fromEqualLengths(
              8,
              1000,
              List.of(
                  BlanksWanted.each(450, 2),
                  BlanksWanted.each(360, 2),
                  BlanksWanted.each(310, 3),
                  BlanksWanted.each(140, 4)));

      assertThat(plan.complete()).isTrue();
      assertThat(PlanCounts.opened(plan)).isEqualTo(4);
      assertThat(plan.proved()).isTrue();
    }
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
            CutOrder.of(
                List.of(stock), List.of(BlanksWanted.each(blank, 50)), Optional.empty(), kerf));

    assertThat(plan.blanks()).containsExactly(blanks);
    assertThat(plan.proved()).isTrue();
  }

  /**
   * Reckoned by hand, cut by cut: a coil of two turns of 11.28 mm with its tail, the cut that frees
   * it, a blank of 39.3 mm. The cut goes through the tail as far as that reaches.
   */
  @Nested
  class CoilTailAndKerf {
    private static CutPlan from(double stockMm, double tailMm, double kerfMm) {
      return Cutting.plan(
          CutOrder.of(
              List.of(stockMm),
              List.of(BlanksWanted.each(39.3, 1)),
              Optional.of(RingsWanted.each(11.28, tailMm, 2)),
              kerfMm));
    }

    @ParameterizedTest(name = "tail {0} mm, kerf {1} mm: {2} mm are enough")
    @CsvSource({
      "0, 0.5, 62.36", // 22.56 + 0 + 0.5 + 39.3
      "0.2, 0.5, 62.36", // 22.56 + 0.2, the cut takes 0.3 more, + 39.3
      "0.5, 0.5, 62.36", // 22.56 + 0.5, the cut within it, + 39.3
      "10, 0.5, 71.86", // 22.56 + 10, the cut within it, + 39.3
      "0, 0, 61.86", // 22.56 + 39.3, cut with snips
    })
    void isEnoughByTheLastHundredth(double tailMm, double kerfMm, double enoughMm) {
      assertThat(from(enoughMm, tailMm, kerfMm).complete()).isTrue();
      assertThat(from(enoughMm - 0.01, tailMm, kerfMm).complete()).isFalse();
    }

    @Test
    void withoutATailTheCutThatFreesTheCoilIsDust() {
      assertThat(from(62.3, 0, 0.5).complete()).isFalse();

      LengthCut cut = from(65, 0, 0.5).cuts().get(0);
      assertThat(cut.coilMm()).isEqualTo(22.56, within(1e-9));
      assertThat(cut.kerfsMm()).isEqualTo(1.0, within(1e-9)); // behind the coil, behind the blank
      assertThat(cut.restMm()).isEqualTo(65 - 22.56 - 39.3 - 1, within(1e-9));
    }

    @Test
    void aCoilAloneMayEndWhereTheLengthEnds() {
      CutPlan plan =
          Cutting.plan(
              CutOrder.of(
                  List.of(22.56), List.of(), Optional.of(RingsWanted.each(11.28, 0, 2)), 0.5));
      assertThat(plan.rings()).isEqualTo(2);
    }
  }
}
