package linkwright.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;

/**
 * The collapse loads of a ring, argued from the beginning with plastic hinges, from both sides: no
 * load is carried that some mechanism gives way to, and any load is carried for which some set of
 * moments stands in balance without passing M_p. Source of the two theorems: any text on plastic
 * design, such as Baker, Horne and Heyman, The Steel Skeleton, volume 2.
 */
class StrengthReferenceTest {
  private static final double WIRE = 0.9;
  private static final double INSIDE = 3.1;
  private static final double YIELD = 124;
  private static final double RADIUS = (INSIDE + WIRE) / 2;
  private static final double PLASTIC_MOMENT = plasticMomentByQuadrature();

  /** M_p = ∫|y|·σ dA over the circle, every fibre at the yield stress. */
  private static double plasticMomentByQuadrature() {
    double r = WIRE / 2;
    return new IterativeLegendreGaussIntegrator(20, 1e-13, 1e-13)
        .integrate(
            1_000_000,
            phi -> 4 * YIELD * r * r * r * Math.sin(phi) * Math.cos(phi) * Math.cos(phi),
            0,
            Math.PI / 2);
  }

  @Test
  void aSolderedRingGivesWayAsAMechanismOfFourHinges() {
    // Four rigid quarters between hinges at the two pulled ends and the two sides. Each quarter's
    // chord, from the side at (x, 0) to the end at (0, y), turns by a small angle.
    double turn = 1e-6;
    double chord = RADIUS * Math.sqrt(2);
    double endMoves = chord * Math.sin(Math.PI / 4 + turn) - RADIUS;
    // Both ends move out by that; at each of the four hinges two quarters turn towards each other.
    double work = 4 * PLASTIC_MOMENT * 2 * turn;
    double pull = work / (2 * endMoves);
    assertThat(Strength.solderedN(WIRE, INSIDE, YIELD)).isCloseTo(pull, within(1e-5 * pull));
  }

  @Test
  void aSolderedRingHoldsAsLongAsSomeMomentsBalanceIt() {
    // Half the pull goes down each side. With an unknown moment at the side, the moment at an angle
    // from there is sideMoment + (P/2)·R·(1 − cos angle). Look for the best sideMoment.
    double best = 0;
    for (int i = 0; i <= 2000; i++) {
      double sideMoment = -PLASTIC_MOMENT * i / 2000;
      best = Math.max(best, largestPull(sideMoment));
    }
    assertThat(Strength.solderedN(WIRE, INSIDE, YIELD)).isCloseTo(best, within(1e-9 * best));
  }

  /** The largest pull for which no moment round the quarter passes M_p. */
  private static double largestPull(double sideMoment) {
    double pull = Double.MAX_VALUE;
    for (int degrees = 1; degrees <= 90; degrees++) {
      double arm = RADIUS * (1 - Math.cos(Math.toRadians(degrees))) / 2;
      pull = Math.min(pull, (PLASTIC_MOMENT - sideMoment) / arm);
    }
    return pull;
  }

  @Test
  void aButtedRingHangsOnItsWholeSide() {
    // Open at one side, the whole pull goes round the other: its moment is P times the distance
    // from
    // the line of pull, at most R at the side. One hinge there is a mechanism.
    double pull = Double.MAX_VALUE;
    for (int degrees = 0; degrees < 90; degrees++) {
      double arm = RADIUS * Math.cos(Math.toRadians(degrees));
      pull = Math.min(pull, PLASTIC_MOMENT / arm);
    }
    assertThat(Strength.buttedN(WIRE, INSIDE, YIELD)).isCloseTo(pull, within(1e-9 * pull));
  }

  /** Lasting set of thin rings begins at 59 % and 46 %: printed to whole per cents. */
  @Test
  void lastingSetBeginsWhereTheOutermostFibreYields() {
    double yieldMoment = YIELD * Math.PI * WIRE * WIRE * WIRE / 32;
    double curved = winklerByQuadrature(WIRE, RADIUS);
    double butted = yieldMoment / RADIUS;
    double soldered = yieldMoment / momentPerPullOfAnElasticRing();
    var closed = new Strength.Element("ring", WIRE, INSIDE, INSIDE, YIELD, false);
    var whole = new Strength.Element("ring", WIRE, INSIDE, INSIDE, YIELD, true);
    assertThat(butted / closed.collapseN()).isCloseTo(0.59, within(0.005));
    assertThat(soldered / whole.collapseN()).isCloseTo(0.46, within(0.005));
    assertThat(closed.setN()).isCloseTo(butted / curved, within(1e-6));
    assertThat(whole.setN()).isCloseTo(soldered / curved, within(1e-4));
  }

