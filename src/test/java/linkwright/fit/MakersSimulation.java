package linkwright.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import linkwright.link.Bend;
import linkwright.link.Bit;
import linkwright.link.Other;
import linkwright.link.Pattern;
import linkwright.link.Run;

/**
 * Makers drawn from the prior make test pieces for a wish; beside each an oracle that knows its
 * maker. Every eye of every piece is turned with a noise of its own, every reading is noisy, the
 * same noise for both.
 */
final class MakersSimulation {
  /** Error of one piece: relative error of the true length, and how many spreads it was off. */
  private record Miss(double length, double width, double spreads) {}

  /** Errors of all makers at one stage. */
  record Errors(List<Double> length, List<Double> width, double withinOneSpread) {
    static double quantile(List<Double> values, double share) {
      double[] sorted = values.stream().mapToDouble(Double::doubleValue).sorted().toArray();
      return sorted[(int) Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
    }

    double median() {
      return quantile(length, 0.5);
    }

    double ninth() {
      return quantile(length, 0.9);
    }
  }

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

  /** What came of it: after 0, 1, 2 … measured pieces, fitted and oracle. */
  record Outcome(List<Errors> fitted, Errors oracle, int unmade, int outOfReach) {
    String table(String title) {
      StringBuilder text = new StringBuilder(title).append('\n');
      text.append("  pieces   length error, median and 90 %   oracle's           ratios\n");
      for (int i = 0; i < fitted.size(); i++) {
        text.append(
            String.format(
                Locale.ROOT,
                "  %d        %5.2f %%  %5.2f %%   %5.2f %%  %5.2f %%  %5.2f  %5.2f"
                    + "   width %5.2f %% (%5.2f %%)  in one spread %4.1f %% (%4.1f %%)%n",
                i,
                100 * fitted.get(i).median(),
                100 * fitted.get(i).ninth(),
                100 * oracle.median(),
                100 * oracle.ninth(),
                fitted.get(i).median() / oracle.median(),
                fitted.get(i).ninth() / oracle.ninth(),
                100 * Errors.quantile(fitted.get(i).width(), 0.5),
                100 * Errors.quantile(oracle.width(), 0.5),
                100 * fitted.get(i).withinOneSpread(),
                100 * oracle.withinOneSpread()));
      }
      return text.append("  pieces that the blank was too short for: ")
          .append(unmade)
          .append("; makers for whom no wish was in reach: ")
          .append(outOfReach)
          .toString();
    }
  }

  Outcome run(int makers) {
    List<List<Miss>> fitted = new ArrayList<>();
    List<Miss> oracle = new ArrayList<>();
    for (int i = 0; i <= pieces; i++) {
      fitted.add(new ArrayList<>());
    }
    for (int i = 0; i < makers; i++) {
      one(fitted, oracle);
    }
    return new Outcome(
        fitted.stream().map(MakersSimulation::errors).toList(), errors(oracle), unmade, outOfReach);
  }

  private static Errors errors(List<Miss> misses) {
    return new Errors(
        misses.stream().map(Miss::length).toList(),
        misses.stream().map(Miss::width).toList(),
        misses.stream().filter(miss -> miss.spreads() <= 1).count() / (double) misses.size());
  }

  private void one(List<List<Miss>> fitted, List<Miss> oracle) {
    Maker hands = drawn();
    Optional<Proposal> reached = reached(hands);
    while (reached.isEmpty()) {
      outOfReach++;
      hands = drawn();
      reached = reached(hands);
    }
    Proposal known = reached.get();
    Wish wish = known.wish();
    List<Tried> tried = new ArrayList<>();
    for (int piece = 0; piece <= pieces; piece++) {
      double[] turns = {
        Noise.TURN_DEG * random.nextGaussian(), Noise.TURN_DEG * random.nextGaussian()
      };
      Maker believed = Fit.learn(pattern, wireMm, prior, tried, wish);
      Proposal proposal = Fit.next(pattern, wireMm, believed, wish, owned, stepMm).orThrow();
      Optional<Size> made = make(proposal, hands, turns);
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
      Wish wish = new Wish(12 + 6 * random.nextDouble(), 4.5 + 1.7 * random.nextDouble());
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

  private Miss miss(Optional<Size> made, Proposal proposal, Wish wish) {
    if (made.isEmpty()) {
      unmade++;
      return new Miss(1, 1, 100);
    }
    return new Miss(
        Math.abs(made.get().lengthMm() / wish.lengthMm() - 1),
        Math.abs(made.get().widthMm() / wish.widthMm() - 1),
        Math.abs(made.get().lengthMm() - proposal.expected().lengthMm())
            / proposal.expected().lengthSpreadMm());
  }

  private Optional<Size> make(Proposal proposal, Maker hands, double[] turns) {
    return new PatternShape(unlike(pattern, turns), wireMm)
        .size(proposal.blankMm(), proposal.formersMm(), hands);
  }

  /** The pattern written out whole, each of its two eyes turned further by its own amount. */
  static Pattern unlike(Pattern pattern, double[] turns) {
    List<Bit> path = new ArrayList<>();
    for (Bit bit : pattern.path()) {
      path.add(bit instanceof Bend bend ? bent(bend, bend.side(), turns[0]) : bit);
    }
    for (int i = pattern.path().size() - 1; i >= 0; i--) {
      Bit bit = pattern.path().get(i);
      if (bit instanceof Bend bend) {
        Bend back =
            new Bend(
                bend.to().orElse(bend.over()),
                bend.to().isPresent() ? Optional.of(bend.over()) : Optional.empty(),
                bend.turnDeg(),
                bend.side(),
                bend.eye(),
                bend.curl(),
                bend.overOnPurpose());
        boolean turned = pattern.other() == Other.TURNED;
        path.add(bent(back, turned ? bend.side().opposite() : bend.side(), turns[1]));
      } else if (bit instanceof Run run) {
        path.add(run.isRest() ? Run.likeRest() : run);
      }
    }
    return new Pattern(
        pattern.id(),
        pattern.says(),
        pattern.formersMm(),
        path,
        Other.NONE,
        pattern.closed(),
        List.of(),
        pattern.usual());
  }

  private static Bend bent(Bend bend, linkwright.link.Side side, double moreDeg) {
    return new Bend(
        bend.over(),
        bend.to(),
        bend.eye() ? bend.turnDeg() + moreDeg : bend.turnDeg(),
        side,
        bend.eye(),
        bend.curl(),
        bend.overOnPurpose());
  }

  static List<Double> sizes(double... mm) {
    return Arrays.stream(mm).boxed().toList();
  }
}
