package linkwright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import linkwright.link.Bending;
import linkwright.link.Pattern;
import linkwright.link.PatternFiles;

/**
 * Makers with three earlier jobs of other links and wires in one metal, each of another batch, and
 * the first pieces of a fourth. Beside what {@link EarlierWork} makes of the books stands a second
 * method that shares no formula with it: a random walk (Metropolis) through metal, batches and
 * hands themselves, weighed by all pieces.
 */
final class HandsSimulation {
  private static final double STRESS = 200.0 / 75_000;
  private static final double BATCH = 0.06;
  private static final double STEP_MM = 0.5;
  private static final double TURN_DEG = 4 / Math.sqrt(2);
  private static final Map<String, List<Double>> OWNED =
      Map.of("eye", List.of(2.0, 2.5, 3.0, 3.5, 4.0, 4.5));

  /** An earlier job: its shape, and the first blank. */
  private record Kind(PatternShape shape, double wireMm, double blankMm) {
    static Kind of(String id, double wireMm, double blankMm) {
      return new Kind(new PatternShape(PatternFiles.named(id), wireMm), wireMm, blankMm);
    }

    Map<String, Double> formers() {
      return shape.formersMm();
    }
  }

  private static final List<Kind> EARLIER =
      List.of(
          Kind.of("scroll", 1.0, 42),
          Kind.of("bar-two-eyes", 0.8, 37),
          Kind.of("figure-of-eight", 1.2, 31));
  private static final Pattern NEXT = PatternFiles.named("hook-link");
  private static final double WIRE_MM = 0.9;
  private static final PatternShape NEXT_SHAPE = new PatternShape(NEXT, WIRE_MM);

  private final Random random;
  private final boolean changed;
  private final int steps;
  final List<Double> fresh = new ArrayList<>();
  final List<Double> taught = new ArrayList<>();
  final List<Double> exact = new ArrayList<>();

  /**
   * @param changed whether hands are others at the fourth job
   * @param steps steps of the random walk; 0 for none
   */
  HandsSimulation(long seed, boolean changed, int steps) {
    this.random = new Random(seed);
    this.changed = changed;
    this.steps = steps;
  }

  /** Her own numbers: clearance, lost wire, turn. */
  private double[] hands() {
    return new double[] {
      Maker.USUAL_CLEARANCE_SPREAD * random.nextGaussian(),
      Maker.USUAL_LOST_SPREAD_MM * random.nextGaussian(),
      Maker.USUAL_TURN_SPREAD_DEG * random.nextGaussian()
    };
  }

  private static Bending bending(double stress, double[] hands) {
    return new Bending(Math.max(0, stress), hands[0], hands[1], hands[2]);
  }

  private Bending slipped(Bending true4) {
    return new Bending(
        true4.stressShare(),
        true4.clearanceShare() + 0.01 * random.nextGaussian(),
        true4.lostMm() + 0.15 * random.nextGaussian(),
        true4.extraTurnDeg() + TURN_DEG * random.nextGaussian());
  }

  /** Lets so many makers work; pieces of the fourth job before the one whose error is taken. */
  HandsSimulation run(int makers, int pieces) {
    while (fresh.size() < makers) {
      one(pieces);
    }
    return this;
  }

  private void one(int pieces) {
    double metal = STRESS * (1 + Maker.USUAL_STRESS_SPREAD * random.nextGaussian());
    double[] hands = hands();
    List<EarlierJob> jobs = new ArrayList<>();
    for (Kind kind : EARLIER) {
      Bending her = bending(metal * (1 + BATCH * random.nextGaussian()), hands);
      List<Tried> made = new ArrayList<>();
      for (int i = 0; i < 2; i++) {
        made(kind.shape(), kind.blankMm() + i, kind.formers(), her).ifPresent(made::add);
      }
      if (made.size() < 2) {
        return;
      }
      LinkSize size = new LinkSize(15, 5);
      jobs.add(
          new EarlierJob(kind.shape().pattern(), kind.wireMm(), STRESS, true, false, made, size));
    }
    Bending now = bending(metal * (1 + BATCH * random.nextGaussian()), changed ? hands() : hands);
    double eye = OWNED.get("eye").get(random.nextInt(6));
    Optional<FormedSize> reached =
        NEXT_SHAPE.size(28 + 8 * random.nextDouble(), Map.of("eye", eye), now);
    if (reached.isEmpty()) {
      return;
    }
    LinkSize wish = new LinkSize(reached.get().lengthMm(), reached.get().widthMm());
    Bending[] slips = new Bending[pieces + 1];
    for (int i = 0; i <= pieces; i++) {
      slips[i] = slipped(now);
    }
    long readings = random.nextLong();
    Maker prior = EarlierWork.prior(STRESS, jobs);
    Maker anybody = Maker.unknown(STRESS);
    Optional<Double> plain = error(anybody, anybody, wish, slips, readings);
    Optional<Double> known = error(prior, anybody, wish, slips, readings);
    Optional<Double> walked =
        steps == 0 ? plain : error(walk(jobs, metal, hands), anybody, wish, slips, readings);
    if (plain.isPresent() && known.isPresent() && walked.isPresent()) {
      fresh.add(plain.get());
      taught.add(known.get());
      exact.add(walked.get());
    }
  }

