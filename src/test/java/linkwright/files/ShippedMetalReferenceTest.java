package linkwright.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import linkwright.reference.Family;
import linkwright.reference.Metal;
import linkwright.reference.PublishedFigure;
import linkwright.reference.Reference;
import org.junit.jupiter.api.Test;

/** The shipped metals, checked as they are read. */
final class ShippedMetalReferenceTest {
  private static final Reference SHIPPED =
      Library.load(new Home(Path.of("target", "no-such-folder"))).reference();

  private static Metal metal(String name) {
    return SHIPPED.metal(name).orThrow();
  }

  private static Stream<PublishedFigure> figures(Metal metal) {
    return Stream.of(
        metal.densityGCm3(),
        metal.modulusGpa(),
        metal.yieldSoftMpa(),
        metal.yieldHardMpa(),
        metal.tensileSoftMpa(),
        metal.tensileHardMpa(),
        metal.reductionShare());
  }

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
            "gold-14k-pale",
            "gold-18k-yellow",
            "gold-18k-rose",
            "gold-22k-yellow",
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
              assertThat(metal.tensileSoftMpa().value()).isLessThan(metal.tensileHardMpa().value());
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

  /**
   * Sterling to 14 k yellow is 1.25 in the trade's conversion tables: common practice, no source.
   */
  @Test
  void fourteenKaratWeighsAQuarterMoreThanSterling() {
    double ratio = metal("14k").densityGCm3().value() / metal("sterling").densityGCm3().value();
    assertThat(ratio).isCloseTo(1.25, within(0.02));
  }

  /**
   * The recipe of the 14 k data sheet: 585 gold, 305 silver, the rest copper and a little zinc.
   * Densities of the elements: CRC Handbook of Chemistry and Physics, 80th ed.
   */
  @Test
  void fourteenKaratAgreesWithItsRecipeToTwoPerCent() {
    double mixed = 1 / (0.585 / 19.3 + 0.305 / 10.50 + 0.110 / 8.96);
    assertThat(metal("14k pale").densityGCm3().value()).isCloseTo(mixed, within(0.02 * mixed));
  }

  /** ESPI Metals, data sheet for sterling silver: 124 MPa annealed, 496 MPa drawn hard. */
  @Test
  void sterlingHasTheStrengthOfItsDataSheet() {
    assertThat(metal("sterling").yieldSoftMpa().value()).isCloseTo(124, within(0.5));
    assertThat(metal("sterling").tensileHardMpa().value()).isCloseTo(496, within(0.5));
  }

  /** The eutectic of silver and copper: nothing with both in it is safe above 779 °C. */
  @Test
  void silverWithCopperGivesTheEutecticAsTheSafeLowerFigure() {
    assertThat(SHIPPED.metals())
        .filteredOn(
            metal -> metal.family() == Family.SILVER && metal.finenessPermille().orElse(0) < 990)
        .hasSize(4)
        .allSatisfy(metal -> assertThat(metal.meltC().from()).isEqualTo(779));
  }

  @Test
  void nickelSilverWarnsOfNickelAndOfItsName() {
    assertThat(String.join(" ", metal("nickel-silver").warnings()))
        .contains("nickel", "no silver in it");
  }

  /** The annealing range is the one figure; beside it a colour's would say something else. */
  @Test
  void theSignOfAnnealingHeatBringsNoSecondFigure() {
    assertThat(SHIPPED.metals())
        .allSatisfy(metal -> assertThat(metal.glow()).doesNotContainPattern("\\d"));
  }

  private static final String NO_SOURCE =
      "azom|makeitfrom|timezone|forum|blog|shop|\\w\\.(com|net|de|org|co)\\b";

  /** A shop's, a forum's or a collection's page is no source for a figure. */
  @Test
  void figuresComeFromStandardsInstitutesHandbooksAndMakers() {
    assertThat(SHIPPED.metals())
        .allSatisfy(metal -> assertThat(metal.toString()).doesNotContainPattern(NO_SOURCE));
    assertThat(SHIPPED.solders())
        .allSatisfy(solder -> assertThat(solder.source()).doesNotContainPattern(NO_SOURCE));
    assertThat(SHIPPED.clasps())
        .allSatisfy(clasp -> assertThat(clasp.source()).doesNotContainPattern(NO_SOURCE));
  }

  /** Bruno Welz, data sheets for 750 rose gold (4N) and 917 yellow gold. */
  @Test
  void roseAndTwentyTwoKaratHaveTheFiguresOfTheirSheets() {
    assertThat(metal("4N").densityGCm3().value()).isEqualTo(14.9);
    assertThat(metal("4N").meltC().from()).isEqualTo(860);
    assertThat(metal("4N").yieldSoftMpa().value()).isEqualTo(360);
    assertThat(metal("22ct").densityGCm3().value()).isEqualTo(17.6);
    assertThat(metal("22ct").meltC().to()).isEqualTo(990);
    assertThat(metal("22ct").tensileSoftMpa().value()).isEqualTo(270);
  }
}
