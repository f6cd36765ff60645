package linkwright.standing.again;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.Pile;
import linkwright.plan.Plan;
import linkwright.routine.PieceKind;
import linkwright.standing.Standing;
import linkwright.standing.StillToDo;

/**
 * What a job teaches for the next one like it.
 *
 * @param blankMm the sample link's blank, mm; empty without one
 * @param pieces test pieces made
 * @param again how often a link was done again
 * @param againFor why, most often; empty where mostly no reason was given
 * @param lost links lost
 * @param lostFor why, most often; empty where mostly no reason was given
 * @param lossShare what to reckon with as usual loss, 0 to 1; empty where none was lost
 * @param longerMm how much longer than counted the chain came, mm, negative for shorter; empty
 *     where it was not measured or came as counted
 * @param linkAddsMm what each link adds by that, mm
 */
public record Learnt(
    OptionalDouble blankMm,
    int pieces,
    int again,
    String againFor,
    int lost,
    String lostFor,
    OptionalDouble lossShare,
    OptionalDouble longerMm,
    OptionalDouble linkAddsMm) {
  /** Off by less than this share a chain came as counted; our own choice. */
  private static final double AS_COUNTED = 0.01;

  /** What a job teaches. */
  public static Learnt of(JobState state, Standing standing) {
    Optional<Plan> plan = standing.counted().plan();
    Pile links = state.piles().of(PieceKind.LINK);
    OptionalDouble longer =
        plan.filter(any -> !unfinished(links, standing))
            .map(counted -> longer(state.accounts().weighedIn().lengthMm(), counted))
            .orElse(OptionalDouble.empty());
    return new Learnt(
        state
            .trials()
            .samplePiece()
            .map(Fact.TestPieceTried::blankMm)
            .map(OptionalDouble::of)
            .orElse(OptionalDouble.empty()),
        state.trials().pieces().size(),
        plan.isPresent() ? links.sentBack() : 0,
        often(links.redoReasons()),
        plan.isPresent() ? links.scrapped() : 0,
        often(links.scrapReasons()),
        plan.filter(any -> links.scrapped() > 0)
            .map(counted -> OptionalDouble.of(loss(counted, links)))
            .orElse(OptionalDouble.empty()),
        longer,
        longer.isPresent()
            ? OptionalDouble.of(
                plan.orElseThrow().meanInsideMm()
                    + longer.getAsDouble() / plan.orElseThrow().links())
            : OptionalDouble.empty());
  }

  /** A chain with fewer links than planned is shorter for that, and teaches nothing of a link. */
  private static boolean unfinished(Pile links, Standing standing) {
    boolean counted = links.alive() + links.scrapped() > 0;
    return counted
        && Optional.ofNullable(standing.left().get(PieceKind.LINK))
            .filter(left -> left.more() > 0)
            .isPresent();
  }

  private static double loss(Plan plan, Pile links) {
    return StillToDo.loss(links, plan.wish().usualLoss()).mean();
  }

  private static OptionalDouble longer(OptionalDouble measuredMm, Plan plan) {
    double off = measuredMm.orElse(plan.lengthMm()) - plan.lengthMm();
    return Math.abs(off) > AS_COUNTED * plan.lengthMm()
        ? OptionalDouble.of(off)
        : OptionalDouble.empty();
  }

  /**
   * The reason that was given most often; all of them, by name, where several were; empty where
   * most were sent away without one.
   */
  private static String often(Map<String, Integer> reasons) {
    int most = reasons.values().stream().mapToInt(Integer::intValue).max().orElse(0);
    return reasons.isEmpty()
        ? "other"
        : reasons.entrySet().stream()
            .filter(reason -> reason.getValue() == most)
            .map(Map.Entry::getKey)
            .filter(reason -> !reason.isEmpty())
            .sorted()
            .collect(Collectors.joining(" and "));
  }
}