  private Optional<Tried> made(
      Shape shape, double blankMm, Map<String, Double> formers, Bending her) {
    Optional<FormedSize> size = shape.size(blankMm, formers, slipped(her));
    return size.map(
        one ->
            ShortPieces.measured(
                blankMm,
                formers,
                one.lengthMm() + 0.1 * random.nextGaussian(),
                one.widthMm() + 0.1 * random.nextGaussian()));
  }

  /** The error of the length of the piece after some, as a share. */
  private static Optional<Double> error(
      Maker prior, Maker anybody, LinkSize wish, Bending[] slips, long readings) {
    Random calipers = new Random(readings);
    List<Tried> tried = new ArrayList<>();
    for (int i = 0; i < slips.length; i++) {
      Maker believed =
          prior.equals(anybody)
              ? Fit.learn(NEXT, WIRE_MM, anybody, tried, wish)
              : TwoMakers.learn(NEXT, WIRE_MM, prior, anybody, tried, wish);
      Proposal next = Fit.next(NEXT, WIRE_MM, believed, wish, OWNED, STEP_MM).orThrow();
      Optional<FormedSize> made = NEXT_SHAPE.size(next.blankMm(), next.formersMm(), slips[i]);
      if (made.isEmpty()) {
        return Optional.of(1.0);
      }
      if (i == slips.length - 1) {
        return Optional.of(Math.abs(made.get().lengthMm() / wish.lengthMm() - 1));
      }
      tried.add(
          ShortPieces.measured(
              next.blankMm(),
              next.formersMm(),
              made.get().lengthMm() + 0.1 * calipers.nextGaussian(),
              made.get().widthMm() + 0.1 * calipers.nextGaussian()));
    }
    return Optional.empty();
  }

  // The second method.

  /** The mean and the spread of a walk through metal stress, three batches and three of hands. */
  private Maker walk(List<EarlierJob> jobs, double metal, double[] hands) {
    double[] at = {metal / STRESS, 1, 1, 1, hands[0], hands[1], hands[2]};
    double[] stride = {0.08, 0.03, 0.03, 0.03, 0.012, 0.12, 1.2};
    double[][][] noise = noise(jobs, at);
    double now = logChance(jobs, at, noise);
    double[] mean = new double[4];
    double[][] square = new double[4][4];
    int kept = 0;
    for (int step = 0; step < steps; step++) {
      double[] to = at.clone();
      for (int i = 0; i < to.length; i++) {
        to[i] += 0.7 * stride[i] * random.nextGaussian();
      }
      double there = logChance(jobs, to, noise);
      if (Math.log(random.nextDouble()) < there - now) {
        at = to;
        now = there;
      }
      if (step >= steps / 5) {
        // The next batch is drawn from the metal's.
        double batch = at[0] * (1 + BATCH * random.nextGaussian());
        double[] four = {STRESS * batch, at[4], at[5], at[6]};
        kept++;
        for (int i = 0; i < 4; i++) {
          mean[i] += four[i];
          for (int k = 0; k < 4; k++) {
            square[i][k] += four[i] * four[k];
          }
        }
      }
    }
    for (int i = 0; i < 4; i++) {
      mean[i] /= kept;
    }
    double[][] spread = new double[4][4];
    for (int i = 0; i < 4; i++) {
      for (int k = 0; k < 4; k++) {
        spread[i][k] = square[i][k] / kept - mean[i] * mean[k];
      }
    }
    return new Maker(
        new Bending(Math.max(0, mean[0]), mean[1], mean[2], mean[3]),
        Covariance.ofRoot(Triangle.root(spread)),
        Scatter.USUAL);
  }

