package linkwright.standing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.fit.Fit;
import linkwright.fit.Maker;
import linkwright.fit.Proposal;
import linkwright.fit.Tried;
import linkwright.fit.Verdict;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.link.Formed;
import linkwright.link.Forming;
import linkwright.link.Pattern;
import linkwright.plan.ChainWish;
import linkwright.plan.Plan;
import linkwright.plan.Planning;
import linkwright.quantity.Read;

/**
 * What the test pieces of a job teach: the maker's hands and the next blank. Worked out when the
 * screen asks, from the plan's own wish and the pieces in the book.
 *
 * @param wish the outside size wished
 * @param pattern the link's pattern
 * @param wireMm the links' wire, mm
 * @param maker what is known of the maker's hands
 * @param next the blank and formers to take next, or why there are none
 * @param wished the link as it is planned, to be drawn; empty if it cannot be formed
 * @param proposed the next piece as it is expected, to be drawn
 * @param made each piece of the book as it is reckoned in these hands, in order
 */
public record TestPieces(
    linkwright.fit.LinkSize wish,
    Pattern pattern,
    double wireMm,
    Maker maker,
    Read<Proposal> next,
    Optional<Formed> wished,
    Optional<Formed> proposed,
    List<Optional<Formed>> made) {
  /** How near a piece is right, as shares of the wish; this program's choice, by eye about so. */
  private static final double LENGTH_NEAR = 0.03;

  private static final double WIDTH_NEAR = 0.06;

  /** The step to which a blank is cut by eye and ruler. Common practice, no source. */
  private static final double STEP_MM = 0.5;

  /** What the job's test pieces teach; empty where the link has no pattern or no plan. */
  public static Optional<TestPieces> of(Standing standing, JobState state) {
    Optional<ChainWish> planned = standing.counted().wish();
    if (planned.isEmpty() || planned.get().link().pattern().isEmpty()) {
      return Optional.empty();
    }
    ChainWish wish = planned.get();
    return size(wish).map(size -> of(wish, size, state));
  }

  private static TestPieces of(ChainWish wish, linkwright.fit.LinkSize size, JobState state) {
    Pattern pattern = wish.link().pattern().orElseThrow();
    Maker maker =
        Fit.learn(pattern, wish.wireMm(), Planning.maker(wish), tried(state, wish.wireMm()), size);
    Read<Proposal> next =
        Fit.next(pattern, wish.wireMm(), maker, size, owned(wish, state), STEP_MM);
    return new TestPieces(
        size,
        pattern,
        wish.wireMm(),
        maker,
        next,
        Planning.plan(wish).found().flatMap(Plan::formed),
        next.found().flatMap(piece -> formed(wish, maker, piece.blankMm(), piece.formersMm())),
        state.trials().inOrder().stream()
            .map(piece -> formed(wish, maker, piece.blankMm(), piece.formersMm()))
            .toList());
  }

  private static Optional<Formed> formed(
      ChainWish wish, Maker maker, double blankMm, Map<String, Double> formersMm) {
    return Forming.form(
            wish.link().pattern().orElseThrow(), wish.wireMm(), blankMm, formersMm, maker.bending())
        .found();
  }

  /** The size wished; where only a blank was planned, the size that its pattern gives. */
  private static Optional<linkwright.fit.LinkSize> size(ChainWish wish) {
    if (wish.linkSize().isPresent()) {
      return wish.linkSize();
    }
    return Planning.plan(wish).found().flatMap(Plan::formed).map(formed -> size(formed, wish));
  }

  private static linkwright.fit.LinkSize size(Formed formed, ChainWish wish) {
    return new linkwright.fit.LinkSize(
        wish.link().lengthMm().orElse(formed.lengthMm()),
        wish.link().widthMm().orElse(formed.widthMm()));
  }

  /** Pieces of other wire teach nothing of this one. */
  public static List<Tried> tried(JobState state, double wireMm) {
    List<Tried> tried = new ArrayList<>();
    for (Fact.TestPieceTried piece : state.trials().inOrder()) {
      if (Math.abs(piece.wireMm() - wireMm) < 0.005) {
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

  /** Formers named in the plan, or else the pattern's own, and those used on a piece. */
  private static Map<String, List<Double>> owned(ChainWish wish, JobState state) {
    Map<String, List<Double>> owned = new LinkedHashMap<>();
    Map<String, Double> planned = wish.link().formersMm();
    wish.link()
        .pattern()
        .orElseThrow()
        .formersMm()
        .forEach(
            (name, mm) ->
                owned.put(name, new ArrayList<>(List.of(planned.getOrDefault(name, mm)))));
    state
        .trials()
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

  /** The verdict that measured sizes give by themselves, against the wish. */
  public List<Verdict> verdictOf(double lengthMm, double widthMm) {
    List<Verdict> verdicts = new ArrayList<>();
    if (lengthMm < wish.lengthMm() * (1 - LENGTH_NEAR)) {
      verdicts.add(Verdict.LONGER);
    } else if (lengthMm > wish.lengthMm() * (1 + LENGTH_NEAR)) {
      verdicts.add(Verdict.SHORTER);
    }
    if (widthMm < wish.widthMm() * (1 - WIDTH_NEAR)) {
      verdicts.add(Verdict.WIDER);
    } else if (widthMm > wish.widthMm() * (1 + WIDTH_NEAR)) {
      verdicts.add(Verdict.NARROWER);
    }
    return verdicts.isEmpty() ? List.of(Verdict.RIGHT) : verdicts;
  }
}
