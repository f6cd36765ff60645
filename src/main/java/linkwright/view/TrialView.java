package linkwright.view;

import java.util.List;
import java.util.OptionalDouble;
import linkwright.coach.Model;
import linkwright.coach.OpenJob;
import linkwright.coach.Screen;
import linkwright.job.Fact;
import linkwright.plan.Plan;
import linkwright.quantity.UnitStyle;
import linkwright.standing.TrialLength;

/** Trial lengths, each with the chain that would follow it. */
final class TrialView {
  private static final int INDENT = 5;

  private TrialView() {}

  static void draw(Canvas body, Model model, Screen.Trial screen) {
    if (screen.form().isPresent()) {
      FormView.draw(body, screen.form().get());
      return;
    }
    OpenJob job = model.job().orElseThrow();
    UnitStyle units = model.settings().units();
    int row = planned(body, job, units);
    if (screen.rows().isEmpty()) {
      body.wrapped(0, row, body.width(), 5, howTo(job), Tone.PLAIN);
      return;
    }
    int perRow = body.width() < 72 ? 4 : 3;
    int room = Math.max(1, (body.height() - row) / perRow);
    int first = Math.max(0, Math.min(screen.at() - room / 2, screen.rows().size() - room));
    for (int i = first; i < Math.min(screen.rows().size(), first + room); i++) {
      trial(body, row, screen.rows().get(i), i, i == screen.at(), units);
      row += perRow;
    }
  }

  private static String howTo(OpenJob job) {
    boolean rings =
        job.standing().counted().wish().map(wish -> wish.ring().isPresent()).orElse(true);
    return "No trial length yet. "
        + (rings
            ? "Finish three links, join them with the rings you want to try, oval the rings, add"
            : "Finish a few links, join them as in the run, add")
        + " the clasp, hang it, pull it straight and measure from inside end to inside end. Then"
        + " press n.";
  }

  private static int planned(Canvas body, OpenJob job, UnitStyle units) {
    String line =
        job.standing()
            .counted()
            .plan()
            .map(
                plan ->
                    "The chain now: "
                        + plan.links()
                        + " links of "
                        + units.length(plan.linkInsideMm())
                        + " inside, "
                        + plan.rings()
                        + " rings, "
                        + units.length(plan.lengthMm())
                        + " long, wished "
                        + units.length(plan.wish().finishedMm())
                        + ".")
            .orElse(
                job.makesChain()
                    ? "The plan is not set yet."
                    : "This routine makes no chain: it has no trial length.");
    return body.wrapped(0, 0, body.width(), 2, line, Tone.PLAIN) + 1;
  }

  private static void trial(
      Canvas body, int row, TrialLength trial, int place, boolean at, UnitStyle units) {
    Fact.TrialMeasured hung = trial.trial();
    String mark = at ? body.glyphs().pick("▸ ", "> ") : "  ";
    Tone tone = trial.followed() ? Tone.ACCENT : at ? Tone.STRONG : Tone.PLAIN;
    String number = mark + (place + 1) + "  ";
    body.text(0, row, body.width(), number, tone);
    String what =
        hung.links()
            + " links, "
            + hung.rings()
            + " rings of "
            + units.length(hung.ringInsideMm())
            + oval(hung.ovalInsideMm(), units)
            + ", hung "
            + units.length(hung.hungMm())
            + (trial.followed() ? "   followed" : "");
    int rows = body.wrapped(INDENT, row, body.width() - INDENT, 2, what, tone);
    String makes = trial.plan().map(plan -> makes(plan, units)).orElse(trial.problem());
    body.text(
        INDENT,
        row + rows,
        Math.max(0, body.width() - INDENT),
        makes + (hung.note().isBlank() ? "" : "  " + hung.note()),
        Tone.FAINT);
  }

  private static String oval(OptionalDouble oval, UnitStyle units) {
    return oval.isPresent() ? " ovalled to " + units.length(oval.getAsDouble()) : "";
  }

  private static String makes(Plan plan, UnitStyle units) {
    List<String> parts =
        List.of(
            "one link adds " + units.length(plan.linkInsideMm()),
            plan.links()
                + " links and "
                + plan.rings()
                + " rings make "
                + units.length(plan.lengthMm()));
    return String.join(": ", parts);
  }
}
