package linkwright.fit;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What one test piece says, against what a guess at the maker makes of the same blank.
 *
 * <p>A measured size is normal about the computed one, with the calipers' noise and what differs
 * from piece to piece; now and then it is misread ({@link Readings}). A size that was not measured
 * but judged says only on which side of what is near enough it seemed to lie ({@link JudgedSize}):
 * "right" is not a reading of the wish, it is anything within that reach of it.
 */
final class Evidence {
  /**
   * How much further an eye may have come to be turned in each piece since, in degrees: hands
   * change, so old pieces are slowly forgotten.
   */
  private static final double DRIFT_DEG = 1;

  /** How a size is known. */
  enum ClueKind {
    MEASURED,
    NEAR_WISH,
    BELOW_WISH,
    ABOVE_WISH
  }

  /** One thing that is known of a piece's length or width. */
  record Clue(boolean ofLength, ClueKind known, double mm) {
    double sizeMm(FormedSize size) {
      return ofLength ? size.lengthMm() : size.widthMm();
    }

    /** Change with each of the maker's numbers and, last, with a drift of the turn. */
    double[] slopeMm(Sensitivity piece, int ago) {
      double[] own = ofLength ? piece.lengthMm() : piece.widthMm();
      double[] slope = Arrays.copyOf(own, own.length + 1);
      PieceScatter.Change turn = piece.perDegree();
      slope[own.length] = -ago * (ofLength ? turn.lengthMm() : turn.widthMm());
      return slope;
    }

    boolean isReading() {
      return known == ClueKind.MEASURED;
    }

    /** What she says of that size, seen with so much noise of the piece itself. */
    JudgedSize judged(double sizeMm, double pieceMm) {
      double nearMm = (ofLength ? Reach.LENGTH_OFF : Reach.WIDTH_OFF_BY) * mm;
      double spreadMm = Math.hypot(PieceScatter.EYE_SHARE * mm, pieceMm);
      return switch (known) {
        case BELOW_WISH -> JudgedSize.below(sizeMm, mm - nearMm, spreadMm);
        case ABOVE_WISH -> JudgedSize.below(-sizeMm, -mm - nearMm, spreadMm).mirrored();
        case NEAR_WISH, MEASURED -> JudgedSize.near(sizeMm - mm, nearMm, spreadMm);
      };
    }
  }

  private final Tried tried;
  private final int age;
  private final List<Clue> readings;
  private final List<Clue> steps;

  /**
   * @param age how many pieces ago it was made, 0 for the last
   */
  Evidence(Tried tried, LinkSize wish, int age) {
    this.tried = tried;
    this.age = age;
    List<Clue> clues =
        Stream.of(
                tried.lengthMm().isPresent()
                    ? Optional.of(new Clue(true, ClueKind.MEASURED, tried.lengthMm().getAsDouble()))
                    : judged(true, Verdict.LONGER, Verdict.SHORTER, wish.lengthMm()),
                tried.widthMm().isPresent()
                    ? Optional.of(new Clue(false, ClueKind.MEASURED, tried.widthMm().getAsDouble()))
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
      return Optional.of(
          new Clue(length, below ? ClueKind.BELOW_WISH : ClueKind.ABOVE_WISH, wishMm));
    }
    return !below && tried.verdicts().contains(Verdict.RIGHT)
        ? Optional.of(new Clue(length, ClueKind.NEAR_WISH, wishMm))
        : Optional.empty();
  }

  /** How many readings it has, 0 to 2. */
  int readingCount() {
    return readings.size();
  }

  /** Whether it says anything of the hands. */
  boolean saysSomething() {
    return !readings.isEmpty() || !steps.isEmpty();
  }

  Tried tried() {
    return tried;
  }

  /**
   * What its readings say.
   *
   * @param z where the piece was looked at, in standard deviations of the prior
   */
  Readings readings(Sensitivity piece, double[] z) {
    return Readings.of(readings, piece, age + 1, z, noise(piece.scatter()));
  }

  /** What differs from piece to piece, older ones by more: {length², both, width²}. */
  private double[] noise(PieceScatter scatter) {
    double drift = age * DRIFT_DEG * DRIFT_DEG / (PieceScatter.TURN_DEG * PieceScatter.TURN_DEG);
    PieceScatter.Change turn = scatter.turn();
    return new double[] {
      scatter.lengthSquare() + drift * turn.lengthMm() * turn.lengthMm(),
      scatter.together() + drift * turn.lengthMm() * turn.widthMm(),
      scatter.widthSquare() + drift * turn.widthMm() * turn.widthMm()
    };
  }

  /**
   * Adds what its verdicts say where the piece was looked at: the slope of −log of their chance and
   * its curvature (without second derivatives of the shape).
   *
   * @param share how much her pieces differ, as a share of what is usual
   */
  void addVerdicts(Sensitivity piece, double share, double[] slope, double[][] curvature) {
    for (Clue step : steps) {
      double own =
          share * (step.ofLength() ? piece.scatter().lengthMm() : piece.scatter().widthMm());
      JudgedSize said = step.judged(step.sizeMm(piece.size()), own);
      double[] change = step.slopeMm(piece, age + 1);
      for (int i = 0; i < slope.length; i++) {
        slope[i] += said.slope() * change[i];
        for (int k = 0; k < slope.length; k++) {
          curvature[i][k] += said.curvature() * change[i] * change[k];
        }
      }
    }
  }
}
