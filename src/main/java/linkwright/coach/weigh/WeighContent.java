package linkwright.coach.weigh;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.coach.content.Beside;
import linkwright.coach.content.Content;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Table;
import linkwright.coach.form.CardWords;
import linkwright.coach.kernel.Clock;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.TypedBefore;
import linkwright.job.Fact;
import linkwright.job.JobCard;
import linkwright.job.JobState;
import linkwright.job.Pile;
import linkwright.plan.FinenessWord;
import linkwright.plan.Plan;
import linkwright.quantity.UnitStyle;
import linkwright.routine.PieceKind;
import linkwright.routine.Routine;
import linkwright.standing.Closing;
import linkwright.standing.JobPrices;
import linkwright.standing.StillToDo;
import linkwright.standing.stock.PiecesOver;
import linkwright.standing.stock.WireAtBench;

/** Plan against what came of it, scrap by kind, the price first and again, what to do next time. */
final class WeighContent {
  private static final String TITLE = "weigh in";
  private static final String NONE = "-";

  private WeighContent() {}

  static Content of(Model model, WeighHeld held) {
    if (held.form().isPresent()) {
      return Content.of(TITLE, new Fields(held.form().get()));
    }
    OpenJob job = model.job().orElseThrow();
    if (!job.standing().counted().holds()) {
      return Content.of(TITLE, Prose.stop("There is no plan yet to weigh against."));
    }
    List<Part> parts = new ArrayList<>();
    Closing closing = closing(model, job);
    parts.add(
        new Beside(
            List.of(against(model, job, closing)),
            List.of(PriceTable.of(JobPrices.of(job.state(), model.handbook()), closing))));
    job.standing()
        .counted()
        .plan()
        .ifPresent(plan -> elsewhere(parts, plan, job.state(), model.settings().units()));
    remarks(parts, model, job);
    return new Content(TITLE, parts);
  }

  private static Table against(Model model, OpenJob job, Closing closing) {
    UnitStyle units = model.settings().units();
    Fact.WeighedIn in = job.state().accounts().weighedIn();
    List<Table.Line> lines = new ArrayList<>();
    Optional<Plan> plan = job.standing().counted().plan();
    if (plan.isPresent()) {
      chain(lines, units, job, plan.get());
    } else {
      pieces(lines, units, job);
    }
    line(lines, "hours", "", Clock.spoken(job.state().times().totalSeconds()));
    double out = job.state().accounts().weighedOutG();
    line(lines, "weighed out", "", out > 0 ? units.mass(out) : NONE);
    line(lines, "wire returned", "", mass(in.wireReturnedG(), units));
    line(lines, "clean scrap", "", mass(in.cleanScrapG(), units));
    line(lines, "soldered scrap", "", mass(in.solderedScrapG(), units));
    line(lines, "filings", "", mass(in.filingsG(), units));
    line(lines, "sweeps", "", mass(in.sweepsG(), units));
    OptionalDouble missing = closing.unaccountedG();
    if (missing.isPresent()) {
      double all = missing.getAsDouble();
      double lost =
          plan.map(known -> PiecesOver.apart(all, known, job.state()).lostG()).orElse(all);
      line(lines, "not accounted", "", units.mass(lost));
    }
    List<Table.Column> columns =
        List.of(
            Table.Column.words(""),
            Table.Column.numbers("planned"),
            Table.Column.numbers("came out"));
    return new Table(columns, lines, -1);
  }

  private static void chain(List<Table.Line> lines, UnitStyle units, OpenJob job, Plan plan) {
    Fact.WeighedIn in = job.state().accounts().weighedIn();
    Pile links = job.state().piles().of(PieceKind.LINK);
    line(
        lines,
        "length",
        units.about(plan.lengthMm(), plan.plusMinusMm()),
        length(in.lengthMm(), units));
    line(lines, "chain", units.mass(plan.massChainG()), mass(in.chainG(), units));
    StillToDo left = job.standing().left().get(PieceKind.LINK);
    line(lines, "links", "" + plan.links(), came(left, PiecesOver.links(plan, job.state())));
    StillToDo rings = job.standing().left().get(PieceKind.RING);
    if (rings != null) {
      line(lines, "rings", "" + rings.wanted(), came(rings, PiecesOver.rings(plan, job.state())));
    }
    line(lines, "redone", "", "" + links.sentBack());
    int spare = plan.blanksToCut() - plan.links();
    line(lines, "links scrapped", spare + " spare", "" + links.scrapped());
    if (rings != null) {
      int lost = job.state().piles().of(PieceKind.RING).scrapped();
      line(lines, "rings scrapped", "", "" + lost);
    }
  }

