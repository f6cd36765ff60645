package linkwright.coach.trial;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.content.ActMention;
import linkwright.coach.content.Content;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Table;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.keys.Act;
import linkwright.job.Fact;
import linkwright.plan.Plan;
import linkwright.quantity.UnitStyle;
import linkwright.standing.TrialLength;

/** Trial lengths, each with the chain that would follow it. */
final class TrialContent {
  private static final String TITLE = "trial length";

  private TrialContent() {}

  static Content of(TrialHeld held, Model model) {
    return held.form()
        .map(form -> Content.of(TITLE, new Fields(form)))
        .orElseGet(() -> lengths(held, model));
  }

  private static Content lengths(TrialHeld held, Model model) {
    OpenJob job = model.job().orElseThrow();
    UnitStyle units = model.settings().units();
    Prose now = Prose.says(chainNow(job, units));
    return held.rows().isEmpty()
        ? Content.of(TITLE, now, Prose.says(howTo(job)))
        : Content.of(
            TITLE, now, table(held, job.standing().counted().instead().isPresent(), units));
  }

  private static String chainNow(OpenJob job, UnitStyle units) {
    return job.standing()
        .counted()
        .plan()
        .map(
            plan ->
                "The chain now: "
                    + plan.links()
                    + " links of "
                    + units.length(plan.meanInsideMm())
                    + " inside, "
                    + plan.rings()
                    + " rings, "
                    + units.roundedBy(plan.lengthMm(), plan.plusMinusMm())
                    + " long, wished "
                    + units.length(plan.wish().finishedMm())
                    + ".")
        .orElse(
            job.makesChain()
                ? "The plan is not set yet."
                : "This routine makes no chain: it has no trial length.");
  }

  private static String howTo(OpenJob job) {
    boolean rings =
        job.standing().counted().wish().map(wish -> wish.ring().isPresent()).orElse(true);
    return "No trial length yet. "
        + (rings
            ? "Finish three links, join them with the rings you want to try, oval the rings, add"
            : "Finish a few links, join them as in the run, add")
        + " the clasp, hang it, pull it straight and measure from inside end to inside end. Then "
        + ActMention.of(Act.LOG)
        + " logs it.";
  }

  /**
   * The lengths.
   *
   * @param since whether another ring was wished after the one that is followed was hung
   */
  private static Table table(TrialHeld held, boolean since, UnitStyle units) {
    boolean rings = held.rows().stream().anyMatch(row -> row.trial().rings() > 0);
    List<Table.Column> columns = new ArrayList<>();
    columns.add(Table.Column.numbers(""));
    columns.add(Table.Column.numbers("links"));
    if (rings) {
      columns.add(Table.Column.numbers("rings"));
      columns.add(Table.Column.numbers("ring inside"));
      columns.add(Table.Column.numbers("ovalled to"));
    }
    columns.add(Table.Column.numbers("hung"));
    columns.add(Table.Column.numbers("one link adds"));
    columns.add(Table.Column.words(""));
    List<Table.Line> lines = new ArrayList<>();
    for (TrialLength row : held.rows()) {
      lines.add(line(lines.size() + 1, row, rings, since, units));
    }
    return new Table(columns, lines, held.at());
  }

  private static Table.Line line(
      int number, TrialLength row, boolean rings, boolean since, UnitStyle units) {
    Fact.TrialMeasured trial = row.trial();
    List<String> cells = new ArrayList<>();
    cells.add(Integer.toString(number));
    cells.add(Integer.toString(trial.links()));
    if (rings) {
      boolean oval = trial.ovalInsideMm().isPresent();
      cells.add(Integer.toString(trial.rings()));
      cells.add(units.length(trial.ringInsideMm()));
      cells.add(oval ? units.length(trial.ovalInsideMm().getAsDouble()) : "-");
    }
    cells.add(units.length(trial.hungMm()));
    boolean adds = row.linkInsideMm().isPresent();
    cells.add(adds ? units.length(row.linkInsideMm().getAsDouble()) : "-");
    cells.add(row.followed() ? "followed" : "");
    return new Table.Line(
        cells,
        List.of(makes(row, since, units), Prose.aside(trial.note())),
        row.followed() ? Emphasis.NOW : Emphasis.PLAIN);
  }

  private static Prose makes(TrialLength row, boolean since, UnitStyle units) {
    String with = row.followed() && since ? "with the rings that hung, " : "";
    return row.plan()
        .map(plan -> Prose.aside(with + makes(plan, units)))
        .orElseGet(() -> Prose.stop(row.problem()));
  }

  private static String makes(Plan plan, UnitStyle units) {
    String rings = plan.rings() > 0 ? " and " + plan.rings() + " rings make " : " make ";
    return plan.links() + " links" + rings + units.roundedBy(plan.lengthMm(), plan.plusMinusMm());
  }
}
