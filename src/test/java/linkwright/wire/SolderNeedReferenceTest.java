package linkwright.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;

class SolderNeedReferenceTest {
  /**
   * The gap between a flat round end and the side of a wire as thick, averaged over the end: (1/A)
   * ∫ (r − √(r² − y²))·2√(r² − y²) dy, the end touching along its middle: 0.0756 d. So wire of 1 mm
   * with a gap of 0.05 mm takes (0.05 + 0.0756)/0.05 = 2.5 times as much.
   */
  @Test
  void aTipAgainstAWireHasOnAverageThatMuchMoreGap() {
    double r = 0.5;
    double sum =
        new IterativeLegendreGaussIntegrator(20, 1e-12, 1e-12)
            .integrate(
                1_000_000,
                phi -> {
                  double chord = r * Math.cos(phi);
                  return (r - chord) * 2 * chord * r * Math.cos(phi);
                },
                -Math.PI / 2,
                Math.PI / 2);
    double mean = sum / (Math.PI * r * r);
    assertThat(mean).isCloseTo(0.5 - 4 / (3 * Math.PI), within(1e-9));
    assertThat(SolderNeed.SIDE_TIMES).isCloseTo((0.05 + mean) / 0.05, within(0.05));
  }

  /** Clearance for brazing, 0.001 to 0.005 in. Source: Industrial Heating, column on brazing. */
  @Test
  void theClearanceOfBrazingIsNotWarnedAboutAndMoreIs() {
    assertThat(need(0.001 * 25.4).warnings()).noneMatch(text -> text.contains("wider"));
    assertThat(need(0.005 * 25.4).warnings()).isEmpty();
    assertThat(need(0.006 * 25.4).warnings()).anyMatch(text -> text.contains("wider than solder"));
  }

  private static SolderNeed need(double gapMm) {
    return SolderNeed.of(0.9, gapMm, 0.5, 1, 0.3, 9.5, JointKind.BUTT);
  }
}