  private static double[] batchAndHands(double[] at, int job) {
    return new double[] {STRESS * at[0] * at[1 + job], at[4], at[5], at[6]};
  }

  /** Each job's {length², both, width²} of a piece's noise, by differences at the start. */
  private static double[][][] noise(List<EarlierJob> jobs, double[] at) {
    double[][][] noise = new double[jobs.size()][][];
    for (int job = 0; job < jobs.size(); job++) {
      double[] four = batchAndHands(at, job);
      Kind kind = EARLIER.get(job);
      noise[job] = new double[jobs.get(job).pieces().size()][];
      for (int i = 0; i < noise[job].length; i++) {
        Tried piece = jobs.get(job).pieces().get(i);
        double[] by = {0.01, 0.15, TURN_DEG};
        double[] sum = {0.01, 0, 0.01};
        for (int cause = 0; cause < 3; cause++) {
          double[] more = four.clone();
          double[] less = four.clone();
          more[1 + cause] += by[cause];
          less[1 + cause] -= by[cause];
          Optional<FormedSize> up = size(kind, piece, more);
          Optional<FormedSize> down = size(kind, piece, less);
          if (up.isPresent() && down.isPresent()) {
            double length = (up.get().lengthMm() - down.get().lengthMm()) / 2;
            double width = (up.get().widthMm() - down.get().widthMm()) / 2;
            sum[0] += length * length;
            sum[1] += length * width;
            sum[2] += width * width;
          }
        }
        noise[job][i] = sum;
      }
    }
    return noise;
  }

  private static Optional<FormedSize> size(Kind kind, Tried piece, double[] four) {
    return kind.shape()
        .size(
            piece.blankMm(),
            piece.formersMm(),
            new Bending(Math.max(0, four[0]), four[1], four[2], four[3]));
  }

  private static double logChance(List<EarlierJob> jobs, double[] at, double[][][] noise) {
    double sum = -sq((at[0] - 1) / Maker.USUAL_STRESS_SPREAD) / 2;
    sum -= sq(at[4] / Maker.USUAL_CLEARANCE_SPREAD) / 2;
    sum -= sq(at[5] / Maker.USUAL_LOST_SPREAD_MM) / 2;
    sum -= sq(at[6] / Maker.USUAL_TURN_SPREAD_DEG) / 2;
    for (int job = 0; job < jobs.size(); job++) {
      sum -= sq((at[1 + job] - 1) / BATCH) / 2;
      for (int i = 0; i < jobs.get(job).pieces().size(); i++) {
        Tried piece = jobs.get(job).pieces().get(i);
        Optional<FormedSize> size = size(EARLIER.get(job), piece, batchAndHands(at, job));
        if (size.isEmpty()) {
          return Double.NEGATIVE_INFINITY;
        }
        double length = piece.lengthMm().orElseThrow() - size.get().lengthMm();
        double width = piece.widthMm().orElseThrow() - size.get().widthMm();
        double[] n = noise[job][i];
        double determinant = n[0] * n[2] - n[1] * n[1];
        sum -=
            (n[2] * length * length - 2 * n[1] * length * width + n[0] * width * width)
                / determinant
                / 2;
      }
    }
    return sum;
  }

  private static double sq(double x) {
    return x * x;
  }

  static double quantile(List<Double> errors, double share) {
    double[] sorted = errors.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    return sorted[(int) Math.floor(share * sorted.length)];
  }

  String table() {
    return String.format(
        Locale.ROOT,
        "%d makers%s: anybody %.2f / %.2f %%, taught %.2f / %.2f %%, walked %.2f / %.2f %%",
        fresh.size(),
        changed ? " whose hands changed" : "",
        100 * quantile(fresh, 0.5),
        100 * quantile(fresh, 0.9),
        100 * quantile(taught, 0.5),
        100 * quantile(taught, 0.9),
        100 * quantile(exact, 0.5),
        100 * quantile(exact, 0.9));
  }
}
