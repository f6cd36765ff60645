package linkwright.reckon;

import static linkwright.reckon.Sums.number;
import static linkwright.reckon.Sums.reckon;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Sums of melting, sections and heat against values from outside; each source beside its check. */
class ReckonBenchReferenceTest {
  /**
   * Half-round of 16 AWG (ASTM B258: 0.0508 in = 1.290 mm) by equal area is 1.290/√2 mm, 19 AWG
   * (0.0359 in = 0.912 mm); makers start from 18 AWG, 1.024 mm (common practice, no source).
   */
  @Test
  void half_round_of_16_gauge_is_19_gauge_round() {
    Reckoning half = reckon("section", "section", "half-round", "size", "16 AWG");
    assertThat(number(half, "round_mm")).isCloseTo(0.912, within(0.002));
    assertThat(number(half, "start_mm")).isCloseTo(1.024, within(0.01));
    assertThat(Sums.text(half)).contains("(near 19 AWG)", "(near 18 AWG)");
  }

  /** A square of 2 mm has the area of a round of 4/√π mm. */
  @Test
  void a_square_is_its_area() {
    assertThat(number(reckon("section", "section", "square", "size", "2 mm"), "round_mm"))
        .isCloseTo(4 / Math.sqrt(Math.PI), within(1e-9));
  }

  /**
   * 11.5 g of sterling again in 14 k: bench makers publish 14.45 and 15.08 g, by densities of 13.0
   * and 13.6 (common practice, no source); 12.9 to 14.6 are published for 14 k yellow.
   */
  @Test
  void sterling_again_in_14_carat_is_by_the_density_that_is_shown() {
    Reckoning gold =
        reckon("other-metal", "metal", "sterling", "mass", "11.5 g", "into", "gold-14k-yellow");
    double ratio = number(gold, "density_to_g_cm3") / number(gold, "density_from_g_cm3");
    assertThat(number(gold, "mass_g")).isCloseTo(11.5 * ratio, within(1e-9));
    assertThat(number(gold, "mass_g")).isBetween(14.2, 15.2);
    assertThat(Sums.text(gold)).contains("g/cm³");
  }

  /** Equal volume: L/d = ⅔·(D/d)³; 2 mm on 0.8 mm wire takes 8.333 mm (computed). */
  @Test
  void a_ball_takes_two_thirds_of_the_cube() {
    assertThat(number(reckon("ball", "wire", "0.8 mm", "ball", "2 mm"), "length_mm"))
        .isCloseTo(8.3333, within(0.0001));
  }

  /** 20 g of 800 to 925 with 999: 20·125/74 = 33.784 g (alligation, computed). */
  @Test
  void fine_metal_to_scrap_is_alligation() {
    Reckoning melt = reckon("alloy", "mass", "20 g", "fineness", "800", "wished", "925");
    assertThat(number(melt, "add_g")).isCloseTo(33.7838, within(0.0001));
    double fine = 20 * 0.800 + number(melt, "add_g") * 0.999;
    assertThat(fine / number(melt, "melt_g")).isCloseTo(0.925, within(1e-9));
    Reckoning down = reckon("alloy", "mass", "10 g", "fineness", "999", "wished", "925");
    assertThat(10 * 0.999 / number(down, "melt_g")).isCloseTo(0.925, within(1e-9));
    assertThat(
            reckon("alloy", "mass", "1 g", "fineness", "800", "wished", "925", "added", "900")
                .good())
        .isFalse();
  }

  /** 41.44 g of sterling (10.36 g/cm³, supplier's data sheet) are 1 m of 2 mm square. */
  /** What is usual: common practice, no source. */
  @Test
  void sizes_that_no_wrist_no_melt_and_no_hammered_wire_has_are_refused_with_the_usual() {
    assertThat(reckon("body", "around", "165 cm").problems().toString()).contains("130 mm");
    assertThat(reckon("body", "around", "6.5 mm").problems()).containsKey("around");
    assertThat(
            reckon("ingot", "metal", "sterling", "mass", "42 g", "size", "2 mm", "loss", "100 %")
                .problems())
        .containsKey("loss");
    assertThat(
            reckon(
                    "planish",
                    "pattern",
                    "round",
                    "wire",
                    "1 mm",
                    "blank",
                    "15.71 mm",
                    "thickness",
                    "0.05 mm")
                .problems()
                .toString())
        .contains("0.6 mm to 0.9 mm");
  }

  @Test
  void an_ingot_gives_its_volume() {
    Reckoning rod =
        reckon("ingot", "metal", "sterling", "mass", "41.44 g", "size", "2 mm", "loss", "0 %");
    assertThat(number(rod, "length_mm")).isCloseTo(1000, within(0.01));
  }

  /** Ease for a wrist: snug ¼ to ½ in, comfortable ¾ to 1, loose 1 to 1¼ (common practice). */
  @Test
  void a_wrist_gets_the_customary_ease_and_thick_chain_is_told_apart() {
    assertThat(reckon("body", "around", "380 mm", "thick", "6 mm").lines())
        .noneMatch(line -> line.startsWith("Ease for a wrist") || line.contains("round the wrist"))
        .anyMatch(line -> line.contains("give an ease of your own"));
    Reckoning extended =
        reckon("body", "around", "165 mm", "own-ease", "19.1 mm", "extender", "50 mm");
    assertThat(extended.lines())
        .anyMatch(
            line ->
                line.contains("finished length of 234.1 mm")
                    && line.endsWith("closes from 184.1 mm to 234.1 mm."));
    Reckoning snug = reckon("body", "around", "165 mm", "ease", "snug");
    assertThat(number(snug, "from_mm")).isCloseTo(171.35, within(1e-9));
    assertThat(number(snug, "to_mm")).isCloseTo(177.7, within(1e-9));
    Reckoning loose = reckon("body", "around", "165 mm", "ease", "loose", "thick", "6 mm");
    assertThat(number(loose, "to_mm")).isCloseTo(196.75, within(1e-9));
    assertThat(number(loose, "thick_takes_mm")).isCloseTo(6 * Math.PI, within(1e-9));
    Reckoning own = reckon("body", "around", "165 mm", "own-ease", "20 mm");
    assertThat(number(own, "from_mm")).isEqualTo(number(own, "to_mm")).isEqualTo(185);
  }

  /** A solution anneal at 700 to 750 °C runs easy solder (its sheet: below 720). */
  @Test
  void hardening_by_heat_asks_for_the_solder() {
    assertThat(Sums.text(reckon("heat", "metal", "sterling"))).contains("Which solder is in it?");
    assertThat(Sums.text(reckon("heat", "metal", "sterling", "solder", "easy-silver")))
        .contains("does not bear");
    assertThat(number(reckon("heat", "metal", "sterling"), "anneal_from_c")).isEqualTo(600);
  }
}
