package linkwright.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import linkwright.quantity.Read;
import org.assertj.core.data.Offset;
import org.hipparchus.special.elliptic.legendre.LegendreEllipticIntegral;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class RingTest {
  private static final Offset<Double> EXACT = within(1e-9);
  private final Ring ring = Ring.of(3, 1).orThrow();

  @Nested
  class Round {
    @Test
    void theBlankIsTheCentreLinesCircle() {
      assertThat(ring.blankMm()).isCloseTo(4 * Math.PI, EXACT);
      assertThat(ring.aspectRatio()).isEqualTo(3);
    }

    @Test
    void sizesThatCannotBeAreTold() {
      assertThat(bad(Ring.of(0, 1)))
          .isEqualTo("The ring's inside is 0 mm: it must be more than 0 mm.");
      assertThat(bad(Ring.of(3, -1))).startsWith("The ring's wire is −1 mm");
      assertThat(bad(Ring.of(Double.NaN, 1))).contains("not a number");
      assertThat(bad(Ring.of(0.8, 1)))
          .isEqualTo(
              "The wire of 1 mm is thicker than the ring's inside of 0.8 mm: take a ring of at"
                  + " least 1 mm inside, or thinner wire.");
      assertThatThrownBy(() -> Rings.blankMm(0, 1)).hasMessageContaining("insideMm");
    }
  }

  @Nested
  class Coiled {
    @Test
    void aTurnClimbsByOneWire() {
      assertThat(Rings.turnMm(3, 1, 1)).isCloseTo(Math.hypot(4 * Math.PI, 1), EXACT);
    }

    @Test
    void aCoilCutWithSnipsIsAsWideAsItsRings() {
      Coil coil = Coil.of(ring, 0).orThrow();
      assertThat(coil.insideMm()).isEqualTo(3);
      assertThat(coil.turnMm()).isCloseTo(Math.hypot(4 * Math.PI, 1), EXACT);
    }

    @Test
    void aSawnCoilIsWiderByItsKerfSoThatTheRingKeepsItsBlank() {
      Coil coil = Coil.of(ring, 0.3).orThrow();
      assertThat(coil.insideMm()).isCloseTo(3 + 0.3 / Math.PI, EXACT);
      assertThat(Rings.blankMm(coil.insideMm(), 1) - 0.3).isCloseTo(ring.blankMm(), EXACT);
      assertThat(coil.turnMm()).isCloseTo(Math.hypot(4 * Math.PI + 0.3, 1), EXACT);
    }

    @Test
    void sizesThatCannotBeAreTold() {
      assertThat(bad(Coil.of(ring, -0.3))).contains("kerf");
      assertThat(bad(Coil.of(ring, Double.NaN))).contains("kerf");
    }
  }

  @Nested
  class Squeezed {
    @Test
    void theCentreLineKeepsItsLength() {
      Oval oval = Oval.squeeze(ring, 2).orThrow();
      double a = (oval.insideLengthMm() + 1) / 2;
      double b = 1.5;
      assertThat(4 * a * LegendreEllipticIntegral.bigE(1 - b * b / (a * a)))
          .isCloseTo(4 * Math.PI, EXACT);
      assertThat(oval.insideLengthMm()).isBetween(3.5, 4.0);
    }

    @Test
    void notSqueezedAtAllItStaysRound() {
      assertThat(Oval.squeeze(ring, 3).orThrow().insideLengthMm()).isCloseTo(3, within(1e-6));
    }

    @Test
    void oneTooNarrowToSwingIsTold() {
      Oval narrow = Oval.squeeze(ring, 1.5).orThrow();
      double endRadius = 0.75 * 0.75 / (narrow.insideLengthMm() / 2);
      assertThat(narrow.endRadiusMm()).isCloseTo(endRadius, EXACT);
      assertThat(narrow.swingsOn(ring.wireMm())).isFalse();
      assertThat(narrow.told(1.0).orElseThrow())
          .contains("too narrow at its ends to swing on wire of 1 mm");
      assertThat(narrow.swingsOn(2 * endRadius)).isFalse();
      assertThat(narrow.swingsOn(2 * endRadius - 1e-6)).isTrue();
      assertThat(Oval.squeeze(ring, 2.5).orThrow().told(1.0)).isEmpty();
    }

    @Test
    void allLengthsTimesAFactorMakeTheOvalTimesThatFactor() {
      Oval oval = Oval.squeeze(ring, 2).orThrow();
      Oval large = Oval.squeeze(new Ring(3 * 2.5, 2.5), 5).orThrow();
      assertThat(large.insideLengthMm()).isCloseTo(2.5 * oval.insideLengthMm(), EXACT);
    }

    @Test
    void widthsThatCannotBeAreTold() {
      assertThat(bad(Oval.squeeze(ring, 0))).contains("more than 0 mm");
      assertThat(bad(Oval.squeeze(ring, 3.2)))
          .contains("squeezing makes it narrower, take at most 3 mm");
      assertThat(bad(Oval.squeeze(ring, Double.NaN))).contains("not a number");
    }
  }

  private static String bad(Read<?> read) {
    return read.problem().orElseThrow();
  }
}
