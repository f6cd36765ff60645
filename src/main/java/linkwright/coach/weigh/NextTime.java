package linkwright.coach.weigh;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.coach.kernel.OpenJob;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.Pile;
import linkwright.plan.Plan;
import linkwright.quantity.UnitStyle;
import linkwright.routine.PieceKind;
import linkwright.yield.Rate;

/** What this job teaches for the next one like it, in sentences. */
public final class NextTime {
  private NextTime() {}

  /** The sentences; none where nothing was learnt. */
  public static List<String> of(OpenJob job, UnitStyle units) {
    List<String> learnt = new ArrayList<>();
    JobState state = job.state();
    state
        .trials()
        .samplePiece()
        .ifPresent(sample -> learnt.add(sample(sample, state.trials().pieces().size(), units)));
    job.standing().counted().plan().ifPresent(plan -> pieces(learnt, state, plan));
    OptionalDouble length = state.accounts().weighedIn().lengthMm();
    job.standing()
        .counted()
        .plan()
        .filter(plan -> length.isPresent())
        .ifPresent(plan -> length(learnt, length.getAsDouble(), plan, units));
    return List.copyOf(learnt);
  }

  private static String sample(Fact.TestPieceTried sample, int made, UnitStyle units) {
    return "Begin with a blank of "
        + units.length(sample.blankMm())
        + (made > 1 ? ": it took " + made + " test pieces to find it." : ".");
  }

  private static void pieces(List<String> learnt, JobState state, Plan plan) {
    Pile links = state.piles().of(PieceKind.LINK);
    if (links.sentBack() > 0) {
      learnt.add(
          links.sentBack()
              + (links.sentBack() == 1 ? " link was" : " links were")
              + " done again, most often for “"
              + often(links.redoReasons())
              + "”.");
    }
    if (links.scrapped() > 0) {
      Rate loss = Rate.usual(plan.wish().usualLoss()).seen(plan.links(), links.scrapped());
      learnt.add(
          "%d %s lost, most often for “%s”: reckon with a usual loss of %.0f %%."
              .formatted(
                  links.scrapped(),
                  links.scrapped() == 1 ? "link was" : "links were",
                  often(links.scrapReasons()),
                  100 * loss.mean()));
    }
  }

  private static String often(Map<String, Integer> reasons) {
    return reasons.entrySet().stream()
        .max(Comparator.comparingInt(Map.Entry::getValue))
        .map(Map.Entry::getKey)
        .orElse("other");
  }

  private static void length(List<String> learnt, double lengthMm, Plan plan, UnitStyle units) {
    double off = lengthMm - plan.lengthMm();
    if (Math.abs(off) > 0.01 * plan.lengthMm()) {
      learnt.add(
          "The chain came out "
              + units.length(Math.abs(off))
              + (off > 0 ? " longer" : " shorter")
              + " than counted: each link adds "
              + units.length(plan.linkInsideMm() + off / plan.links())
              + ".");
    }
  }
}
