package linkwright.coach.nearest;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.content.Acts;
import linkwright.coach.content.Content;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Row;
import linkwright.coach.content.Rows;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.job.ChainMade;
import linkwright.plan.Plan;
import linkwright.quantity.UnitStyle;
import linkwright.standing.nearest.ChainChoice;

/** What was wished, what is counted, and what could be had in its place, each with its length. */
final class NearestContent {
  private static final String TITLE = "nearest you can have";

  private NearestContent() {}

  static Content of(Model model, NearestHeld held) {
    OpenJob job = model.job().orElseThrow();
    if (job.standing().counted().plan().isEmpty()) {
      return Content.of(
          TITLE,
          Prose.says(
              job.makesChain()
                  ? "What is nearest is told once there is a plan: {do:to-plan}."
                  : "This makes no chain: there is no length to come near to."));
    }
    Plan plan = job.standing().counted().plan().get();
    UnitStyle units = model.settings().units();
    List<Part> parts = new ArrayList<>();
    ChainMade made = job.standing().made();
    parts.add(
        new Rows(
            List.of(
                Row.of("wished", units.length(plan.wish().finishedMm())),
                Row.of(
                        made.measured() ? "measured" : "counted",
                        made.lengthSaid(plan.lengthMm(), plan.plusMinusMm(), units))
                    .remark(counted(plan))
                    .with(Emphasis.MAIN))));
    if (made.closed()) {
      parts.add(Prose.aside("The job is closed: its plan stays as it is."));
      return new Content(TITLE, parts);
    }
    if (plan.tightRingInsideMm().isPresent()) {
      parts.add(
          Prose.says(
              "Rings of "
                  + units.length(plan.tightRingInsideMm().getAsDouble())
                  + " would make it exact, but the wires of two links need "
                  + units.length(plan.leastRingInsideMm())
                  + " inside."));
    }
    List<Acts.Choice> choices =
        held.choices().stream()
            .map(
                choice ->
                    new Acts.Choice(
                        NearestPlace.actOf(choice.way()),
                        JobWords.tradeWords(model).show(stands(choice, plan, units)),
                        false,
                        false))
            .toList();
    if (choices.isEmpty()) {
      parts.add(Prose.says("Nothing else comes near it."));
    } else {
      parts.add(new Acts(choices));
      parts.add(
          Prose.aside(
              JobWords.fill(
                  "The key beside it plans the chain so; the plan before stays in the book.",
                  model)));
    }
    return new Content(TITLE, parts);
  }

  private static String counted(Plan plan) {
    String links = plan.links() + (plan.links() == 1 ? " link" : " links");
    String rings = plan.rings() + (plan.rings() == 1 ? " ring" : " rings");
    return plan.rings() == 0 ? links : links + ", " + rings;
  }

  private static String stands(ChainChoice choice, Plan plan, UnitStyle units) {
    return units.roundedBy(choice.lengthMm(), plan.plusMinusMm())
        + " with "
        + choice.saysWithLinks(units);
  }
}
