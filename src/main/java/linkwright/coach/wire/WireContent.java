package linkwright.coach.wire;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.content.ActMention;
import linkwright.coach.content.Content;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Table;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.drawn.SharedWire;
import linkwright.coach.keys.Act;
import linkwright.plan.Plan;
import linkwright.quantity.Decimals;
import linkwright.quantity.UnitStyle;
import linkwright.standing.stock.DrawnDown;

/** The wire: every length as a bar to scale, then what it comes to in words. */
final class WireContent {
  private static final String TITLE = "wire";

  private WireContent() {}

  static Content of(WireHeld held, Model model) {
    UnitStyle units = model.settings().units();
    if (held.form().isPresent()) {
      return form(held.form().get(), held.drawn(), units);
    }
    Optional<Plan> plan = model.job().flatMap(job -> job.standing().counted().plan());
    if (held.stand().isEmpty() || plan.isEmpty()) {
      boolean chain = model.job().map(OpenJob::makesChain).orElse(true);
      return Content.of(TITLE, Prose.says(notCounted(chain)));
    }
    boolean closed = model.job().orElseThrow().standing().made().closed();
    WireWords words = new WireWords(held.stand().get(), plan.get(), units, closed);
    List<Part> parts = new ArrayList<>();
    parts.add(new WireBars(units).of(held.stand().get(), plan.get()));
    parts.addAll(words.stands());
    if (!held.stand().get().missing().none() && held.drawn().none()) {
      parts.addAll(SharedWire.atWire(model, model.job().orElseThrow().standing()));
      parts.add(
          Prose.aside("Enter wire that came, or see what thicker wire drawn down would give."));
    }
    double out = model.job().orElseThrow().state().accounts().weighedOutG();
    if (out > 0) {
      parts.add(Prose.aside("Weighed out so far " + units.mass(out)));
    }
    if (!held.drawn().none()) {
      parts.add(Prose.says("Drawn down, " + held.drawn().sum()));
      parts.addAll(passes(held.drawn(), units));
    }
    return new Content(TITLE, parts);
  }

  private static String notCounted(boolean chain) {
    return chain
        ? "The wire is counted once the plan is set."
        : "This routine makes no chain: its wire is not counted. "
            + ActMention.of(Act.WEIGH_OUT)
            + " weighs metal out; the reckoner ("
            + ActMention.of(Act.TO_RECKONER)
            + ") works out how to draw wire down.";
  }

  private static Content form(Form form, DrawDown drawn, UnitStyle units) {
    List<Part> parts = new ArrayList<>(List.of(new Fields(form)));
    if (form.purpose() == Form.Purpose.DRAW_DOWN && !drawn.none()) {
      parts.add(new Prose(Prose.Kind.MAIN, drawn.sum()));
      parts.addAll(passes(drawn, units));
    }
    return new Content(TITLE, parts);
  }

  private static List<Part> passes(DrawDown drawn, UnitStyle units) {
    List<Part> parts = new ArrayList<>();
    drawn.warnings().forEach(each -> parts.add(Prose.stop(each)));
    List<Table.Line> lines = new ArrayList<>();
    for (DrawnDown.DrawnPass pass : drawn.passes()) {
      lines.add(
          Table.Line.of(
              Integer.toString(lines.size() + 1),
              units.wire(pass.throughMm()),
              percent(pass.takesOff()),
              percent(pass.sinceAnneal()),
              pass.annealBefore() ? "first anneal, quench, pickle, dry" : ""));
    }
    if (!lines.isEmpty()) {
      parts.add(
          new Table(
              List.of(
                  Table.Column.numbers("pass"),
                  Table.Column.numbers("through"),
                  Table.Column.numbers("takes off"),
                  Table.Column.numbers("since the anneal"),
                  Table.Column.words("")),
              lines,
              -1));
    }
    return parts;
  }

  private static String percent(double share) {
    return Decimals.percent(share, 0);
  }
}
