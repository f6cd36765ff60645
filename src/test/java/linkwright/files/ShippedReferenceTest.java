package linkwright.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import linkwright.plan.FinenessWord;
import linkwright.plan.SolderHeat;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Clasp;
import linkwright.reference.Family;
import linkwright.reference.FinenessRule;
import linkwright.reference.Limit;
import linkwright.reference.Metal;
import linkwright.reference.Reference;
import linkwright.reference.Solder;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** The shipped solders, clasps and fineness rules, checked as they are read. */
final class ShippedReferenceTest {
  private static final Library LIBRARY =
      Library.load(new Home(Path.of("target", "no-such-folder")));

  private static final Reference SHIPPED = LIBRARY.reference();

  private static Metal metal(String name) {
    return SHIPPED.metal(name).orThrow();
  }

  private static FinenessRule rule(String country, Family family) {
    return SHIPPED.finenessRules().stream()
        .filter(one -> one.family() == family && one.country().equals(country))
        .findFirst()
        .orElseThrow();
  }

  @Nested
  final class Solders {
    @Test
    void eachFamilyIsOrderedFromHottestToCoolest() {
      for (Family family : List.of(Family.SILVER, Family.GOLD)) {
        List<Solder> inOrder = SHIPPED.soldersFor(family);
        assertThat(inOrder).hasSizeGreaterThan(2);
        for (int i = 1; i < inOrder.size(); i++) {
          assertThat(inOrder.get(i).flowOrder()).isGreaterThan(inOrder.get(i - 1).flowOrder());
          assertThat(inOrder.get(i).liquidusC())
              .as(inOrder.get(i).id())
              .isLessThan(inOrder.get(i - 1).liquidusC());
        }
      }
    }

    @Test
    void jewellersGradesFollowTheirNames() {
      assertThat(SHIPPED.soldersFor(Family.SILVER))
          .extracting(Solder::id)
          .containsSubsequence("hard-silver", "medium-silver", "easy-silver", "extra-easy-silver");
      assertThat(SHIPPED.soldersFor(Family.GOLD))
          .extracting(Solder::id)
          .containsSubsequence("hard-gold", "medium-gold", "easy-gold");
    }

    @Test
    void jewellersGradesFlowBeforeTheirMetalMelts() {
      double sterlingMelts = metal("sterling").meltC().from();
      for (String id : List.of("hard-silver", "medium-silver", "easy-silver")) {
        assertThat(SHIPPED.solder(id).orThrow().liquidusC()).isLessThan(sterlingMelts);
      }
      // At least 20 °C below the gold's solidus: common practice, no source.
      assertThat(SHIPPED.solder("hard-gold").orThrow().liquidusC())
          .isLessThanOrEqualTo(metal("18k").meltC().from() - 20);
    }

    /** ISO 17672, class Ag, °C, from memory; it has 655 for Ag 156, where makers print 650. */
    @Test
    void brazingAlloysHaveTheirPublishedRanges() {
      Map<String, double[]> printed =
          Map.of(
              "ag-156", new double[] {620, 650},
              "ag-155", new double[] {630, 660},
              "ag-145", new double[] {640, 680},
              "ag-140", new double[] {650, 710},
              "ag-134", new double[] {630, 730},
              "ag-130", new double[] {665, 755},
              "ag-272", new double[] {779, 779});
      printed.forEach(
          (id, range) -> {
            Solder solder = SHIPPED.solder(id).orThrow();
            assertThat(solder.solidusC()).as(id).isCloseTo(range[0], within(0.5));
            assertThat(solder.liquidusC()).as(id).isCloseTo(range[1], within(0.5));
          });
    }

    @Test
    void everySolderSaysItsGradeAlloyAndFineness() {
      assertThat(SHIPPED.solders())
          .allSatisfy(
              solder -> {
                assertThat(solder.grade()).as(solder.id()).isNotBlank();
                assertThat(solder.alloy()).as(solder.id()).isNotBlank();
                assertThat(solder.finenessPermille()).as(solder.id()).isPresent();
              });
    }

    /** A later joint takes a grade that is no harder. */
    @Test
    void gradesFallInOrderOfFlow() {
      List<String> grades = List.of("hard", "medium", "easy", "extra easy");
      for (Family family : List.of(Family.SILVER, Family.GOLD)) {
        assertThat(SHIPPED.soldersFor(family).stream().map(one -> grades.indexOf(one.grade())))
            .isSorted()
            .doesNotContain(-1);
      }
    }

    /** UK: Hallmarking Act 1973, s. 4(3)(b)(ii), as SI 2002/506, article 6, quotes it too: 650. */
    @Test
    void theUkMarkTakesEasySolderAndNotTheBrazingAlloys() {
      int least = rule("UK", Family.SILVER).solderAtLeast(925).orElseThrow();
      assertThat(least).isEqualTo(650);
      assertThat(SHIPPED.solder("easy-silver").orThrow().isAsFineAs(least)).isTrue();
      assertThat(SHIPPED.solder("extra-easy-silver").orThrow().isAsFineAs(least)).isFalse();
      assertThat(SHIPPED.solder("ag-156").orThrow().isAsFineAs(least)).isFalse();
    }

