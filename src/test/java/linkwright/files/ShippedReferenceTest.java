package linkwright.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import linkwright.reference.Clasp;
import linkwright.reference.Family;
import linkwright.reference.Figure;
import linkwright.reference.FinenessRule;
import linkwright.reference.Metal;
import linkwright.reference.Reference;
import linkwright.reference.Solder;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** The shipped metals, solders, clasps and fineness rules, checked as they are read. */
final class ShippedReferenceTest {
  /** Densities of the elements, g/cm³: CRC Handbook of Chemistry and Physics, 80th ed. */
  private static final Map<String, Double> ELEMENT_G_CM3 =
      Map.of("Ag", 10.50, "Cu", 8.96, "Au", 19.3, "Zn", 7.133);

  private static final Reference SHIPPED = Shipped.reference();

  private static Metal metal(String name) {
    return SHIPPED.metal(name).orThrow();
  }

  /** Inverse rule of mixtures, 1/ρ = Σ w/ρ; shares by mass. */
  private static double mixed(Map<String, Double> shares) {
    double cm3 = 0;
    for (Map.Entry<String, Double> share : shares.entrySet()) {
      cm3 += share.getValue() / ELEMENT_G_CM3.get(share.getKey());
    }
    return 1 / cm3;
  }

  private static Stream<Figure> figures(Metal metal) {
    return Stream.of(
        metal.densityGCm3(),
        metal.modulusGpa(),
        metal.yieldSoftMpa(),
        metal.yieldHardMpa(),
        metal.tensileSoftMpa(),
        metal.tensileHardMpa(),
        metal.reductionShare());
  }

  @Nested
  final class Metals {
    @Test
    void allThatTheLibraryPromisesAreThere() {
      assertThat(SHIPPED.metals())
          .extracting(Metal::id)
          .contains(
              "fine-silver",
              "sterling",
              "silver-935",
              "silver-950",
              "copper",
              "cuzn10",
              "cuzn30",
              "cuzn37",
              "bronze",
              "nickel-silver",
              "gold-9k-yellow",
              "gold-14k-yellow",
              "gold-18k-yellow",
              "fine-gold",
              "pt950");
    }

    @Test
    void everyFigureSaysWhereItComesFrom() {
      assertThat(SHIPPED.metals())
          .allSatisfy(
              metal -> {
                assertThat(figures(metal))
                    .allSatisfy(figure -> assertThat(figure.source()).hasSizeGreaterThan(9));
                assertThat(metal.meltC().source()).hasSizeGreaterThan(9);
                assertThat(metal.annealC().source()).hasSizeGreaterThan(9);
              });
    }

    @Test
    void annealingStaysBelowMeltingAndSoftBelowHard() {
      assertThat(SHIPPED.metals())
          .allSatisfy(
              metal -> {
                assertThat(metal.annealC().to()).isLessThan(metal.meltC().from());
                assertThat(metal.yieldSoftMpa().value()).isLessThan(metal.yieldHardMpa().value());
                assertThat(metal.yieldSoftMpa().value()).isLessThan(metal.tensileSoftMpa().value());
                assertThat(metal.yieldHardMpa().value())
                    .isLessThanOrEqualTo(metal.tensileHardMpa().value());
                assertThat(metal.tensileSoftMpa().value())
                    .isLessThan(metal.tensileHardMpa().value());
                assertThat(metal.reductionShare().value()).isBetween(0.3, 0.8);
              });
    }

    @Test
    void noNameFindsTwoMetals() {
      Map<String, String> owners = new HashMap<>();
      List<String> twice = new ArrayList<>();
      for (Metal metal : SHIPPED.metals()) {
        Stream.concat(Stream.of(metal.id(), metal.name()), metal.alsoCalled().stream())
            .map(name -> name.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "-"))
            .forEach(
                name -> {
                  String owner = owners.putIfAbsent(name, metal.id());
                  if (owner != null && !owner.equals(metal.id())) {
                    twice.add(name);
                  }
                });
      }
      assertThat(twice).isEmpty();
    }

