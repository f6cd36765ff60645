package linkwright.fit;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What one test piece says, against what a guess at the maker makes of the same blank.
 *
 * <p>A measured size is normal about the computed one, with the calipers' noise and, common to
 * length and width, the eyes' turn from piece to piece. A size that was not measured but judged is
 * a step: the chance that she says "longer" is Φ((wish − size)/s − 1), with s from the eye's
 * judgement (2 % of the wish) and the turn; so a piece a little short may still pass, and the
 * shorter it is the surer she says it. "Right" is a reading of the wish itself with the eye's
 * noise.
 */
final class Evidence {
  /** How a size is known. */
  private enum Known {
    MEASURED,
    NEAR_WISH,
    BELOW_WISH,
    ABOVE_WISH
  }

  private record Clue(boolean ofLength, Known known, double mm) {
    double sizeMm(FormedSize size) {
      return ofLength ? size.lengthMm() : size.widthMm();
    }

    double turnMm(Noise noise) {
      return ofLength ? noise.lengthMm() : noise.widthMm();
    }

    double slopeMm(Sensitivity slope, int column) {
      return ofLength ? slope.lengthMm(column) : slope.widthMm(column);
    }

    double ownNoiseMm() {
      return known == Known.MEASURED ? Noise.CALIPER_MM : Noise.EYE_SHARE * mm;
    }

    boolean isReading() {
      return known == Known.MEASURED || known == Known.NEAR_WISH;
    }

    double spreadMm(Noise noise) {
      return Math.hypot(ownNoiseMm(), turnMm(noise));
    }

    /** How far the size lies on the side that the verdict names, in spreads. */
    double lean(FormedSize size, Noise noise) {
      return sign() * (mm - sizeMm(size)) / spreadMm(noise) - 1;
    }

    double sign() {
      return known == Known.BELOW_WISH ? 1 : -1;
    }
  }

  private final Tried tried;
  private final List<Clue> readings;
  private final List<Clue> steps;

  Evidence(Tried tried, LinkSize wish) {
    this.tried = tried;
    List<Clue> clues =
        Stream.of(
                tried.lengthMm().isPresent()
                    ? Optional.of(new Clue(true, Known.MEASURED, tried.lengthMm().getAsDouble()))
                    : judged(true, Verdict.LONGER, Verdict.SHORTER, wish.lengthMm()),
                tried.widthMm().isPresent()
                    ? Optional.of(new Clue(false, Known.MEASURED, tried.widthMm().getAsDouble()))
                    : judged(false, Verdict.WIDER, Verdict.NARROWER, wish.widthMm()))
            .flatMap(Optional::stream)
            .toList();
    readings = clues.stream().filter(Clue::isReading).toList();
    steps = clues.stream().filter(clue -> !clue.isReading()).toList();
  }

  /** Two verdicts that contradict each other say nothing. */
  private Optional<Clue> judged(boolean length, Verdict more, Verdict less, double wishMm) {
    boolean below = tried.verdicts().contains(more);
    boolean above = tried.verdicts().contains(less);
    if (below != above) {
      return Optional.of(new Clue(length, below ? Known.BELOW_WISH : Known.ABOVE_WISH, wishMm));
    }
    return !below && tried.verdicts().contains(Verdict.RIGHT)
        ? Optional.of(new Clue(length, Known.NEAR_WISH, wishMm))
        : Optional.empty();
  }

  Tried tried() {
    return tried;
  }

  /** −log of the chance of what was seen, but for a constant, with the noise held. */
  double cost(FormedSize size, Noise noise) {
    double[] scaled = Triangle.solve(readingRoot(noise), misses(size));
    double cost = 0;
    for (double value : scaled) {
      cost += value * value / 2;
    }
    for (Clue step : steps) {
      cost -= Normal.logLowerTail(step.lean(size, noise));
    }
    return cost;
  }

  /** Adds the slope of the cost and its curvature (without second derivatives of the shape). */
  void add(Sensitivity slope, double[] gradient, double[][] curvature) {
    double[][] root = readingRoot(slope.noise());
    double[] scaled = Triangle.solve(root, misses(slope.size()));
    double[][] columns = new double[3][];
    for (int i = 0; i < 3; i++) {
      double[] column = new double[readings.size()];
      for (int r = 0; r < column.length; r++) {
        column[r] = readings.get(r).slopeMm(slope, i);
      }
      columns[i] = Triangle.solve(root, column);
    }
    for (int i = 0; i < 3; i++) {
      gradient[i] -= dot(columns[i], scaled);
      for (int k = 0; k < 3; k++) {
        curvature[i][k] += dot(columns[i], columns[k]);
      }
    }
    for (Clue step : steps) {
      double lean = step.lean(slope.size(), slope.noise());
      double hazard = Normal.hazard(lean);
      double perMm = step.sign() / step.spreadMm(slope.noise());
      for (int i = 0; i < 3; i++) {
        double along = perMm * step.slopeMm(slope, i);
        gradient[i] += hazard * along;
        for (int k = 0; k < 3; k++) {
          curvature[i][k] += hazard * (hazard + lean) * along * perMm * step.slopeMm(slope, k);
        }
      }
    }
  }

  private double[] misses(FormedSize size) {
    return readings.stream().mapToDouble(clue -> clue.mm() - clue.sizeMm(size)).toArray();
  }

  private double[][] readingRoot(Noise noise) {
    int n = readings.size();
    double[][] m = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < n; k++) {
        m[i][k] = readings.get(i).turnMm(noise) * readings.get(k).turnMm(noise);
      }
      m[i][i] += readings.get(i).ownNoiseMm() * readings.get(i).ownNoiseMm();
    }
    return Triangle.root(m);
  }

  private static double dot(double[] one, double[] other) {
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      sum += one[i] * other[i];
    }
    return sum;
  }
}