    /**
     * UK: Hallmarking Act 1973, s. 4(3)(b), as revised to 6 April 2025 (legislation.gov.uk/ukpga/
     * 1973/43): gold solder as fine as the article, for 916.6 at least 750; palladium as fine, from
     * 950 on at least 700; platinum at least 950.
     */
    @Test
    void theUkMarkTakesSolderAsFineAsTheArticleBut22CaratTakes18() {
      FinenessRule gold = rule("UK", Family.GOLD);
      for (int fineness : List.of(375, 585, 750, 990, 999)) {
        assertThat(gold.solderAtLeast(fineness)).contains(fineness);
      }
      assertThat(gold.solderAtLeast(916)).contains(750);
      assertThat(rule("UK", Family.PLATINUM).solderAtLeast(850)).contains(950);
      FinenessRule palladium = rule("UK", Family.PALLADIUM);
      assertThat(palladium.solderAtLeast(500)).contains(500);
      assertThat(palladium.solderAtLeast(950)).contains(700);
      assertThat(palladium.solderAtLeast(999)).contains(700);
      assertThat(FinenessWord.of(metal("gold-22k-yellow"), 12, SHIPPED, UnitStyle.METRIC, true))
          .anyMatch(
              word ->
                  word.startsWith("UK: ") && word.contains("at least 750 of 1000 for the mark: "));
    }

    @Test
    void gradesThatDifferByMakerSendYouToTheSheet() {
      assertThat(SHIPPED.solders())
          .filteredOn(solder -> solder.source().contains("from memory"))
          .isNotEmpty()
          .allSatisfy(solder -> assertThat(solder.source()).contains("makers differ"));
      assertThat(SHIPPED.solders())
          .allSatisfy(solder -> assertThat(solder.source()).hasSizeGreaterThan(9));
    }
  }

  @Nested
  final class Fineness {
    /**
     * Hallmarking Act 1973, schedule 1, part II, 12A to 12D: articles that weigh less are exempt.
     */
    @Test
    void theUkExemptsOnlyWhatWeighsLess() {
      assertThat(rule("UK", Family.SILVER).needsMark(7.77)).isFalse();
      assertThat(rule("UK", Family.SILVER).needsMark(7.78)).isTrue();
      assertThat(rule("UK", Family.GOLD).needsMark(0.99)).isFalse();
      assertThat(rule("UK", Family.GOLD).needsMark(1)).isTrue();
      assertThat(rule("UK", Family.PLATINUM).needsMark(0.5)).isTrue();
      assertThat(rule("UK", Family.PALLADIUM).needsMark(0.99)).isFalse();
    }

    /** United Kingdom, country profile of the Hallmarking Convention. */
    @Test
    void theUkFinenessesStand() {
      assertThat(rule("UK", Family.GOLD).finenesses())
          .containsExactly(375, 585, 750, 916, 990, 999);
      assertThat(rule("UK", Family.SILVER).finenesses()).containsExactly(800, 925, 958, 999);
      assertThat(rule("UK", Family.PLATINUM).finenesses()).containsExactly(850, 900, 950, 999);
      assertThat(rule("UK", Family.PALLADIUM).finenesses()).containsExactly(500, 950, 999);
    }

    /** Hallmarking Act 1973, s. 4(1): not less than the least fineness. */
    @Test
    void theUkMarksAnAlloyWithTheFinenessThatItReaches() {
      assertThat(rule("UK", Family.SILVER).markedAs(935)).hasValue(925);
      assertThat(rule("UK", Family.GOLD).markedAs(917)).hasValue(916);
      assertThat(rule("UK", Family.GOLD).markedAs(333)).isEmpty();
    }

    /** Waarborgbesluit 2019, art. 1; Waarborgregeling 2019, art. 2; Waarborgwet 2019, art. 1. */
    @Test
    void theNetherlandsWeighTheMetalContained() {
      assertThat(rule("Netherlands", Family.SILVER).needsMark(8.6, 925)).isFalse();
      assertThat(rule("Netherlands", Family.SILVER).needsMark(8.7, 925)).isTrue();
      assertThat(rule("Netherlands", Family.GOLD).needsMark(1.7, 585)).isFalse();
      assertThat(rule("Netherlands", Family.GOLD).needsMark(1.71, 585)).isTrue();
      assertThat(rule("Netherlands", Family.PLATINUM).finenesses()).containsExactly(850, 900, 950);
      assertThat(rule("Netherlands", Family.GOLD).markedAs(375)).isEmpty();
    }

    /** What is fused or only closed has no solder that could lack fineness. */
    @Test
    void whereNothingIsSolderedTheMarkSaysNothingOfSolder() {
      assertThat(FinenessWord.of(metal("935"), 8.6, SHIPPED, UnitStyle.METRIC, false))
          .anyMatch(uk -> uk.startsWith("UK: a fineness mark is needed"))
          .noneMatch(word -> word.contains("older"));
    }