  /** 3 mm over 0.9 mm: 1.21 on the inner fibre. Worked by quadrature, see below. */
  @Test
  void aSmallRingOfThickWireIsACurvedBeam() {
    assertThat(Strength.innerFibre(0.9, 1.95)).isCloseTo(1.21, within(0.005));
    assertThat(Strength.innerFibre(0.9, 1.95))
        .isCloseTo(winklerByQuadrature(0.9, 1.95), within(1e-9));
    assertThat(Strength.innerFibre(0.9, 1e6)).isCloseTo(1, within(1e-5));
  }

  /**
   * Plane sections stay plane: the strain at a distance ρ from the centre of curvature is ω(ρ −
   * rₙ)/ρ, with rₙ = A/∫dA/ρ for no pull, and M = ∫σ(ρ − R) dA. Source: any text on curved beams.
   */
  private static double winklerByQuadrature(double wireMm, double radiusMm) {
    double r = wireMm / 2;
    var integral = new IterativeLegendreGaussIntegrator(24, 1e-13, 1e-13);
    double area = Math.PI * r * r;
    double perRadius =
        integral.integrate(
            1_000_000,
            phi -> 2 * r * r * Math.pow(Math.cos(phi), 2) / (radiusMm + r * Math.sin(phi)),
            -Math.PI / 2,
            Math.PI / 2);
    double neutral = area / perRadius;
    double moment =
        integral.integrate(
            1_000_000,
            phi -> {
              double rho = radiusMm + r * Math.sin(phi);
              return 2
                  * r
                  * r
                  * Math.pow(Math.cos(phi), 2)
                  * (rho - neutral)
                  / rho
                  * (rho - radiusMm);
            },
            -Math.PI / 2,
            Math.PI / 2);
    double inner = radiusMm - r;
    double stress = (neutral - inner) / inner;
    return stress / (moment * r / (Math.PI * r * r * r * r / 4));
  }

  /** An oval's moments by another road: the virtual work of its curved quarter, by quadrature. */
  @Test
  void anOvalsLastingSetFollowsFromItsElasticMoments() {
    double a = 2.35;
    double b = 1.45;
    var integral = new IterativeLegendreGaussIntegrator(24, 1e-12, 1e-12);
    double length =
        integral.integrate(
            1_000_000, t -> Math.hypot(a * Math.sin(t), b * Math.cos(t)), 0, Math.PI / 2);
    // From the side at (b, 0): the moment of a pull of 1 is m + (x − b)/2 at a place x from the
    // line.
    double m =
        integral.integrate(
                1_000_000,
                t -> Math.hypot(a * Math.sin(t), b * Math.cos(t)) * (b - b * Math.sin(t)) / 2,
                0,
                Math.PI / 2)
            / length;
    double side = m * winklerByQuadrature(0.9, a * a / b);
    double end = (b / 2 - m) * winklerByQuadrature(0.9, b * b / a);
    double pull = YIELD * Math.PI * Math.pow(0.9, 3) / 32 / Math.max(side, end);
    var oval = new Strength.Element("oval", 0.9, 2 * b - 0.9, 2 * a - 0.9, YIELD, true);
    assertThat(oval.setN()).isCloseTo(pull, within(1e-6 * pull));
  }

  /** Closed all round, an elastic ring's side doesn't turn: ∫M = 0 over the quarter. */
  private static double momentPerPullOfAnElasticRing() {
    double mean =
        new IterativeLegendreGaussIntegrator(10, 1e-12, 1e-12)
                .integrate(100_000, angle -> RADIUS * (1 - Math.cos(angle)) / 2, 0, Math.PI / 2)
            / (Math.PI / 2);
    double atEnd = RADIUS / 2 - mean;
    return Math.max(atEnd, mean);
  }
}
