package linkwright.fit;

import java.util.List;
import java.util.OptionalDouble;
import linkwright.link.Bending;
import linkwright.link.Pattern;

/**
 * Learns from pieces with two beliefs at once: the hands are those that earlier jobs showed, or
 * they have changed and are anybody's. Each is weighed by how well it foresaw the pieces, one after
 * the other, so that hands that changed are believed after a piece or two.
 */
public final class TwoMakers {
  /** How likely it is that hands have changed since; this program's choice. */
  private static final double CHANGED = 0.3;

  /** From so many pieces on, hands are held for changed unless these speak for the old ones. */
  private static final int JUDGED_FROM = 2;

  /** How sure that must be; this program's choice, by the simulation of both kinds of makers. */
  private static final double SURE = 0.9;

  /** So many first pieces weigh the two; by then both have learnt the same. */
  private static final int WEIGHING = 3;

  /** A reading that neither foresees: as likely anywhere over this span, mm. */
  private static final double ANYWHERE_MM = 20;

  private static final double MISREAD = 0.02;

  private TwoMakers() {}

  /**
   * What is known of a maker after some pieces.
   *
   * @param taught what earlier jobs taught
   * @param fresh what is believed of anybody
   */
  public static Maker learn(
      Pattern pattern, double wireMm, Maker taught, Maker fresh, List<Tried> tried, LinkSize wish) {
    if (tried.isEmpty()) {
      return taught;
    }
    double one = Math.log(1 - CHANGED) + foresight(pattern, wireMm, taught, tried, wish);
    double other = Math.log(CHANGED) + foresight(pattern, wireMm, fresh, tried, wish);
    double known = 1 / (1 + Math.exp(other - one));
    double weight = tried.size() >= JUDGED_FROM && known < SURE ? 0 : known;
    return mixed(
        weight,
        Fit.learn(pattern, wireMm, taught, tried, wish),
        Fit.learn(pattern, wireMm, fresh, tried, wish));
  }

  /** log of how likely the readings of the first pieces were, each foreseen from those before. */
  private static double foresight(
      Pattern pattern, double wireMm, Maker prior, List<Tried> tried, LinkSize wish) {
    double sum = 0;
    for (int i = 0; i < Math.min(WEIGHING, tried.size()); i++) {
      Tried piece = tried.get(i);
      Maker before = Fit.learn(pattern, wireMm, prior, tried.subList(0, i), wish);
      sum +=
          Fit.expect(pattern, wireMm, before, piece.blankMm(), piece.formersMm())
              .map(
                  expected ->
                      log(piece.lengthMm(), expected.lengthMm(), expected.lengthSpreadMm())
                          + log(piece.widthMm(), expected.widthMm(), expected.widthSpreadMm()))
              .orElse(0.0);
    }
    return sum;
  }

  private static double log(OptionalDouble readMm, double expectedMm, double spreadMm) {
    if (readMm.isEmpty()) {
      return 0;
    }
    double spread = Math.hypot(spreadMm, PieceScatter.CALIPER_MM);
    double off = (readMm.getAsDouble() - expectedMm) / spread;
    double density = Math.exp(-off * off / 2) / (spread * Math.sqrt(2 * Math.PI));
    return Math.log((1 - MISREAD) * density + MISREAD / ANYWHERE_MM);
  }

  /** One normal belief in place of two: their mean, and their spread about it. */
  private static Maker mixed(double weight, Maker one, Maker other) {
    double[] a = numbers(one);
    double[] b = numbers(other);
    double[] mean = new double[Covariance.SIZE];
    for (int i = 0; i < mean.length; i++) {
      mean[i] = weight * a[i] + (1 - weight) * b[i];
    }
    double[][] spread = new double[Covariance.SIZE][Covariance.SIZE];
    for (int i = 0; i < mean.length; i++) {
      for (int k = 0; k < mean.length; k++) {
        spread[i][k] =
            weight * (one.covariance().at(i, k) + (a[i] - mean[i]) * (a[k] - mean[k]))
                + (1 - weight)
                    * (other.covariance().at(i, k) + (b[i] - mean[i]) * (b[k] - mean[k]));
      }
    }
    return new Maker(
        new Bending(Math.max(0, mean[0]), mean[1], mean[2], mean[3]),
        Covariance.ofRoot(Triangle.root(spread)),
        weight >= 0.5 ? one.scatter() : other.scatter());
  }

  private static double[] numbers(Maker maker) {
    Bending bending = maker.bending();
    return new double[] {
      bending.stressShare(), bending.clearanceShare(), bending.lostMm(), bending.extraTurnDeg()
    };
  }
}
