package linkwright.standing;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.job.Fact;
import linkwright.job.Trials;
import linkwright.plan.ChainWish;
import linkwright.plan.HungMean;
import linkwright.plan.MeasuredLink;
import linkwright.plan.RingInstead;
import linkwright.plan.RingLength;
import linkwright.plan.WishReading;
import linkwright.plan.WishedRing;

/**
 * What of a job's pieces is followed: the sample link, the trial length. A link or a ring wished
 * anew after a piece was chosen goes before it.
 *
 * @param wish the wish with the rings that are followed
 * @param link the link that is followed; empty where only the wish counts
 * @param samples name of another link of the chain → its sample that is followed
 * @param hung what a hung length says of links of several sizes
 * @param ring a ring wished after the trial length was chosen, with the one it replaces
 */
record Followed(
    ChainWish wish,
    Optional<MeasuredLink> link,
    Map<String, MeasuredLink> samples,
    Optional<HungMean> hung,
    Optional<RingInstead> ring) {

  /**
   * What is followed.
   *
   * @param wish the wish as it was typed last
   * @param trials the pieces made and chosen
   * @param handbook where an earlier wish is read anew
   */
  static Followed of(ChainWish wish, Trials trials, Handbook handbook) {
    Optional<MeasuredLink> sample =
        trials
            .samplePiece()
            .filter(any -> sameLink(wish, trials.wishAtSample(), handbook))
            .map(Followed::measured);
    Optional<Fact.TrialMeasured> trial =
        trials.chosen().filter(any -> sameLink(wish, trials.wishAtChoice(), handbook));
    return trial
        .map(hung -> followed(wish, sample, hung, read(trials.wishAtChoice(), handbook)))
        .orElse(new Followed(wish, sample, Map.of(), Optional.empty(), Optional.empty()))
        .with(samples(wish, trials, handbook));
  }

  private Followed with(Map<String, MeasuredLink> others) {
    return new Followed(wish, link, others, hung, ring);
  }

  private static Map<String, MeasuredLink> samples(
      ChainWish wish, Trials trials, Handbook handbook) {
    Map<String, MeasuredLink> samples = new LinkedHashMap<>();
    for (String size : wish.others()) {
      trials
          .samplePiece(size)
          .filter(
              any ->
                  read(trials.samples().get(size).wish(), handbook)
                      .map(then -> same(then.of(size), wish.of(size)))
                      .orElse(true))
          .ifPresent(piece -> samples.put(size, measured(piece)));
    }
    return samples;
  }

  private static boolean same(ChainWish then, ChainWish now) {
    return then.link().wishedLike(now.link()) && Math.abs(then.wireMm() - now.wireMm()) < 0.0005;
  }

  private static MeasuredLink measured(Fact.TestPieceTried sample) {
    return new MeasuredLink(
        OptionalDouble.of(sample.blankMm()),
        sample.formersMm(),
        sample.lengthMm(),
        sample.widthMm(),
        sample.insideMm(),
        0);
  }

  private static Followed followed(
      ChainWish wish,
      Optional<MeasuredLink> sample,
      Fact.TrialMeasured hung,
      Optional<ChainWish> wishThen) {
    Optional<WishedRing> tried = ringOf(hung, wish);
    double each = linkAddsMm(hung, wish);
    boolean known = tells(hung, wish);
    boolean alike = wish.repeat().others().isEmpty();
    Optional<MeasuredLink> link =
        known && alike ? Optional.of(sample.orElse(unmeasured()).hung(each, hung.links())) : sample;
    Optional<HungMean> mean =
        known && !alike ? Optional.of(new HungMean(each, hung.links())) : Optional.empty();
    boolean wishedSince = wishThen.filter(then -> !then.ring().equals(wish.ring())).isPresent();
    if (tried.isEmpty() || wish.ring().equals(tried)) {
      return new Followed(wish, link, Map.of(), mean, Optional.empty());
    }
    return wishedSince
        ? new Followed(
            wish, link, Map.of(), mean, wish.ring().map(ring -> new RingInstead(tried.get(), ring)))
        : new Followed(wish.withRing(tried.get()), link, Map.of(), mean, Optional.empty());
  }

  private static double linkAddsMm(Fact.TrialMeasured hung, ChainWish wish) {
    double rings =
        ringOf(hung, wish).map(ring -> hung.rings() * RingLength.insideLengthMm(ring)).orElse(0.0);
    return (hung.hungMm() - hung.claspMm() - rings) / hung.links();
  }

  /** Whether a length says what a link adds: not one that its rings and clasp alone make up. */
  static boolean tells(Fact.TrialMeasured hung, ChainWish wish) {
    double each = linkAddsMm(hung, wish);
    return each > 0 && each < Double.POSITIVE_INFINITY;
  }

  private static Optional<WishedRing> ringOf(Fact.TrialMeasured hung, ChainWish wish) {
    return hung.rings() == 0
        ? Optional.empty()
        : Optional.of(
            new WishedRing(
                hung.ringInsideMm(),
                wish.ring().map(WishedRing::wireMm).orElse(wish.wireMm()),
                hung.ovalInsideMm()));
  }

  private static MeasuredLink unmeasured() {
    OptionalDouble none = OptionalDouble.empty();
    return new MeasuredLink(none, Map.of(), none, none, none, 0);
  }

  private static boolean sameLink(ChainWish wish, Map<String, String> then, Handbook handbook) {
    return read(then, handbook).map(before -> same(before, wish)).orElse(true);
  }

  private static Optional<ChainWish> read(Map<String, String> texts, Handbook handbook) {
    return texts.isEmpty()
        ? Optional.empty()
        : WishReading.of(texts, handbook.reference(), handbook.patterns()).wish();
  }
}