    @Test
    void aPlanTellsTheMarkTheWeightThatCountsAndTheSolderThatPasses() {
      assertThat(FinenessWord.of(metal("935"), 8.6, SHIPPED, UnitStyle.METRIC, true))
          .anySatisfy(
              uk ->
                  assertThat(uk)
                      .contains(
                          "UK: a fineness mark is needed",
                          "935 is marked as 925",
                          "at least 650 of 1000 for the mark: hard, medium, easy are, by these"
                              + " figures"))
          .anySatisfy(
              nl -> assertThat(nl).contains("Netherlands: weigh it", "8.04 g of the metal itself"));
      assertThat(FinenessWord.of(metal("9ct"), 20, SHIPPED, UnitStyle.METRIC, true))
          .anySatisfy(nl -> assertThat(nl).contains("375 is below its least fineness"));
      assertThat(FinenessWord.inShort(metal("9ct"), 20, SHIPPED).orElseThrow())
          .startsWith("needed: UK; too low to be sold as gold: Netherlands");
      assertThat(SHIPPED.finenessRules())
          .filteredOn(one -> one.family() == Family.SILVER && one.needsMark(8.5, 925))
          .extracting(FinenessRule::country)
          .containsExactly("UK");
    }

    /** A solder that flows where the metal begins to melt is fine enough and not fit for it. */
    @Test
    void whatFlowsWhereTheMetalMeltsIsNotCalledFit() {
      for (String gold : List.of("9ct", "14ct")) {
        assertThat(SolderHeat.of(metal(gold), SHIPPED, UnitStyle.METRIC))
            .singleElement()
            .asString()
            .contains("hard", "flows at 830 °C", "begins to melt at 830 °C", "not for this metal");
      }
      assertThat(SolderHeat.of(metal("gold-14k-pale"), SHIPPED, UnitStyle.METRIC))
          .singleElement()
          .asString()
          .contains("835 °C", "only where the maker's sheet says so");
      assertThat(SolderHeat.of(metal("gold-18k-yellow"), SHIPPED, UnitStyle.METRIC)).isEmpty();
    }

    /** FeinGehG, section 5: jewellery may be stamped with any fineness. */
    @Test
    void germanyStampsAnyFineness() {
      assertThat(rule("Germany", Family.GOLD).markedAs(417)).hasValue(417);
      assertThat(rule("Germany", Family.SILVER).note()).contains("10 thousandths");
    }

    @Test
    void whereMarkingIsFreeNoWeightDemandsIt() {
      assertThat(rule("USA", Family.SILVER).needsMark(1000)).isFalse();
      assertThat(rule("USA", Family.SILVER).note()).contains("trademark");
    }

    @Test
    void everyRuleHasItsDateSourceAndRisingFinenesses() {
      assertThat(SHIPPED.finenessRules())
          .allSatisfy(
              rule -> {
                assertThat(rule.date()).containsPattern("\\d{4}");
                assertThat(rule.source()).hasSizeGreaterThan(9);
                assertThat(rule.finenesses()).isNotEmpty().isSorted();
                assertThat(rule.finenesses()).allMatch(fine -> fine > 0 && fine < 1000);
              });
    }
  }

  @Nested
  final class Limits {
    /** REACH, annex XVII, entries 27, 23 and 63. */
    @Test
    void whatAnySellerShouldKnowIsThereWithItsEntryAndDate() {
      assertThat(LIBRARY.reference().limits())
          .extracting(Limit::id)
          .containsExactlyInAnyOrder("nickel", "cadmium", "lead");
      assertThat(LIBRARY.reference().limits())
          .allSatisfy(
              limit -> {
                assertThat(limit.source()).containsPattern("annex XVII, entry (27|23|63)");
                assertThat(limit.date()).containsPattern("\\d{4}");
                assertThat(limit.says()).containsPattern("0\\.(5|2|01|05)");
              });
    }
  }

  @Nested
  final class Clasps {
    @Test
    void whatHasASpringIsMarked() {
      assertThat(SHIPPED.clasps())
          .filteredOn(Clasp::springInside)
          .extracting(Clasp::id)
          .containsExactlyInAnyOrder("bolt-ring", "large-bolt-ring", "trigger", "large-trigger");
      assertThat(SHIPPED.clasps())
          .filteredOn(clasp -> !clasp.springInside())
          .extracting(Clasp::id)
          .containsExactlyInAnyOrder("hook-and-eye", "s-hook", "toggle", "box");
    }

    @Test
    void sizesAreThoseOfJewelleryAndTellYouToMeasure() {
      assertThat(SHIPPED.clasps())
          .allSatisfy(
              clasp -> {
                assertThat(clasp.insideLengthMm()).isBetween(3.0, 40.0);
                assertThat(clasp.massG()).isBetween(0.1, 10.0);
                assertThat(clasp.source()).contains("measure yours");
              });
    }
  }
}
