package linkwright.standing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.fit.Fit;
import linkwright.fit.Maker;
import linkwright.fit.Tried;
import linkwright.job.Fact;
import linkwright.job.Trials;
import linkwright.link.Formed;
import linkwright.link.Pattern;
import linkwright.plan.ChainWish;
import linkwright.plan.FormersOwned;
import linkwright.plan.LinkBasis;
import linkwright.plan.Plan;
import linkwright.plan.Planning;

/** What a job's test pieces, its sample link and its trial length say of the link. */
final class LinkKnowledge {
  /** A test piece of wire that differs by less is of the same wire, mm. */
  private static final double SAME_WIRE_MM = 0.005;

  private LinkKnowledge() {}

  /** What the test pieces taught; the piece that is followed is not looked at. */
  static LinkBasis taught(ChainWish wish, Trials trials) {
    LinkBasis untried = LinkBasis.untried(wish);
    Optional<Pattern> pattern = wish.link().pattern();
    if (pattern.isEmpty()) {
      return untried;
    }
    List<Tried> tried = tried(trials, wish.wireMm());
    Maker hands =
        tried.isEmpty()
            ? untried.hands()
            : size(wish)
                .map(size -> Fit.learn(pattern.get(), wish.wireMm(), untried.hands(), tried, size))
                .orElse(untried.hands());
    return new LinkBasis(
        hands, !tried.isEmpty(), owned(wish, hands, pattern.get(), trials), Optional.empty());
  }

  /** The size wished; where only a blank was planned, the size that its pattern gives. */
  static Optional<linkwright.fit.LinkSize> size(ChainWish wish) {
    return wish.linkSize()
        .or(
            () ->
                Planning.plan(wish)
                    .found()
                    .flatMap(Plan::formed)
                    .map(formed -> size(formed, wish)));
  }

  private static linkwright.fit.LinkSize size(Formed formed, ChainWish wish) {
    return new linkwright.fit.LinkSize(
        wish.link().lengthMm().orElse(formed.lengthMm()),
        wish.link().widthMm().orElse(formed.widthMm()));
  }

  /** The test pieces as the fit takes them; pieces of other wire teach nothing of this one. */
  static List<Tried> tried(Trials trials, double wireMm) {
    List<Tried> tried = new ArrayList<>();
    for (Fact.TestPieceTried piece : trials.inOrder()) {
      if (Math.abs(piece.wireMm() - wireMm) < SAME_WIRE_MM) {
        tried.add(
            new Tried(
                piece.blankMm(),
                piece.formersMm(),
                piece.lengthMm(),
                piece.widthMm(),
                Verdicts.of(piece.verdicts())));
      }
    }
    return tried;
  }

  /**
   * Formers named in the plan or asked for by it, else the pattern's own; those used on a piece.
   */
  private static Map<String, List<Double>> owned(
      ChainWish wish, Maker hands, Pattern pattern, Trials trials) {
    Map<String, List<Double>> owned = new LinkedHashMap<>();
    Map<String, List<Double>> planned = FormersOwned.of(wish, hands);
    pattern
        .formersMm()
        .forEach(
            (name, mm) ->
                owned.put(name, new ArrayList<>(planned.getOrDefault(name, List.of(mm)))));
    trials
        .inOrder()
        .forEach(piece -> piece.formersMm().forEach((name, mm) -> add(owned, name, mm)));
    return owned;
  }

  private static void add(Map<String, List<Double>> owned, String name, double mm) {
    List<Double> sizes = owned.get(name);
    if (sizes != null && !sizes.contains(mm)) {
      sizes.add(mm);
    }
  }
}
