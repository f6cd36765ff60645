package linkwright.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The most likely maker after some test pieces: the pieces are seen as straight lines about a
 * guess, all that they may mean is weighed ({@link Belief}), and the guess moves there, until it
 * rests.
 *
 * <p>Works in coordinates in which the prior is independent standard normals, so that a covariance
 * from earlier pieces is as good a start as an unknown maker.
 */
final class Learning {
  private static final int STEPS = 12;
  private static final int FULL_STEPS = 4;
  private static final double SETTLED = 2e-3;

  /** What is left at least of a variance that is drawn in. */
  private static final double LEAST_LEFT = 0.2;

  private final Shape shape;
  private final Maker prior;
  private final double[][] root;
  private final List<Evidence> evidence = new ArrayList<>();
  private Optional<Sensitivity> last = Optional.empty();

  Learning(Shape shape, Maker prior, List<Tried> tried, LinkSize wish) {
    this.shape = shape;
    this.prior = prior;
    this.root = prior.covariance().root();
    for (int i = 0; i < tried.size(); i++) {
      evidence.add(new Evidence(tried.get(i), wish, tried.size() - 1 - i));
    }
  }

  Maker learn() {
    double[] z = new double[Belief.SIZE];
    if (evidence.isEmpty()) {
      return prior;
    }
    double share = prior.scatter().share();
    Belief belief = belief(z, share);
    for (int step = 1; step < STEPS; step++) {
      double far = 0;
      for (int i = 0; i < Covariance.SIZE; i++) {
        double move = belief.mean()[i] - z[i];
        far = Math.max(far, Math.abs(move));
        z[i] += step < FULL_STEPS ? move : move / 2;
      }
      share = belief.share();
      belief = belief(z, share);
      if (far < SETTLED) {
        break;
      }
    }
    return settled(belief);
  }

  /**
   * The covariance, drawn in or out along what decides a size of the piece looked at last, so that
   * the spread stated of it is the one that 68 of 100 keep.
   */
  private double[][] stated(Belief belief) {
    double[][] c = belief.covariance();
    if (last.isPresent()) {
      Sensitivity piece = last.get();
      draw(c, belief, piece.lengthMm(), piece.scatter().lengthSquare());
      draw(c, belief, piece.widthMm(), piece.scatter().widthSquare());
    }
    return c;
  }

  private static void draw(double[][] c, Belief belief, double[] own, double noise) {
    double[] slope = Arrays.copyOf(own, Belief.SIZE);
    double[] along = new double[Belief.SIZE];
    for (int i = 0; i < along.length; i++) {
      along[i] = Triangle.dot(c[i], slope);
    }
    double before = Triangle.dot(along, slope);
    if (before <= 0) {
      return;
    }
    double spread = belief.spread(slope, noise);
    double after =
        Math.max(LEAST_LEFT * before, spread * spread - belief.share() * belief.share() * noise);
    for (int i = 0; i < along.length; i++) {
      for (int k = 0; k < along.length; k++) {
        c[i][k] += (after / before - 1) * along[i] * along[k] / before;
      }
    }
  }

  /** Leaves out pieces that this guess could not have formed at all: they pull nowhere. */
  private Belief belief(double[] z, double share) {
    Maker guess = prior.at(root, z);
    List<Readings> readings = new ArrayList<>();
    double[] slope = new double[Belief.SIZE];
    double[][] curvature = new double[Belief.SIZE][Belief.SIZE];
    for (Evidence piece : evidence) {
      Map<String, Double> formers = Formers.complete(shape, piece.tried().formersMm());
      Optional<Sensitivity> seen =
          Sensitivity.of(shape, piece.tried().blankMm(), formers, guess, root);
      if (seen.isPresent()) {
        last = piece.saysSomething() ? seen : last;
        readings.add(piece.readings(seen.get(), z));
        piece.addVerdicts(seen.get(), share, slope, curvature);
      }
    }
    return Belief.of(readings, slope, curvature, z, prior.scatter(), share);
  }

  private Maker settled(Belief belief) {
    // Covariance A·C·Aᵀ with C = B·Bᵀ is (A·B)(A·B)ᵀ.
    double[][] narrowed = Triangle.root(stated(belief));
    double[][] spread = new double[Covariance.SIZE][Covariance.SIZE];
    for (int i = 0; i < spread.length; i++) {
      for (int k = 0; k < spread.length; k++) {
        for (int j = 0; j < spread.length; j++) {
          spread[i][k] += root[i][j] * narrowed[j][k];
        }
      }
    }
    int readings = evidence.stream().mapToInt(Evidence::readingCount).sum();
    return new Maker(
        prior.at(root, belief.mean()).bending(),
        Covariance.ofRoot(spread),
        prior.scatter().seen(belief.share(), readings));
  }
}
