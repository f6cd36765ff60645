package linkwright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The most likely maker after some test pieces, by Gauss-Newton steps with the prior as one more
 * observation; the covariance is the inverse of the curvature there (Laplace).
 *
 * <p>Works in coordinates in which the prior is three independent standard normals, so that a
 * covariance from earlier pieces is as good a start as an unknown maker.
 */
final class Learning {
  private static final int STEPS = 25;
  private static final double SETTLED = 1e-4;

  private final Shape shape;
  private final Maker prior;
  private final double[][] root;
  private final List<Evidence> evidence;

  Learning(Shape shape, Maker prior, List<Tried> tried, LinkSize wish) {
    this.shape = shape;
    this.prior = prior;
    this.root = prior.covariance().root();
    this.evidence = tried.stream().map(piece -> new Evidence(piece, wish)).toList();
  }

  Maker learn() {
    double[] z = new double[3];
    for (int step = 0; step < STEPS; step++) {
      List<Formed> formed = form(z);
      double[] move = newtonStep(z, formed);
      double[] next = shorten(z, move, formed);
      double moved = distance(z, next);
      z = next;
      if (moved < SETTLED) {
        break;
      }
    }
    return settled(z);
  }

  /** A test piece and what it becomes in the hands of the present guess. */
  private record Formed(Evidence evidence, Map<String, Double> formersMm, Sensitivity slope) {}

  /** Leaves out pieces that this guess could not have formed at all: they pull nowhere. */
  private List<Formed> form(double[] z) {
    Maker guess = prior.at(root, z);
    List<Formed> formed = new ArrayList<>();
    for (Evidence piece : evidence) {
      Map<String, Double> formers = Formers.complete(shape, piece.tried().formersMm());
      Optional<Sensitivity> slope =
          Sensitivity.of(shape, piece.tried().blankMm(), formers, guess, root);
      slope.ifPresent(found -> formed.add(new Formed(piece, formers, found)));
    }
    return formed;
  }

  private static double[][] curvature(List<Formed> formed, double[] gradient) {
    double[][] curvature = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
    for (Formed piece : formed) {
      piece.evidence().add(piece.slope(), gradient, curvature);
    }
    return Triangle.root(curvature);
  }

  private static double[] newtonStep(double[] z, List<Formed> formed) {
    double[] gradient = z.clone();
    double[][] triangle = curvature(formed, gradient);
    double[] step = Triangle.solveTransposed(triangle, Triangle.solve(triangle, gradient));
    return new double[] {-step[0], -step[1], -step[2]};
  }

  /** Halves the step until what was seen becomes likelier; stays where it is if it never does. */
  private double[] shorten(double[] z, double[] move, List<Formed> formed) {
    double now = cost(z, formed);
    for (double share = 1; share > 1e-3; share /= 2) {
      double[] next = {z[0] + share * move[0], z[1] + share * move[1], z[2] + share * move[2]};
      if (cost(next, formed) < now) {
        return next;
      }
    }
    return z;
  }

  private double cost(double[] z, List<Formed> formed) {
    Maker guess = prior.at(root, z);
    double cost = (z[0] * z[0] + z[1] * z[1] + z[2] * z[2]) / 2;
    for (Formed piece : formed) {
      Optional<FormedSize> size =
          shape.size(piece.evidence().tried().blankMm(), piece.formersMm(), guess);
      if (size.isEmpty()) {
        return Double.POSITIVE_INFINITY;
      }
      cost += piece.evidence().cost(size.get(), piece.slope().noise());
    }
    return cost;
  }

  private Maker settled(double[] z) {
    double[][] triangle = curvature(form(z), new double[3]);
    // Covariance A·H⁻¹·Aᵀ = (A·L⁻ᵀ)(A·L⁻ᵀ)ᵀ; row i of A·L⁻ᵀ solves L·x = (row i of A).
    double[][] spread = new double[3][];
    for (int i = 0; i < 3; i++) {
      spread[i] = Triangle.solve(triangle, root[i]);
    }
    Maker best = prior.at(root, z);
    return new Maker(best.growth(), best.lostMm(), best.extraTurnDeg(), Covariance.ofRoot(spread));
  }

  private static double distance(double[] one, double[] other) {
    return Math.sqrt(
        (one[0] - other[0]) * (one[0] - other[0])
            + (one[1] - other[1]) * (one[1] - other[1])
            + (one[2] - other[2]) * (one[2] - other[2]));
  }
}
