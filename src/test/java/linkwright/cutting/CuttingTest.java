package linkwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class CuttingTest {
  private static CutOrder blanks(double kerfMm, double blankMm, int wanted, Double... stockMm) {
    return CutOrder.of(
        List.of(stockMm), List.of(new BlankWish(blankMm, wanted)), Optional.empty(), kerfMm);
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

      assertThat(plan.links()).isZero();
      assertThat(plan.proved()).isTrue();
      assertThat(plan.shortMm()).isEqualTo(3 * 38.4, within(1e-9));
    }

    @Test
    void aBlankLongerThanEveryLengthIsShortAndNoFault() {
      CutPlan plan = Cutting.plan(blanks(0.3, 100, 2, 60.0, 99.9));

      assertThat(plan.links()).isZero();
      assertThat(plan.proved()).isTrue();
      assertThat(plan.leftMm()).containsExactly(60.0, 99.9);
    }

    @Test
    void aLengthOfZeroYieldsNothing() {
      assertThat(Cutting.plan(blanks(0, 10, 1, 0.0)).links()).isZero();
    }
  }

  @Nested
  class WithRings {
    @Test
    void linksAreCountedOnlyWithTheirRings() {
      // 100 mm: two links (76.5) leave 23.2 for a coil of one ring; one link leaves 61.6
      CutOrder order =
          CutOrder.of(
              List.of(100.0),
              List.of(new BlankWish(38.1, 27)),
              Optional.of(RingWish.atBothEnds(11, 10, 28)),
              0.3);
      CutPlan plan = Cutting.plan(order);

      assertThat(plan.links()).isEqualTo(1);
      assertThat(plan.rings()).isEqualTo(2);
      assertThat(plan.leftMm()).containsExactly(29.6);
    }

    @Test
    void aWireOfTheirOwnServesTheRingsAlone() {
      CutOrder order =
          CutOrder.of(
                  List.of(412.0, 96.0),
                  List.of(new BlankWish(38.1, 12)),
                  Optional.of(RingWish.atBothEnds(11, 10, 13)),
                  0.3)
              .withRingStock(List.of(60.0, 130.0));
      CutPlan plan = Cutting.plan(order);

      // 10 rings from the long one and 4 from the short: both must be opened for 13
      assertThat(plan.links()).isEqualTo(12);
      assertThat(plan.rings()).isEqualTo(13);
      assertThat(plan.opened()).isEqualTo(4);
      assertThat(plan.proved()).isTrue();
      assertThat(plan.cuts()).filteredOn(Cut::fromRingStock).hasSize(2);
    }

    @Test
    void tooFewRingsOfTheirOwnWireKeepTheLinksBack() {
      CutOrder order =
          CutOrder.of(
                  List.of(412.0),
                  List.of(new BlankWish(38.1, 10)),
                  Optional.of(RingWish.atBothEnds(11, 10, 11)),
                  0.3)
              .withRingStock(List.of(60.0));
      CutPlan plan = Cutting.plan(order);

      assertThat(plan.links()).isEqualTo(3);
      assertThat(plan.rings()).isEqualTo(4);
      assertThat(plan.shortRingsMm()).isEqualTo(7 * 11 + 10, within(1e-9));
      assertThat(plan.shortLinksMm()).isEqualTo(7 * 38.4, within(1e-9));
    }

    @Test
    void ofTwoLengthsOpenedOneAloneCarriesTheCoilWhereThatWillDo() {
      CutOrder order =
          CutOrder.of(
              List.of(150.0, 140.0),
              List.of(new BlankWish(38.1, 4)),
              Optional.of(RingWish.atBothEnds(11, 10, 5)),
              0.3);
      CutPlan plan = Cutting.plan(order);

      assertThat(plan.links()).isEqualTo(4);
      assertThat(plan.coils()).isEqualTo(1);
      assertThat(plan.coilsProved()).isTrue();
    }

    @Test
    void nothingBeyondThePlanIsCutFromTheLinksWireWhenTheRingsFallShort() {
      CutOrder order =
          CutOrder.of(
                  List.of(100.0, 120.0, 140.0, 90.0),
                  List.of(new BlankWish(38.1, 20), new BlankWish(30, 20)),
                  Optional.of(RingWish.atBothEnds(11, 10, 41)),
                  0.3)
              .withRingStock(List.of(80.0));
      CutPlan plan = Cutting.plan(order);
      int cut = plan.cuts().stream().flatMap(one -> one.blanks().stream()).mapToInt(n -> n).sum();

      assertThat(plan.rings()).isEqualTo(6);
      assertThat(plan.links()).isEqualTo(5);
      assertThat(cut).isEqualTo(5);
      assertThat(plan.opened()).isEqualTo(3);
    }

    @Test
    void ringsAloneNeedNoLinks() {
      CutPlan plan =
          Cutting.plan(
              CutOrder.of(
                  List.of(100.0), List.of(), Optional.of(RingWish.atBothEnds(11, 10, 20)), 0.3));

      assertThat(plan.rings()).isEqualTo(8);
      assertThat(plan.shortRings()).isEqualTo(12);
    }

    @Test
    void ringsBeyondThoseOfTheLinksComeLast() {
      CutPlan plan =
          Cutting.plan(
              CutOrder.of(
                  List.of(100.0),
                  List.of(new BlankWish(38.1, 1)),
                  Optional.of(RingWish.atBothEnds(11, 10, 20)),
                  0.3));

      assertThat(plan.links()).isEqualTo(1);
      assertThat(plan.rings()).isEqualTo(4);
    }
  }

  @Nested
  class InRepeats {
    @Test
    void onlyWholeRepeatsCount() {
      // three round and one long to the repeat, wanted four times
      CutOrder order =
          CutOrder.of(
                  List.of(200.0),
                  List.of(new BlankWish(20, 12), new BlankWish(40, 4)),
                  Optional.empty(),
                  0)
              .inRepeats(4);
      CutPlan plan = Cutting.plan(order);

      assertThat(plan.links()).isEqualTo(2);
      assertThat(plan.blanks()).containsExactly(6, 2);
      assertThat(plan.leftMm()).containsExactly(0.0);
    }
  }

  @Nested
  class Properties {
    @Test
    void piecesAndKerfsAndRestAreTheStockAndNeverMore() {
      long seed = 20_261;
      Random random = new Random(seed);
      for (int run = 0; run < 200; run++) {
        CutOrder order = random(random);
        CutPlan plan = Cutting.plan(order);
        int rings = 0;
        int[] blanks = new int[order.blanks().size()];
        for (Cut cut : plan.cuts()) {
          String told = "seed " + seed + " run " + run + " " + order + " " + cut;
          double parts = cut.piecesMm() + cut.coilMm() + cut.kerfsMm() + cut.restMm();
          assertThat(parts).as(told).isEqualTo(cut.stockMm(), within(1e-9));
          assertThat(cut.stockMm()).as(told).isLessThanOrEqualTo(order.stockMm().get(cut.place()));
          assertThat(List.of(cut.restMm(), cut.kerfsMm())).as(told).allMatch(mm -> mm >= 0);
          rings += cut.rings();
          double bare = 0;
          for (int k = 0; k < cut.blanks().size(); k++) {
            blanks[k] += cut.blanks().get(k);
            bare += cut.blanks().get(k) * order.blanks().get(k).mm();
          }
          assertThat(bare).as(told).isLessThanOrEqualTo(cut.piecesMm() + 1e-9);
        }
        assertThat(rings).isEqualTo(plan.rings());
        assertThat(Arrays.stream(blanks).boxed().toList()).isEqualTo(plan.blanks());
      }
    }

    @Test
    void allLengthsTenTimesAsLongGiveTheSameCounts() {
      long seed = 7_431;
      Random random = new Random(seed);
      for (int run = 0; run < 60; run++) {
        CutOrder order = random(random);
        CutPlan plan = Cutting.plan(order);
        CutPlan scaled = Cutting.plan(scaled(order, 10));
        assertThat(scaled.links()).as("seed %d run %d", seed, run).isEqualTo(plan.links());
        assertThat(scaled.blanks()).isEqualTo(plan.blanks());
        assertThat(scaled.opened()).isEqualTo(plan.opened());
      }
    }

    @Test
    void theOrderOfTheLengthsChangesNothing() {
      long seed = 99;
      Random random = new Random(seed);
      for (int run = 0; run < 60; run++) {
        CutOrder order = random(random);
        List<Double> shuffled = new ArrayList<>(order.stockMm());
        Collections.shuffle(shuffled, random);
        CutOrder other = CutOrder.of(shuffled, order.blanks(), order.ring(), order.kerfMm());
        assertThat(Cutting.plan(other).links())
            .as("seed %d run %d", seed, run)
            .isEqualTo(Cutting.plan(order).links());
      }
    }

    private static CutOrder scaled(CutOrder order, double by) {
      return CutOrder.of(
          order.stockMm().stream().map(mm -> mm * by).toList(),
          order.blanks().stream().map(b -> new BlankWish(b.mm() * by, b.wanted())).toList(),
          order.ring().map(r -> RingWish.atBothEnds(r.turnMm() * by, r.tailMm() * by, r.wanted())),
          order.kerfMm() * by);
    }

    private static CutOrder random(Random random) {
      List<Double> stock = new ArrayList<>();
      for (int i = random.nextInt(9); i >= 0; i--) {
        stock.add(random.nextInt(4000) / 10.0);
      }
      List<BlankWish> blanks = new ArrayList<>();
      int wanted = 0;
      for (int i = random.nextInt(3); i >= 0; i--) {
        blanks.add(new BlankWish(10 + random.nextInt(400) / 10.0, random.nextInt(20)));
        wanted += blanks.get(blanks.size() - 1).wanted();
      }
      RingWish ring = RingWish.atBothEnds(6 + random.nextInt(80) / 10.0, 10, wanted + 1);
      return CutOrder.of(
          stock,
          blanks,
          random.nextBoolean() ? Optional.of(ring) : Optional.empty(),
          random.nextInt(6) / 10.0);
    }
  }

  @Nested
  class GivingUp {
    @Test
    void theBestFoundIsHonestlyNotProved() {
      CutOrder order = ManyLengthsTest.order(1, 1.5, 50, 600);
      CutPlan plan = Cutting.plan(order, () -> true);

      assertThat(plan.proved()).isFalse();
      assertThat(plan.links()).isPositive().isLessThanOrEqualTo(Cutting.plan(order).links());
    }

    @Test
    void moreTimeNeverGivesLessChain() {
      CutOrder order = ManyLengthsTest.order(3, 1.5, 20, 200);
      int before = 0;
      for (int most : List.of(0, 100, 1_000, 10_000)) {
        AtomicInteger asked = new AtomicInteger();
        CutPlan plan = Cutting.plan(order, () -> asked.incrementAndGet() > most);
        assertThat(plan.links()).isGreaterThanOrEqualTo(before);
        before = plan.links();
      }
    }
  }

  @Nested
  class WhatCannotBePlanned {
    @Test
    void everyFaultIsToldAtOnceAndInASentence() {
      CutOrder order =
          CutOrder.of(
              List.of(-5.0, Double.NaN),
              List.of(new BlankWish(0, -1)),
              Optional.of(RingWish.atBothEnds(11, -10, 28)),
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
              List.of(new BlankWish(1e-9, Integer.MAX_VALUE)),
              Optional.empty(),
              Double.POSITIVE_INFINITY);

      assertThat(order.problems())
          .containsExactly(
              "The stock length no. 1 is longer than 1 km: check its unit.",
              "The blank is shorter than 0.1 mm: check its unit.",
              "The kerf is longer than 1 km: check its unit.",
              "2147483647 pieces are wanted: more than 1000000 cannot be planned at once.");
    }

    @Test
    void theLargestOrderAllowedIsStillPlanned() {
      CutPlan plan =
          Cutting.plan(
              CutOrder.of(
                  List.of(1e6, 1e6),
                  List.of(new BlankWish(0.1, 500_000), new BlankWish(7, 400_000)),
                  Optional.of(RingWish.atBothEnds(0.1, 10, 100_000)),
                  0.001));

      assertThat(plan.links()).isPositive();
    }
  }
}
