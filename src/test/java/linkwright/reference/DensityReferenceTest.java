package linkwright.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** The densities that ship with the program, against what is known apart from them. */
class DensityReferenceTest {
  /** Source: CRC Handbook of Chemistry and Physics, 80th edition. */
  private static final double SILVER = 10.50;

  private static final double COPPER = 8.96;
  private static final double GOLD = 19.3;
  private static final double ZINC = 7.133;
  private static final double GERMANIUM = 5.323;

  /** Of 935 with germanium; from memory: makers keep to about 1.1 to 1.2 %. */
  private static final double GERMANIUM_SHARE = 0.0115;

  @Test
  void silverWithCopperHasTheDensityOfItsMixture() throws IOException {
    List<String> seen = new ArrayList<>();
    for (Map<?, ?> metal : metals()) {
      Object fineness = metal.get("fineness-permille");
      if ("silver".equals(metal.get("family")) && fineness instanceof Integer permille) {
        double silver = permille == 999 ? 1 : permille / 1000.0;
        double germanium = "germanium-silver".equals(metal.get("metal")) ? GERMANIUM_SHARE : 0;
        double mixture =
            1 / (silver / SILVER + (1 - silver - germanium) / COPPER + germanium / GERMANIUM);
        // A tenth of a per cent, and half of the last digit that is printed.
        assertThat(density(metal))
            .as(String.valueOf(metal.get("metal")))
            .isCloseTo(mixture, within(0.001 * mixture + 0.005));
        seen.add(String.valueOf(metal.get("metal")));
      }
    }
    assertThat(seen).contains("fine-silver", "sterling");
  }

  /** Source: ESPI Metals, data sheet for sterling silver; 10.36, printed to two places. */
  @Test
  void sterlingIsWhatTheSuppliersSheetSays() throws IOException {
    assertThat(density(named("sterling"))).isCloseTo(10.36, within(0.005));
  }

  /** Sources: CRC Handbook, 80th ed. (fine gold); published ranges by recipe for 14 k and 18 k. */
  @Test
  void goldsLieWithinWhatIsPublished() throws IOException {
    assertThat(density(named("fine-gold"))).isCloseTo(GOLD, within(0.05));
    assertThat(density(named("gold-14k-yellow"))).isBetween(12.9, 14.6);
    assertThat(density(named("gold-18k-yellow"))).isBetween(15.2, 15.9);
  }

  /** Published 8.53 (CuZn30) and 8.44 (CuZn37): a mixture of copper and zinc comes out lower. */
  @Test
  void brassIsNotTakenFromItsMixture() throws IOException {
    assertThat(density(named("cuzn30"))).isCloseTo(8.53, within(0.005));
    assertThat(density(named("cuzn37"))).isCloseTo(8.44, within(0.005));
    double mixture30 = 1 / (0.70 / COPPER + 0.30 / ZINC);
    double mixture37 = 1 / (0.63 / COPPER + 0.37 / ZINC);
    assertThat(1 - mixture30 / density(named("cuzn30"))).isBetween(0.02, 0.035);
    assertThat(1 - mixture37 / density(named("cuzn37"))).isBetween(0.02, 0.035);
  }

  @Test
  void everyMetalsFiguresAreInOrder() throws IOException {
    for (Map<?, ?> metal : metals()) {
      String name = String.valueOf(metal.get("metal"));
      assertThat(density(metal)).as(name).isBetween(5.0, 22.6);
      assertThat(is(metal, "yield-soft-mpa")).as(name).isLessThan(is(metal, "yield-hard-mpa"));
      assertThat(is(metal, "yield-soft-mpa")).as(name).isLessThan(is(metal, "tensile-soft-mpa"));
      assertThat(is(metal, "yield-hard-mpa"))
          .as(name)
          .isLessThanOrEqualTo(is(metal, "tensile-hard-mpa"));
      assertThat(is(metal, "modulus-gpa")).as(name).isBetween(50.0, 250.0);
    }
  }

  private static double density(Map<?, ?> metal) {
    return is(metal, "density-g-cm3");
  }

  private static double is(Map<?, ?> metal, String key) {
    Object figure = metal.get(key);
    assertThat(figure).as("%s of %s", key, metal.get("metal")).isInstanceOf(Map.class);
    return ((Number) ((Map<?, ?>) figure).get("is")).doubleValue();
  }

  private static Map<?, ?> named(String id) throws IOException {
    return metals().stream()
        .filter(metal -> id.equals(metal.get("metal")))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no metal " + id));
  }

  private static List<Map<?, ?>> metals() throws IOException {
    String path = "/linkwright/data/shared/metals.yaml";
    try (InputStream in = DensityReferenceTest.class.getResourceAsStream(path)) {
      assertThat(in).as(path).isNotNull();
      Map<?, ?> file = new Yaml(new SafeConstructor(new LoaderOptions())).load(in);
      List<Map<?, ?>> metals = new ArrayList<>();
      for (Object metal : (List<?>) file.get("metals")) {
        metals.add((Map<?, ?>) metal);
      }
      return metals;
    }
  }
}
