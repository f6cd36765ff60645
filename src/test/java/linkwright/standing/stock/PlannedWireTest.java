package linkwright.standing.stock;

import static org.assertj.core.api.Assertions.assertThat;

import linkwright.plan.ChainWish;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.routine.PieceKind;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Links of 0.9 mm wire, rings of 0.8 mm, both of sterling. */
class PlannedWireTest {
  private static final ChainWish TWO =
      Wishes.common().with(WishKeys.RING_WIRE, "0.8 mm").read().wish().orElseThrow();
  private static final ChainWish ONE = Wishes.common().read().wish().orElseThrow();

  @Test
  void each_kind_has_its_wire() {
    assertThat(PlannedWire.mm(PieceKind.LINK, TWO)).isEqualTo(0.9);
    assertThat(PlannedWire.mm(PieceKind.RING, TWO)).isEqualTo(0.8);
    assertThat(PlannedWire.mm(PieceKind.RING, ONE)).isEqualTo(0.9);
    ChainWish ringless = Wishes.common().without(WishKeys.RING_INSIDE).read().wish().orElseThrow();
    assertThat(PlannedWire.mm(PieceKind.RING, ringless)).isEqualTo(0.9);
  }

  /** Two hundredths of it are as near as a caliper and a draw plate are: our own choice. */
  @ParameterizedTest
  @CsvSource({
    "0.9, link, true",
    "0.917, link, true",
    "0.883, link, true",
    "0.919, link, false",
    "0.881, link, false",
    "0.8, link, false",
    "0.8, ring, true",
    "0.815, ring, true",
    "0.785, ring, true",
    "0.817, ring, false",
    "0.783, ring, false",
    "0.9, ring, false",
  })
  void wire_within_two_hundredths_passes_for_it(double mm, String kind, boolean passes) {
    assertThat(PlannedWire.is(mm, new PieceKind(kind), TWO)).isEqualTo(passes);
  }

  /** L = m / (π d² / 4 · ρ), with 10.36 g/cm³ (supplier's data sheet). */
  @ParameterizedTest
  @CsvSource({"link, 0.9", "ring, 0.8"})
  void a_mass_of_it_is_so_long(String kind, double wireMm) {
    double mm = 10 / (Math.PI * wireMm * wireMm / 4 * 10.36e-3);
    assertThat(PlannedWire.lengthMm(10, new PieceKind(kind), TWO))
        .isCloseTo(mm, Offset.offset(1e-6));
  }

  @Test
  void a_thickness_is_read_with_or_without_its_section() {
    assertThat(PlannedWire.read("0.9 mm").orThrow()).isEqualTo(0.9);
    assertThat(PlannedWire.read("half-round 2 mm x 1 mm").orThrow()).isEqualTo(1);
    assertThat(PlannedWire.read("thick").problem()).isPresent();
  }
}