  /** What is in it, and what lies over once that is whole. */
  private static String came(StillToDo left, int over) {
    return left.goodForChain() + (left.more() == 0 && over > 0 ? ", " + over + " over" : "");
  }

  /** What is no chain: each kind of piece by itself. */
  private static void pieces(List<Table.Line> lines, UnitStyle units, OpenJob job) {
    Fact.WeighedIn in = job.state().accounts().weighedIn();
    line(lines, "length", "", length(in.lengthMm(), units));
    line(lines, "weight", "", mass(in.chainG(), units));
    int again = 0;
    int scrapped = 0;
    for (Map.Entry<PieceKind, StillToDo> kind : job.standing().left().entrySet()) {
      Pile pile = job.state().piles().of(kind.getKey());
      StillToDo left = kind.getValue();
      int over = Math.max(0, pile.alive() - left.wanted());
      line(lines, kind.getKey().id(), "" + left.wanted(), came(left, over));
      again += pile.sentBack();
      scrapped += pile.scrapped();
    }
    line(lines, "redone", "", "" + again);
    line(lines, "scrapped", "", "" + scrapped);
  }

  private static Closing closing(Model model, OpenJob job) {
    Optional<Routine> routine = job.standing().walked();
    return job.standing()
        .counted()
        .plan()
        .map(plan -> Closing.of(JobPrices.filled(job.state(), model.handbook()), plan, routine))
        .orElseGet(() -> Closing.of(JobPrices.filled(job.state(), model.handbook()), routine));
  }

  /** What lies somewhere and is in no row of its own. */
  private static void elsewhere(List<Part> parts, Plan plan, JobState state, UnitStyle units) {
    if (state.accounts().weighedIn().chainG().isEmpty()) {
      return;
    }
    double over = PiecesOver.massG(plan, state);
    if (over > 0) {
      parts.add(Prose.says("Pieces over weigh " + units.mass(over) + ": not lost."));
    }
    double atBench = WireAtBench.of(plan, state).massG();
    if (atBench > 0) {
      parts.add(
          Prose.says("Wire still at the bench weighs " + units.mass(atBench) + ": not lost."));
    }
  }

  private static void remarks(List<Part> parts, Model model, OpenJob job) {
    if (job.state().course().closed()) {
      String closed = ("Closed. " + job.state().course().nextTime()).strip();
      parts.add(new Prose(Prose.Kind.MAIN, closed));
      if (job.makesChain() && job.state().accounts().weighedIn().chainG().isEmpty()) {
        parts.add(Prose.says("No chain was weighed in: what is reckoned here is the planned one."));
      }
    } else {
      NextTime.of(job, model.settings().units())
          .forEach(sentence -> parts.add(Prose.says("Next time: " + sentence)));
    }
    HoursForm.said(model).ifPresent(said -> parts.add(Prose.aside(said)));
    TypedBefore.offer(model).ifPresent(parts::add);
    JobCard card = job.state().card();
    if (!card.said().isEmpty()) {
      parts.add(Prose.says("Job card: " + CardWords.line(card, model.today()) + "."));
    }
    fineness(model, job).forEach(word -> parts.add(Prose.aside(word)));
    FinenessWord.limits(model.handbook().reference())
        .ifPresent(limits -> parts.add(Prose.aside(limits)));
  }

  private static List<String> fineness(Model model, OpenJob job) {
    return job.standing()
        .counted()
        .plan()
        .map(
            plan ->
                FinenessWord.of(
                    plan.wish().metal(),
                    job.standing().made().massG(plan.massChainG()),
                    model.handbook().reference(),
                    model.settings().units(),
                    job.standing().walked().map(Routine::takesSolder).orElse(true)))
        .orElse(List.of());
  }

  private static void line(List<Table.Line> lines, String label, String planned, String came) {
    lines.add(Table.Line.of(label, planned, came));
  }

  private static String length(OptionalDouble mm, UnitStyle units) {
    return mm.isPresent() ? units.length(mm.getAsDouble()) : NONE;
  }

  private static String mass(OptionalDouble grams, UnitStyle units) {
    return grams.isPresent() ? units.mass(grams.getAsDouble()) : NONE;
  }
}
