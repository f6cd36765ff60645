package linkwright.standing.again;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.fit.Covariance;
import linkwright.fit.Maker;
import linkwright.hands.Hands;
import linkwright.hands.TaughtJob;
import linkwright.reference.Metal;
import linkwright.reference.Temper;
import linkwright.standing.Handbook;

/**
 * How the hands that work here bend one metal, each number with one standard deviation.
 *
 * @param metal the metal
 * @param temper its temper
 * @param stressMpa the stress at which it gives way while it is bent, MPa
 * @param stressSpreadMpa its spread, MPa
 * @param clearanceShare how far the wire stands off its former, as a share of its thickness
 * @param clearanceSpread its spread
 * @param lostMm wire lost of a blank, mm
 * @param lostSpreadMm its spread, mm
 * @param turnDeg how much further an eye is turned than the pattern says, degrees
 * @param turnSpreadDeg its spread, degrees
 * @param scatterShare how much pieces differ from each other, as a share of what is usual
 */
public record HandsInMetal(
    Metal metal,
    Temper temper,
    double stressMpa,
    double stressSpreadMpa,
    double clearanceShare,
    double clearanceSpread,
    double lostMm,
    double lostSpreadMm,
    double turnDeg,
    double turnSpreadDeg,
    double scatterShare) {

  /** In each metal and temper of which a test piece was made, in the order of the last jobs. */
  public static List<HandsInMetal> of(Handbook handbook) {
    List<HandsInMetal> all = new ArrayList<>();
    Hands hands = handbook.hands();
    for (Metal metal : handbook.reference().metals()) {
      for (Temper temper : Temper.values()) {
        String name = TaughtJob.metal(metal.id(), temper.word());
        boolean tried =
            hands.counting().stream()
                .anyMatch(job -> job.pieces().isPresent() && job.metal().equals(name));
        Optional<Maker> maker = tried ? hands.prior(metal, temper) : Optional.empty();
        maker.ifPresent(known -> all.add(of(metal, temper, known)));
      }
    }
    return List.copyOf(all);
  }

  private static HandsInMetal of(Metal metal, Temper temper, Maker maker) {
    Covariance spread = maker.covariance();
    return new HandsInMetal(
        metal,
        temper,
        maker.bending().stressShare() * metal.modulusMpa(),
        Math.sqrt(spread.at(0, 0)) * metal.modulusMpa(),
        maker.bending().clearanceShare(),
        Math.sqrt(spread.at(1, 1)),
        maker.bending().lostMm(),
        maker.lostSpreadMm(),
        maker.bending().extraTurnDeg(),
        maker.extraTurnSpreadDeg(),
        maker.scatter().share());
  }
}
