package linkwright.standing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.fit.Fit;
import linkwright.fit.Maker;
import linkwright.fit.Proposal;
import linkwright.fit.Tried;
import linkwright.fit.Verdict;
import linkwright.hands.OtherMandrel;
import linkwright.hands.TriedPieces;
import linkwright.job.JobState;
import linkwright.link.Formed;
import linkwright.link.Forming;
import linkwright.link.Pattern;
import linkwright.plan.ChainWish;
import linkwright.plan.LinkBasis;
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
 * @param made each piece of the book as it is reckoned in these hands, in order; empty for those of
 *     another link of the chain
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

  /**
   * What the job's test pieces teach of one of its links; empty where it has no pattern or no plan.
   *
   * @param size the link's name; the planned one has none
   */
  public static Optional<TestPieces> of(Standing standing, JobState state, String size) {
    Optional<ChainWish> planned =
        standing.counted().wish().map(wish -> size.isEmpty() ? wish : wish.of(size));
    if (planned.isEmpty() || planned.get().link().pattern().isEmpty()) {
      return Optional.empty();
    }
    ChainWish wish = planned.get();
    LinkBasis basis = standing.counted().basis().orElseThrow();
    return LinkKnowledge.size(wish)
        .map(
            wished -> of(wish, size.isEmpty() ? basis : basis.of(size, wish), wished, state, size));
  }

  private static TestPieces of(
      ChainWish wish, LinkBasis basis, linkwright.fit.LinkSize size, JobState state, String name) {
    Pattern pattern = wish.link().pattern().orElseThrow();
    Maker maker = basis.hands();
    Read<Proposal> next =
        Fit.next(
            pattern,
            wish.wireMm(),
            maker,
            size,
            OtherMandrel.orOwned(pattern, basis.ownedMm(), state.trials(), wish.wireMm(), name),
            Planning.BLANK_STEP_MM);
    return new TestPieces(
        size,
        pattern,
        wish.wireMm(),
        maker,
        next,
        Planning.plan(wish).found().flatMap(Plan::formed),
        next.found().flatMap(piece -> formed(wish, maker, piece.blankMm(), piece.formersMm())),
        state.trials().inOrder().stream()
            .map(
                piece ->
                    piece.size().equals(name)
                        ? Fit.made(
                            pattern, wish.wireMm(), maker, piece.blankMm(), piece.formersMm())
                        : Optional.<Formed>empty())
            .toList());
  }

  private static Optional<Formed> formed(
      ChainWish wish, Maker maker, double blankMm, Map<String, Double> formersMm) {
    return Forming.form(
            wish.link().pattern().orElseThrow(), wish.wireMm(), blankMm, formersMm, maker.bending())
        .found();
  }

  /** The job's test pieces of that wire, as the fit takes them. */
  public static List<Tried> tried(JobState state, double wireMm) {
    return TriedPieces.of(state.trials(), wireMm);
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