    @Test
    void benchNamesFindThem() {
      assertThat(metal("925").id()).isEqualTo("sterling");
      assertThat(metal("brass 70/30").id()).isEqualTo("cuzn30");
      assertThat(metal("Yellow brass").id()).isEqualTo("cuzn37");
      assertThat(metal("Pt95Ru5").id()).isEqualTo("pt950");
    }

    /** Silver and copper mix without a change of volume, to 0.1 %. */
    @Test
    void silversAgreeWithTheInverseRuleOfMixtures() {
      for (String id : List.of("sterling", "silver-935", "silver-950")) {
        double silver = metal(id).finenessPermille().orElseThrow() / 1000.0;
        double mixed = mixed(Map.of("Ag", silver, "Cu", 1 - silver));
        assertThat(metal(id).densityGCm3().value()).as(id).isCloseTo(mixed, within(0.001 * mixed));
      }
    }

    /** The recipe of the 14 k data sheet: 585 gold, 305 silver, the rest copper and zinc. */
    @Test
    void fourteenKaratAgreesWithItsRecipeToTwoPerCent() {
      double mixed = mixed(Map.of("Au", 0.585, "Ag", 0.305, "Cu", 0.11));
      assertThat(metal("14k").densityGCm3().value()).isCloseTo(mixed, within(0.02 * mixed));
    }

    /** Why brass has its own figures: the rule of mixtures comes out 2 to 3.5 % too low. */
    @Test
    void brassIsDenserThanTheRuleOfMixturesSays() {
      for (Map.Entry<String, Double> brass : Map.of("cuzn30", 0.30, "cuzn37", 0.37).entrySet()) {
        double mixed = mixed(Map.of("Cu", 1 - brass.getValue(), "Zn", brass.getValue()));
        assertThat(metal(brass.getKey()).densityGCm3().value() / mixed)
            .as(brass.getKey())
            .isBetween(1.02, 1.035);
      }
    }

    /** Data sheets: C26000 wire, lfa-wire.com 8.53; CuZn37, KME 8.44; sterling, ESPI Metals. */
    @Test
    void publishedFiguresStand() {
      assertThat(metal("cuzn30").densityGCm3().value()).isCloseTo(8.53, within(0.005));
      assertThat(metal("cuzn37").densityGCm3().value()).isCloseTo(8.44, within(0.005));
      assertThat(metal("sterling").densityGCm3().value()).isCloseTo(10.36, within(0.005));
      assertThat(metal("sterling").yieldSoftMpa().value()).isCloseTo(124, within(0.5));
      assertThat(metal("fine-silver").densityGCm3().value()).isCloseTo(10.50, within(0.005));
    }

    /** The eutectic of silver and copper: nothing with both in it is safe above 779 °C. */
    @Test
    void silverWithCopperGivesTheEutecticAsTheSafeLowerFigure() {
      assertThat(SHIPPED.metals())
          .filteredOn(
              metal -> metal.family() == Family.SILVER && metal.finenessPermille().orElse(0) < 990)
          .hasSize(3)
          .allSatisfy(metal -> assertThat(metal.meltC().from()).isEqualTo(779));
    }

    @Test
    void nickelSilverWarnsOfNickelAndOfItsName() {
      assertThat(String.join(" ", metal("nickel-silver").warnings()))
          .contains("nickel", "no silver in it");
    }

    @Test
    void heatColoursAreRangesForDimLightNotNumbers() {
      assertThat(SHIPPED.metals())
          .allSatisfy(metal -> assertThat(metal.glow()).doesNotContainPattern("^\\d"))
          .filteredOn(metal -> metal.glow().contains("°C"))
          .allSatisfy(metal -> assertThat(metal.glow()).containsPattern("\\d+ to \\d+ °C"));
    }
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
      // At least 20 °C below the gold's solidus: "Carat gold solders", ganoksin.com.
      assertThat(SHIPPED.solder("hard-gold").orThrow().liquidusC())
          .isLessThanOrEqualTo(metal("18k").meltC().from() - 20);
    }

    /** Melting ranges printed by a maker of brazing alloys (foxmet.com), °C. */
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
    private FinenessRule rule(String country, Family family) {
      return SHIPPED.fineness(country, family).orElseThrow();
    }

    /** Hallmarking Act 1973, schedule 1, part II: articles that weigh less are exempt. */
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
