package linkwright.standing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.fit.Fit;
import linkwright.fit.Maker;
import linkwright.fit.Reach;
import linkwright.fit.Tried;
import linkwright.fit.TwoMakers;
import linkwright.hands.TriedPieces;
import linkwright.job.Trials;
import linkwright.link.Formed;
import linkwright.link.Pattern;
import linkwright.plan.ChainWish;
import linkwright.plan.FormersOwned;
import linkwright.plan.LinkBasis;
import linkwright.plan.Plan;
import linkwright.plan.Planning;
import linkwright.quantity.LastAnswers;

/** What a job's test pieces, its sample link and its trial length say of the link. */
final class LinkKnowledge {
  /** So many sizes of one former are tried: a choice of three formers is gone through at a key. */
  private static final int MOST_FORMERS = 4;

  private static final LastAnswers<LinkBasis> TAUGHT = new LastAnswers<>(100);

  private LinkKnowledge() {}

  /**
   * What the test pieces taught, and before them her earlier jobs; the piece that is followed is
   * not looked at.
   *
   * @param formersMm the formers of her bench to choose from, mm
   */
  static LinkBasis taught(
      ChainWish wish, Trials trials, List<Double> formersMm, Handbook handbook) {
    Optional<Pattern> pattern = wish.link().pattern();
    if (pattern.isEmpty()) {
      return LinkBasis.untried(wish);
    }
    Optional<Maker> earlier = handbook.hands().prior(wish.metal(), wish.temper());
    return TAUGHT.of(
        List.of(wish, trials, trials.inOrder(), formersMm, earlier),
        () -> taught(wish, pattern.get(), trials, formersMm, earlier));
  }

  private static LinkBasis taught(
      ChainWish wish,
      Pattern pattern,
      Trials trials,
      List<Double> formersMm,
      Optional<Maker> earlier) {
    LinkBasis untried = LinkBasis.untried(wish);
    List<Tried> tried = TriedPieces.of(trials, wish.wireMm());
    Maker fresh = untried.hands();
    Maker known = earlier.orElse(fresh);
    Maker maker =
        tried.isEmpty()
            ? known
            : size(wish)
                .map(
                    size ->
                        earlier.isPresent()
                            ? TwoMakers.learn(pattern, wish.wireMm(), known, fresh, tried, size)
                            : Fit.learn(pattern, wish.wireMm(), fresh, tried, size))
                .orElse(known);
    boolean others = wish.others().stream().anyMatch(size -> !tried(wish, trials, size).isEmpty());
    Maker all = others ? othersToo(wish, trials, maker) : maker;
    boolean learned = !tried.isEmpty() || others || earlier.isPresent();
    LinkBasis hers = new LinkBasis(all, learned, owned(wish, all, pattern, trials, formersMm));
    LinkBasis own = new LinkBasis(all, learned, owned(wish, all, pattern, trials, List.of()));
    return hers.ownedMm().equals(own.ownedMm()) || hers.makes(wish)
        ? hers
        : hers.otherwise(own, wish).orElse(hers);
  }

  private static List<Tried> tried(ChainWish wish, Trials trials, String size) {
    return TriedPieces.of(trials, wish.wireMm(), size);
  }

  /** Pieces of the chain's other links teach of the same hands. */
  private static Maker othersToo(ChainWish wish, Trials trials, Maker known) {
    Maker maker = known;
    for (String other : wish.others()) {
      List<Tried> tried = tried(wish, trials, other);
      ChainWish alone = wish.of(other);
      Optional<linkwright.fit.LinkSize> size = size(alone);
      if (!tried.isEmpty() && size.isPresent() && alone.link().pattern().isPresent()) {
        maker = Fit.learn(alone.link().pattern().get(), wish.wireMm(), maker, tried, size.get());
      }
    }
    return maker;
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

  /**
   * Formers named in the plan or asked for by it, else the pattern's own; those used on a piece.
   */
  private static Map<String, List<Double>> owned(
      ChainWish wish, Maker hands, Pattern pattern, Trials trials, List<Double> formersMm) {
    Map<String, List<Double>> owned = new LinkedHashMap<>();
    Map<String, List<Double>> planned = FormersOwned.of(wish, hands);
    pattern
        .formersMm()
        .forEach(
            (name, mm) ->
                owned.put(name, new ArrayList<>(choice(planned.get(name), mm, wish, formersMm))));
    trials.inOrder().stream()
        .filter(piece -> piece.size().isEmpty())
        .forEach(piece -> piece.formersMm().forEach((name, mm) -> add(owned, name, mm)));
    return owned;
  }

  /**
   * The sizes there are of one former: those planned, else hers. A mandrel that was found for the
   * wish gives way to hers where one makes as long a link.
   */
  private static List<Double> choice(
      List<Double> planned, double mm, ChainWish wish, List<Double> formersMm) {
    if (planned == null) {
      return hers(formersMm, mm);
    }
    double near = Reach.LENGTH_OFF * wish.link().lengthMm().orElse(0);
    List<Double> instead =
        FormersOwned.found(wish.link())
            ? hers(formersMm, planned.get(0)).stream()
                .filter(own -> Math.abs(own - planned.get(0)) <= near)
                .toList()
            : List.of();
    return instead.isEmpty() ? planned : instead;
  }

  /** Her own formers that come nearest a pattern's, where she named any; else the pattern's. */
  private static List<Double> hers(List<Double> formersMm, double mm) {
    List<Double> nearest =
        formersMm.stream()
            .distinct()
            .sorted(Comparator.comparingDouble(own -> Math.abs(own - mm)))
            .limit(MOST_FORMERS)
            .toList();
    return nearest.isEmpty() ? List.of(mm) : nearest;
  }

  private static void add(Map<String, List<Double>> owned, String name, double mm) {
    List<Double> sizes = owned.get(name);
    if (sizes != null && !sizes.contains(mm)) {
      sizes.add(mm);
    }
  }
}
