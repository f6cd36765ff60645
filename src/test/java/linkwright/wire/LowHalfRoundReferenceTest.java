package linkwright.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.analysis.integration.SimpsonIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Half-round wire lower than half the disc is the segment of a circle; its figures by the closed
 * forms of the handbooks of mechanics (from memory) and by Hipparchus' quadrature of the circle.
 */
class LowHalfRoundReferenceTest {
  @ParameterizedTest
  @CsvSource({"2, 1", "2, 0.6", "3, 0.5", "1.4, 0.69"})
  void hasTheAreaAndTheCentroidOfItsSegment(double width, double height) {
    // R = (w²/4 + h²)/2h; with the angle a over the chord, area R²(a − sin a)/2, centroid
    // 4R sin³(a/2)/(3(a − sin a)) from the centre.
    double radius = (width * width / 4 + height * height) / (2 * height);
    double angle = 2 * Math.asin(width / 2 / radius);
    double area = radius * radius * (angle - Math.sin(angle)) / 2;
    double fromCentre =
        4 * radius * Math.pow(Math.sin(angle / 2), 3) / (3 * (angle - Math.sin(angle)));
    WireSection wire = new WireSection(Section.HALF_ROUND, width, height);
    assertThat(wire.areaMm2()).isCloseTo(area, within(1e-9));
    assertThat(wire.centroidMm()).isCloseTo(fromCentre - (radius - height), within(1e-4));
  }

  @ParameterizedTest
  @CsvSource({"2, 1", "2, 0.6", "3, 0.5"})
  void isHalvedByItsMiddleAndBentAboutIt(double width, double height) {
    WireSection wire = new WireSection(Section.HALF_ROUND, width, height);
    double middle = wire.middleMm();
    assertThat(integral(y -> chord(width, height, y), 0, middle))
        .isCloseTo(wire.areaMm2() / 2, within(1e-4));
    double upper = integral(y -> (y - middle) * chord(width, height, y), middle, height);
    double lower = integral(y -> (middle - y) * chord(width, height, y), 0, middle);
    assertThat(wire.plasticMm3()).isCloseTo(upper + lower, within(1e-4));
  }

  @Test
  void ofTheHalfDiscBalancesAtFourThirdsOfItsRadiusOverPi() {
    assertThat(new WireSection(Section.HALF_ROUND, 2, 0).centroidMm())
        .isCloseTo(4 / (3 * Math.PI), within(1e-4));
  }

  @Test
  void ofOtherSectionsBalancesAndHalvesAtHalfItsThickness() {
    assertThat(WireSection.strip(3, 0.5).centroidMm()).isEqualTo(0.25);
    assertThat(WireSection.strip(3, 0.5).middleMm()).isEqualTo(0.25);
    assertThat(WireSection.round(0.9).centroidMm()).isEqualTo(0.45);
  }

  @Test
  void weighsAsTheRoundWireOfItsArea() {
    // Half-round of 16 AWG by equal area is round of 1.291/√2 mm, 19 AWG.
    assertThat(new WireSection(Section.HALF_ROUND, 1.291, 0).roundOfAreaMm())
        .isCloseTo(1.291 / Math.sqrt(2), within(1e-9));
    assertThat(new WireSection(Section.SQUARE, 2, 2).roundOfAreaMm())
        .isCloseTo(4 / Math.sqrt(Math.PI), within(1e-12));
    assertThat(WireSection.round(0.9).roundOfAreaMm()).isEqualTo(0.9);
  }

  @Test
  void holdsFourTimesAsMuchOnceItIsSoldered() {
    // Four hinges in place of one: the plastic-hinge collapse of a closed ring.
    WireSection strip = WireSection.strip(2, 0.5);
    assertThat(Strength.solderedN(strip, 3, 124)).isCloseTo(4 * 124 * 0.125 / 1.75, within(1e-9));
  }

  private static double chord(double width, double height, double above) {
    double radius = (width * width / 4 + height * height) / (2 * height);
    double fromCentre = radius - height + above;
    return 2 * Math.sqrt(Math.max(0, radius * radius - fromCentre * fromCentre));
  }

  private static double integral(
      org.hipparchus.analysis.UnivariateFunction of, double from, double to) {
    return new SimpsonIntegrator(1e-7, 1e-9, 3, 60).integrate(10_000_000, of, from, to);
  }
}
