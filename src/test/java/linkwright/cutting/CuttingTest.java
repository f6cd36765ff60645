package linkwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class CuttingTest {
  private static CutOrder blanks(double kerfMm, double blankMm, int wanted, Double... stockMm) {
    return CutOrder.of(
        List.of(stockMm), List.of(BlanksWanted.each(blankMm, wanted)), Optional.empty(), kerfMm);
  }

  @Nested
  class BlanksAlone {
    @Test
    void whatIsLeftIsToldForEachLengthInItsOwnPlace() {
      CutPlan plan = Cutting.plan(blanks(0.3, 38.1, 12, 412.0, 96.0));

      assertThat(plan.blanks()).containsExactly(12);
      assertThat(plan.complete()).isTrue();
      assertThat(plan.shortMm()).isZero();
      assertThat(plan.leftMm()).containsExactly(28.0, 19.2);
    }

    @Test
    void whatIsMissingIsToldInPiecesAndInWire() {
      CutPlan plan = Cutting.plan(blanks(0.3, 38.1, 27, 412.0, 96.0));

      assertThat(plan.blanks()).containsExactly(12);
      assertThat(plan.shortBlanks()).containsExactly(15);
      assertThat(plan.shortMm()).isEqualTo(15 * 38.4, within(1e-9));
    }

    @Test
    void theShorterLengthIsOpenedWhenItWillDo() {
      CutPlan plan = Cutting.plan(blanks(0.3, 38.1, 2, 412.0, 96.0, 80.0, 500.0));

      assertThat(plan.leftMm()).containsExactly(412.0, 96.0, 3.2, 500.0);
    }

    @Test
    void oneLinkNeedsNoKerfWhereTheLengthEnds() {
      CutPlan plan = Cutting.plan(blanks(0.3, 38.1, 1, 38.1));

      assertThat(plan.blanks()).containsExactly(1);
      assertThat(plan.leftMm()).containsExactly(0.0);
      assertThat(plan.cuts().get(0).kerfsMm()).isZero();
    }

    @Test
    void noStockAtAllIsShortOfEverything() {
      CutPlan plan = Cutting.plan(blanks(0.3, 38.1, 3));

      assertThat(plan.blanks()).containsExactly(0);
      assertThat(plan.proved()).isTrue();
      assertThat(plan.shortMm()).isEqualTo(3 * 38.4, within(1e-9));
    }

    @Test
    void aBlankLongerThanEveryLengthIsShortAndNoFault() {
      CutPlan plan = Cutting.plan(blanks(0.3, 100, 2, 60.0, 99.9));

      assertThat(plan.blanks()).containsExactly(0);
      assertThat(plan.proved()).isTrue();
      assertThat(plan.leftMm()).containsExactly(60.0, 99.9);
    }

    @Test
    void aLengthOfZeroYieldsNothing() {
      assertThat(Cutting.plan(blanks(0, 10, 1, 0.0)).blanks()).containsExactly(0);
    }
  }

  @Nested
  class WithRings {
    @Test
    void ofOneWireTooShortForAllEachLinkCutHasItsRing() {
      // 100 mm: two links (76.5) leave 23.2 for a coil of one ring; one link leaves 61.6, enough
      // for two rings and for two of those to come
      CutOrder order =
          CutOrder.of(
              List.of(100.0),
              List.of(BlanksWanted.each(38.1, 27)),
              Optional.of(RingsWanted.each(11, 10, 28)),
              0.3);
      CutPlan plan = Cutting.plan(order);

      assertThat(plan.blanks()).containsExactly(1);
      assertThat(plan.rings()).isEqualTo(4);
      assertThat(plan.leftMm()).containsExactly(7.6);
    }

    @Test
    void whatLacksMostIsCutFirst() {
      // nineteen links wait for their rings: 8 rings bring more of them on than 4 and one link
      CutPlan plan =
          Cutting.plan(
              CutOrder.of(
                  List.of(100.0),
                  List.of(BlanksWanted.each(38.1, 1)),
                  Optional.of(RingsWanted.each(11, 10, 20)),
                  0.3));

      assertThat(plan.blanks()).containsExactly(0);
      assertThat(plan.rings()).isEqualTo(8);
    }

    @Test
    void whatIsOverServesTheRestOfTheChain() {
      // two links and three rings take 119.8 mm; 11.2 are enough for a ring more, not for a link
      CutPlan plan =
          Cutting.plan(
              CutOrder.of(
                  List.of(131.0),
                  List.of(BlanksWanted.each(38.1, 20)),
                  Optional.of(RingsWanted.each(11, 10, 21)),
                  0.3));

      assertThat(plan.blanks()).containsExactly(2);
      assertThat(plan.rings()).isEqualTo(4);
      assertThat(plan.leftMm()).containsExactly(0.2);
    }

    @Test
    void ofAWireAHairTooShortOneRingIsMissingAndNoWholeRepeat() {
      // seven links and eight rings take 7 x 30.3 + 8 x 11 + 10 - 0.3 = 309.8 mm
      CutPlan plan =
          Cutting.plan(
              CutOrder.of(
                  List.of(309.79),
                  List.of(BlanksWanted.each(30, 7)),
                  Optional.of(RingsWanted.each(11, 10, 8)),
                  0.3));

      assertThat(plan.shortBlanks()).containsExactly(0);
      assertThat(plan.shortRings()).isEqualTo(1);
      assertThat(plan.shortMm()).isEqualTo(21, within(1e-9));
    }

    @Test
    void sparesAreLetGoBeforeWhatTheChainItselfTakes() {
      // two links of a size for the ends beside eight of the repeat, each kind with two spares
      List<BlanksWanted> wanted =
          List.of(new BlanksWanted(30, 10, 1, 2), new BlanksWanted(12, 4, 1, 2));
      Optional<RingsWanted> rings = Optional.of(new RingsWanted(11, 10, 11, 1, 2));
      double enough = 8 * 30 + 2 * 12 + 9 * 11 + 10;
      CutPlan all = Cutting.plan(CutOrder.of(List.of(enough), wanted, rings, 0));

      assertThat(all.blanks()).containsExactly(8, 2);
      assertThat(all.rings()).isEqualTo(9);
      assertThat(all.shortMm()).isEqualTo(2 * 30 + 2 * 12 + 2 * 11 + 10, within(1e-9));
    }

    @Test
    void aWireOfTheirOwnServesTheRingsAlone() {
      CutPlan plan = Cutting.plan(apart(List.of(412.0, 96.0), List.of(60.0, 130.0), 38.1, 12, 13));

      // 10 rings from the long one and 4 from the short: both must be opened for 13
      assertThat(plan.blanks()).containsExactly(12);
      assertThat(plan.rings()).isEqualTo(13);
      assertThat(PlanCounts.opened(plan)).isEqualTo(4);
      assertThat(plan.proved()).isTrue();
      assertThat(plan.cuts()).filteredOn(LengthCut::fromRingStock).hasSize(2);
    }

    @Test
    void tooFewRingsOfTheirOwnWireKeepNoLinkBack() {
      CutPlan plan = Cutting.plan(apart(List.of(412.0), List.of(60.0), 38.1, 10, 11));

      assertThat(plan.blanks()).containsExactly(10);
      assertThat(plan.rings()).isEqualTo(4);
      assertThat(plan.shortRingsMm()).isEqualTo(7 * 11 + 10, within(1e-9));
      assertThat(plan.shortLinksMm()).isZero();
      assertThat(plan.shortMm()).isEqualTo(7 * 11 + 10, within(1e-9));
    }

    private static CutOrder apart(
        List<Double> stockMm, List<Double> ringStockMm, double blankMm, int links, int rings) {
      return new CutOrder(
          stockMm,
          Optional.of(ringStockMm),
          List.of(BlanksWanted.each(blankMm, links)),
          Optional.of(RingsWanted.each(11, 10, rings)),
          0.3);
    }

    @Test
    void ofTwoLengthsOpenedOneAloneCarriesTheCoilWhereThatWillDo() {
      CutOrder order =
          CutOrder.of(
              List.of(150.0, 140.0),
              List.of(BlanksWanted.each(38.1, 4)),
              Optional.of(RingsWanted.each(11, 10, 5)),
              0.3);
      CutPlan plan = Cutting.plan(order);

      assertThat(plan.complete()).isTrue();
      assertThat(PlanCounts.coils(plan)).isEqualTo(1);
    }

    @Test
    void ringsAloneNeedNoLinks() {
      CutPlan plan =
          Cutting.plan(
              CutOrder.of(
                  List.of(100.0), List.of(), Optional.of(RingsWanted.each(11, 10, 20)), 0.3));

      assertThat(plan.rings()).isEqualTo(8);
      assertThat(plan.shortRings()).isEqualTo(12);
    }
  }

  @Nested
  class SeveralSizes {
    @Test
    void onlyWholeRepeatsAreCut() {
      // three round and one long to the repeat, wanted four times
      CutOrder order =
          CutOrder.of(
              List.of(200.0),
              List.of(new BlanksWanted(20, 12, 3, 0), new BlanksWanted(40, 4, 1, 0)),
              Optional.empty(),
              0);
      CutPlan plan = Cutting.plan(order);

      assertThat(plan.blanks()).containsExactly(6, 2);
      assertThat(plan.shortBlanks()).containsExactly(6, 2);
      assertThat(plan.leftMm()).containsExactly(0.0);
    }

    @Test
    void theOrderInWhichTheyAreNamedIsKept() {
      CutPlan plan =
          Cutting.plan(
              CutOrder.of(
                  List.of(100.0),
                  List.of(BlanksWanted.each(20, 2), BlanksWanted.each(40, 1)),
                  Optional.empty(),
                  0));

      assertThat(plan.blanks()).containsExactly(2, 1);
      assertThat(plan.cuts().get(0).piecesMm()).isEqualTo(80, within(1e-9));
    }

    /** Two spools and a chain of two kinds of link: long lengths have very many ways to be cut. */
    @Test
    void fromSpoolsAreProvedWhereTheWireWillDo() {
      CutPlan plan =
          Cutting.plan(
              CutOrder.of(
                  List.of(10_000.0, 5_000.0),
                  List.of(new BlanksWanted(31, 240, 3, 0), new BlanksWanted(45, 80, 1, 0)),
                  Optional.of(new RingsWanted(11, 10, 321, 4, 0)),
                  0.3));

      assertThat(plan.complete()).isTrue();
      assertThat(plan.proved()).isTrue();
      assertThat(PlanCounts.opened(plan)).isEqualTo(2);
    }
  }

  @Nested
  class WhatCannotBePlanned {
    @Test
    void everyFaultIsToldAtOnceAndInASentence() {
      CutOrder order =
          CutOrder.of(
              List.of(-5.0, Double.NaN),
              List.of(BlanksWanted.each(0, -1)),
              Optional.of(RingsWanted.each(11, -10, 28)),
              -0.3);

      assertThat(order.problems())
          .containsExactly(
              "The stock length no. 1 is -5.0 mm: a length cannot be less than nothing.",
              "The stock length no. 2 is not a number.",
              "The blank is 0 mm: it must be longer than nothing.",
              "The number of blanks wanted is -1: it must be 0 or more.",
              "The coil's tail is -10.0 mm: a length cannot be less than nothing.",
              "The kerf is -0.3 mm: a length cannot be less than nothing.");
      assertThatThrownBy(() -> Cutting.plan(order))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageStartingWith("order: The stock length no. 1");
    }

    @Test
    void numbersThatOverflowAreTold() {
      CutOrder order =
          CutOrder.of(
              List.of(1e300),
              List.of(BlanksWanted.each(1e-9, Integer.MAX_VALUE)),
              Optional.empty(),
              Double.POSITIVE_INFINITY);

      assertThat(order.problems())
          .containsExactly(
              "The stock length no. 1 is longer than 1 km: check its unit.",
              "The blank is shorter than 0.1 mm: check its unit.",
              "The kerf is longer than 1 km: check its unit.",
              "2147483647 pieces are wanted: more than 100000 cannot be planned at once.");
    }

    @Test
    void theLargestOrderAllowedIsStillPlanned() {
      CutPlan plan =
          Cutting.plan(
              CutOrder.of(
                  List.of(1e6, 1e6),
                  List.of(BlanksWanted.each(0.1, 50_000), BlanksWanted.each(7, 40_000)),
                  Optional.of(RingsWanted.each(0.1, 10, 10_000)),
                  0.001));

      assertThat(plan.complete()).isTrue();
    }
  }
}
