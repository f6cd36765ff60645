package linkwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import linkwright.quantity.UnitStyle;
import linkwright.wire.WireSection;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A chain of wire that is not round: a belcher of half-round, a square or a flat trace. */
class SectionsTest {
  private static Wishes ofWire(String wire) {
    return Wishes.common()
        .without(WishKeys.LINK_BLANK, WishKeys.LINK_LENGTH, WishKeys.LINK_WIDTH)
        .with(WishKeys.LINK_PATTERN, "round")
        .with(WishKeys.LINK_FORMERS, "ring=5 mm")
        .with(WishKeys.RING_INSIDE, "5 mm")
        .without(WishKeys.RING_WIRE, WishKeys.RING_OVAL, WishKeys.STOCK, WishKeys.RING_STOCK)
        .with(WishKeys.WIRE, wire);
  }

  /** Half-round, flat side in, hooks as a round wire of its height; πd²/8 of 2 mm is twice π/4. */
  @Test
  void a_belcher_counts_as_the_trace_of_its_height_and_weighs_by_its_section() {
    Plan belcher = ofWire("half-round 2 mm x 1 mm").plan();
    Plan trace = ofWire("1 mm").plan();
    assertThat(belcher.links()).isEqualTo(trace.links());
    assertThat(belcher.lengthMm()).isEqualTo(trace.lengthMm());
    assertThat(belcher.linkBlankMm()).isEqualTo(trace.linkBlankMm());
    assertThat(belcher.massLinksG())
        .isCloseTo(2 * trace.massLinksG(), Percentage.withPercentage(1e-6));
    // A half disc's centroid lies at 4r/3π above its flat side, a textbook value; a ring's wire is
    // as long as the circle through it.
    double inside = belcher.wish().ring().orElseThrow().insideMm();
    double longer = (inside + 8 / (3 * Math.PI)) / (inside + 1);
    assertThat(belcher.ringBlankMm())
        .isCloseTo(Math.PI * (inside + 8 / (3 * Math.PI)), Percentage.withPercentage(0.001));
    assertThat(belcher.ringTurnMm()).isGreaterThan(Math.hypot(belcher.ringBlankMm(), 1.99));
    assertThat(belcher.massRingsG())
        .isCloseTo(2 * longer * trace.massRingsG(), Percentage.withPercentage(0.001));
    assertThat(WireToOrder.of(belcher).massG())
        .isBetween(1.9 * WireToOrder.of(trace).massG(), 2 * WireToOrder.of(trace).massG());
    assertThat(belcher.wish().ringsOfSameWire()).isTrue();
    assertThat(belcher.wish().wireSaid(UnitStyle.METRIC)).isEqualTo("half-round 2 mm x 1 mm");
  }

  @Test
  void wire_on_hand_by_weight_is_as_long_as_its_section_says() {
    Plan belcher = ofWire("D 2 mm").with(WishKeys.STOCK, "30 g").plan();
    double mm = belcher.wish().stockMm().get(0);
    // Sterling 10.36 g/cm³ (ESPI Metals, data sheet); 30 g over a section of π/2 mm².
    assertThat(mm).isCloseTo(30_000 / (Math.PI / 2 * 10.36), Offset.offset(0.5));
  }

  @Test
  void rings_of_round_wire_beside_half_round_links_are_of_another_wire() {
    Plan plan = ofWire("half-round 2 mm").with(WishKeys.RING_WIRE, "1 mm").plan();
    assertThat(plan.wish().ringsOfSameWire()).isFalse();
    assertThat(plan.wish().ringAreaMm2()).isCloseTo(Math.PI / 4, Offset.offset(1e-9));
  }

  /** The area summed up in thin slices, each as wide as the circle is there. */
  @ParameterizedTest
  @CsvSource({"2,1", "3,1", "2.5,0.8", "4,0.5"})
  void a_low_half_round_has_the_area_of_its_segment(double width, double height) {
    double radius = (width * width / 4 + height * height) / (2 * height);
    double area = 0;
    int slices = 200_000;
    for (int i = 0; i < slices; i++) {
      double up = radius - height + (i + 0.5) * height / slices;
      area += 2 * Math.sqrt(radius * radius - up * up) * height / slices;
    }
    WireSection wire =
        WireSection.read("half-round " + width + " mm x " + height + " mm").orThrow();
    assertThat(wire.areaMm2()).isCloseTo(area, Percentage.withPercentage(0.001));
    assertThat(wire.thicknessMm()).isEqualTo(height);
  }

  @ParameterizedTest
  @CsvSource({
    "half-round 2 mm x 1 mm, half-round 2 mm x 1 mm",
    "half round 2 x 1 mm, half-round 2 mm x 1 mm",
    "2 mm half-round, half-round 2 mm x 1 mm",
    "D 3 mm x 1.2 mm, half-round 3 mm x 1.2 mm",
    "square 1.5 mm, square 1.5 mm",
    "strip 3 x 1 mm, strip 3 mm x 1 mm",
    "0.9 mm, 0.9 mm",
    "round 0.9 mm, 0.9 mm"
  })
  void is_read_as_it_is_said(String typed, String said) {
    WireSection wire = WireSection.read(typed).orThrow();
    assertThat(wire.said(UnitStyle.METRIC)).isEqualTo(said);
    assertThat(WireSection.read(wire.said(UnitStyle.METRIC)).orThrow().isLike(wire)).isTrue();
  }

  @Test
  void thickness_before_width_is_told() {
    assertThat(WireSection.read("half-round 1 mm x 2 mm").problem())
        .hasValueSatisfying(sentence -> assertThat(sentence).contains("width first"));
    assertThat(WireSection.read("half-round 2 mm x").isGood()).isFalse();
    assertThat(WireSection.read("strip 3 mm").isGood()).isFalse();
  }
}
