package linkwright.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import linkwright.link.Bend;
import linkwright.link.Formed;
import linkwright.link.Pattern;
import linkwright.link.PatternPart;
import linkwright.wire.Springback;

/** One maker as she really is: how her bends come out, what she loses, how she turns. */
final class TrueMaker {
  static final double WIRE_MM = 0.9;

  /** Soft silver wire of about 75 GPa whose yield and tensile strength have a mean of 200 MPa. */
  static final double MODULUS_MPA = 75_000;

  static final double STRESS_MPA = 200;

  /** A ring is sawn off a coil: there is always wire enough for it. */
  private static final double LONG_MM = 100;

  private final Pattern pattern;
  private final World world;
  private final double growth;
  private final double stress;
  private final double clearance;
  private final double lostMm;
  private final double turnDeg;
  private final double curlDeg;
  private final Map<String, Double> own = new LinkedHashMap<>();

  TrueMaker(Pattern pattern, World world, Random random) {
    this.pattern = pattern;
    this.world = world;
    this.growth = world.growthSpread() * random.nextGaussian();
    this.stress = Math.max(20, STRESS_MPA * (1 + world.stressShare() * random.nextGaussian()));
    this.clearance = world.clearance() * random.nextGaussian();
    this.lostMm = 0.5 * random.nextGaussian();
    this.turnDeg = 12 * random.nextGaussian();
    this.curlDeg = world.curlSpreadDeg() * random.nextGaussian();
    world
        .owned()
        .forEach(
            (name, sizes) ->
                sizes.forEach(
                    mm -> own.put(name + mm, world.perFormerSpread() * random.nextGaussian())));
  }

  /** What differs from one piece to the next. */
  record Slip(double firstTurnDeg, double lastTurnDeg, double cutMm, double winding) {
    static final Slip NONE = new Slip(0, 0, 0, 0);

    static Slip of(Random random) {
      return new Slip(
          4 * random.nextGaussian(),
          4 * random.nextGaussian(),
          0.15 * random.nextGaussian(),
          0.01 * random.nextGaussian());
    }
  }

  Optional<Formed> make(double blankMm, Map<String, Double> formersMm, int piece, Slip slip) {
    double turn = turnDeg + world.driftDeg() * piece;
    Pattern turned =
        pattern.closed()
            ? pattern
            : UnlikeEyes.of(
                curled(), new double[] {turn + slip.firstTurnDeg(), turn + slip.lastTurnDeg()});
    Map<String, Double> radii = new LinkedHashMap<>();
    formersMm.forEach((name, mm) -> radii.put(name, radiusMm(name, mm, slip.winding())));
    double wire = pattern.isRing() ? LONG_MM : blankMm - lostMm + slip.cutMm();
    return wire > 0 ? TrueBends.form(turned, WIRE_MM, wire, radii) : Optional.empty();
  }

  private double radiusMm(String name, double formerMm, double winding) {
    double spring = Springback.growth(WIRE_MM, formerMm, MODULUS_MPA, stress).orElseThrow();
    double onFormer = (formerMm + WIRE_MM) / 2 + (clearance + winding) * WIRE_MM;
    return onFormer * (spring + growth + own.getOrDefault(name + formerMm, 0.0));
  }

  private Pattern curled() {
    List<PatternPart> path = new ArrayList<>();
    for (PatternPart bit : pattern.path()) {
      path.add(
          bit instanceof Bend bend && bend.curl()
              ? new Bend(
                  bend.over(),
                  bend.to(),
                  bend.turnDeg() + curlDeg,
                  bend.side(),
                  bend.eye(),
                  true,
                  bend.overOnPurpose())
              : bit);
    }
    return new Pattern(
        pattern.id(),
        pattern.says(),
        pattern.formersMm(),
        path,
        pattern.other(),
        pattern.closed(),
        pattern.joints(),
        pattern.usual());
  }
}
