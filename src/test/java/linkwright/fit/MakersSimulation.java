package linkwright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import linkwright.link.Pattern;

/**
 * Makers drawn from the prior make test pieces for a wish; beside each an oracle that knows its
 * maker. Every eye of every piece is turned with a noise of its own, every reading is noisy, the
 * same noise for both.
 */
final class MakersSimulation {
  /** A wish is within reach only if the blank is so much longer than its bends. */
  private static final double ROOM_MM = 1;

  private final Pattern pattern;
  private final double wireMm;
  private final Map<String, List<Double>> owned;
  private final Maker prior;
  private final double stepMm;
  private final Random random;
  private final int pieces;
  private int unmade;
  private int outOfReach;

  MakersSimulation(
      Pattern pattern,
      double wireMm,
      Map<String, List<Double>> owned,
      Maker prior,
      double stepMm,
      int pieces,
      long seed) {
    this.pattern = pattern;
    this.wireMm = wireMm;
    this.owned = owned;
    this.prior = prior;
    this.stepMm = stepMm;
    this.pieces = pieces;
    this.random = new Random(seed);
  }

  MakersOutcome run(int makers) {
    List<List<MakersOutcome.Miss>> fitted = new ArrayList<>();
    List<MakersOutcome.Miss> oracle = new ArrayList<>();
    for (int i = 0; i <= pieces; i++) {
      fitted.add(new ArrayList<>());
    }
    for (int i = 0; i < makers; i++) {
      one(fitted, oracle);
    }
    return new MakersOutcome(
        fitted.stream().map(MakersOutcome.Errors::of).toList(),
        MakersOutcome.Errors.of(oracle),
        unmade,
        outOfReach);
  }

  private void one(List<List<MakersOutcome.Miss>> fitted, List<MakersOutcome.Miss> oracle) {
    Maker hands = drawn();
    Optional<Proposal> reached = reached(hands);
    while (reached.isEmpty()) {
      outOfReach++;
      hands = drawn();
      reached = reached(hands);
    }
    Proposal known = reached.get();
    LinkSize wish = known.wish();
    List<Tried> tried = new ArrayList<>();
    for (int piece = 0; piece <= pieces; piece++) {
      double[] turns = {
        Noise.TURN_DEG * random.nextGaussian(), Noise.TURN_DEG * random.nextGaussian()
      };
      Maker believed = Fit.learn(pattern, wireMm, prior, tried, wish);
      Proposal proposal = Fit.next(pattern, wireMm, believed, wish, owned, stepMm).orThrow();
      Optional<FormedSize> made = make(proposal, hands, turns);
      fitted.get(piece).add(miss(made, proposal, wish));
      oracle.add(miss(make(known, hands, turns), known, wish));
      double readLength = Noise.CALIPER_MM * random.nextGaussian();
      double readWidth = Noise.CALIPER_MM * random.nextGaussian();
      tried.add(
          made.map(
                  size ->
                      Tried.measured(
                          proposal.blankMm(),
                          proposal.formersMm(),
                          size.lengthMm() + readLength,
                          size.widthMm() + readWidth))
              // A blank that ran out before its bends were done: all she can say is "longer".
              .orElse(
                  Tried.judged(proposal.blankMm(), proposal.formersMm(), List.of(Verdict.LONGER))));
    }
  }

  private Maker drawn() {
    return new Maker(
        prior.growth() + Maker.USUAL_GROWTH_SPREAD * random.nextGaussian(),
        Maker.USUAL_LOST_SPREAD_MM * random.nextGaussian(),
        Maker.USUAL_TURN_SPREAD_DEG * random.nextGaussian(),
        Covariance.ofSpreads(0, 0, 0));
  }

  /** What the oracle takes for a wish that the formers can reach in these hands, if one is met. */
  private Optional<Proposal> reached(Maker hands) {
    for (int i = 0; i < 100; i++) {
      LinkSize wish = new LinkSize(12 + 6 * random.nextDouble(), 4.5 + 1.7 * random.nextDouble());
      Proposal known = Fit.next(pattern, wireMm, hands, wish, owned, stepMm).orThrow();
      if (known.reach() == Reach.REACHED && roomMm(known, hands) >= ROOM_MM) {
        return Optional.of(known);
      }
    }
    return Optional.empty();
  }

  /** How much longer than the shortest that these hands can form. */
  private double roomMm(Proposal proposal, Maker hands) {
    return new PatternShape(pattern, wireMm)
        .size(proposal.blankMm(), proposal.formersMm(), hands)
        .map(size -> proposal.blankMm() - size.shortestBlankMm())
        .orElse(0.0);
  }

  private MakersOutcome.Miss miss(Optional<FormedSize> made, Proposal proposal, LinkSize wish) {
    if (made.isEmpty()) {
      unmade++;
      return new MakersOutcome.Miss(1, 1, 100);
    }
    return new MakersOutcome.Miss(
        Math.abs(made.get().lengthMm() / wish.lengthMm() - 1),
        Math.abs(made.get().widthMm() / wish.widthMm() - 1),
        Math.abs(made.get().lengthMm() - proposal.expected().lengthMm())
            / proposal.expected().lengthSpreadMm());
  }

  private Optional<FormedSize> make(Proposal proposal, Maker hands, double[] turns) {
    return new PatternShape(UnlikeEyes.of(pattern, turns), wireMm)
        .size(proposal.blankMm(), proposal.formersMm(), hands);
  }
}
