package linkwright.standing;

import java.util.Map;
import java.util.OptionalDouble;
import linkwright.job.Fact;
import linkwright.job.Trials;
import linkwright.link.Bending;
import linkwright.link.Formed;
import linkwright.link.Forming;
import linkwright.plan.ChainWish;
import linkwright.plan.RingLength;
import linkwright.plan.WishedLink;
import linkwright.plan.WishedRing;

/** Counts a chain anew from what was measured: the sample link, then the trial length. */
public final class Recount {
  private Recount() {}

  /** The wish with the sample link and the chosen trial length in place of what was planned. */
  public static ChainWish of(ChainWish wish, Trials trials) {
    ChainWish sampled = trials.samplePiece().map(sample -> withSample(wish, sample)).orElse(wish);
    return trials.chosen().map(trial -> withTrial(sampled, trial)).orElse(sampled);
  }

  private static ChainWish withSample(ChainWish wish, Fact.TestPieceTried sample) {
    WishedLink link =
        new WishedLink(
            wish.link().pattern(),
            OptionalDouble.of(sample.blankMm()),
            sample.formersMm().isEmpty() ? wish.link().formersMm() : sample.formersMm(),
            sample.lengthMm().isPresent() ? sample.lengthMm() : wish.link().lengthMm(),
            sample.widthMm().isPresent() ? sample.widthMm() : wish.link().widthMm(),
            inside(wish, sample));
    return wish.withLink(link);
  }

  /** Measured inside; else the pattern's inside, longer by as much as the piece came out longer. */
  private static OptionalDouble inside(ChainWish wish, Fact.TestPieceTried sample) {
    if (sample.insideMm().isPresent() || sample.lengthMm().isEmpty()) {
      return sample.insideMm();
    }
    Map<String, Double> formers =
        sample.formersMm().isEmpty() ? wish.link().formersMm() : sample.formersMm();
    double length = sample.lengthMm().getAsDouble();
    return wish.link()
        .pattern()
        .flatMap(
            pattern ->
                Forming.form(pattern, wish.wireMm(), sample.blankMm(), formers, Bending.TRUE)
                    .found())
        .map(formed -> OptionalDouble.of(inside(formed, length)))
        .orElse(OptionalDouble.empty());
  }

  private static double inside(Formed formed, double measuredLengthMm) {
    return formed.insideLengthMm() + measuredLengthMm - formed.lengthMm();
  }

  private static ChainWish withTrial(ChainWish wish, Fact.TrialMeasured trial) {
    WishedRing ring =
        new WishedRing(
            trial.ringInsideMm(),
            wish.ring().map(WishedRing::wireMm).orElse(wish.wireMm()),
            trial.ovalInsideMm());
    ChainWish ringed = trial.rings() > 0 ? wish.withRing(ring) : wish;
    double rings = trial.rings() > 0 ? trial.rings() * RingLength.insideLengthMm(ring) : 0;
    double linkInside = (trial.hungMm() - trial.claspMm() - rings) / trial.links();
    if (!(linkInside > 0 && linkInside < Double.POSITIVE_INFINITY)) {
      return ringed;
    }
    WishedLink link = ringed.link();
    return ringed.withLink(
        new WishedLink(
            link.pattern(),
            link.blankMm(),
            link.formersMm(),
            link.lengthMm(),
            link.widthMm(),
            OptionalDouble.of(linkInside)));
  }
}
