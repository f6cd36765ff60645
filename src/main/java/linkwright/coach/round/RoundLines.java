package linkwright.coach.round;

import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import linkwright.coach.form.CardWords;
import linkwright.coach.form.ShortageWords;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.WaitingWords;
import linkwright.coach.kernel.safety.Cards;
import linkwright.coach.keys.Act;
import linkwright.job.JobState;
import linkwright.job.Trials;
import linkwright.quantity.UnitStyle;
import linkwright.routine.PieceKind;
import linkwright.standing.stock.StockLeft;

/** Every place on the way round, in the order of the work: how the job stands there. */
final class RoundLines {
  /** Places in the order of the work. */
  static final List<Line> ALL =
      List.of(
          new Line(Act.TO_PLAN, RoundLines::plan),
          new Line(Act.TO_NEAREST, RoundLines::nearest),
          new Line(Act.TO_TESTS, (model, job) -> tests(job.state().trials())),
          new Line(Act.TO_TRIAL, (model, job) -> trial(job)),
          new Line(Act.TO_BENCH, (model, job) -> bench(model)),
          new Line(Act.TO_PILES, (model, job) -> piles(model)),
          new Line(Act.TO_WIRE, RoundLines::wire),
          new Line(Act.TO_WEIGH_IN, (model, job) -> weighIn(job.state())),
          new Line(Act.TO_CARD, (model, job) -> CardWords.line(job.state().card(), model.today())),
          new Line(Act.TO_BOOK, (model, job) -> book(job)),
          new Line(Act.TO_EXCHANGE, "files for other programs, rows out of theirs"),
          new Line(Act.TO_CAUTIONS, RoundLines::cautions),
          new Line(Act.TO_TIMERS, (model, job) -> timers(model)),
          new Line(Act.TO_RECKONER, "sums on wire, rings, blanks and solder"),
          new Line(Act.TO_LOOKUP, "words, metals, solders, clasps, marks"),
          new Line(Act.TO_REHEARSAL, "the steps dry, nothing is entered"),
          new Line(Act.TO_LESSON, "be asked before the step is shown"),
          new Line(Act.TO_TRAY, "all jobs"));

  private RoundLines() {}

  /**
   * One place.
   *
   * @param act leads there
   * @param stands how the job stands there, in a few words
   */
  record Line(Act act, BiFunction<Model, OpenJob, String> stands) {
    Line(Act act, String always) {
      this(act, (model, job) -> always);
    }
  }

  private static String tests(Trials trials) {
    return trials.pieces().isEmpty()
        ? "none made yet"
        : trials.pieces().size()
            + " made, "
            + (trials.sample().isPresent() ? "the sample link is chosen" : "no sample link yet");
  }

  private static String trial(OpenJob job) {
    if (!job.makesChain()) {
      return "none: this makes no chain";
    }
    Trials trials = job.state().trials();
    return trials.lengths().isEmpty()
        ? "none hung yet"
        : trials.lengths().size()
            + " hung, "
            + (trials.chosenLength().isPresent() ? "one is followed" : "none is followed yet");
  }

  private static String bench(Model model) {
    return AtBench.of(model)
        .map(
            at ->
                "step "
                    + at.number()
                    + ": "
                    + (model.learning().hides(at.step().id())
                        ? "to be said before it is shown"
                        : at.step().title()))
        .orElse("its routine is missing");
  }

  private static String weighIn(JobState state) {
    if (state.course().closed()) {
      return "closed";
    }
    return state.accounts().weighedIn().chainG().isPresent() ? "weighed" : "not yet";
  }

  private static String book(OpenJob job) {
    return job.entries().size() == 1 ? "1 entry" : job.entries().size() + " entries";
  }

  private static String timers(Model model) {
    return model.waits().isEmpty()
        ? "none is running"
        : model.waits().size() + " running, " + model.due().size() + " due";
  }

  /** How many of the routine's cautions she has still to see whole, each before its step. */
  private static String cautions(Model model, OpenJob job) {
    List<Cards.Card> cards = Cards.ofRoutine(model, job);
    long whole = cards.stream().filter(Cards.Card::whole).count();
    return cards.size()
        + (cards.size() == 1 ? " applies, " : " apply, ")
        + (whole == 0 ? "all seen" : whole + " to be seen");
  }

  /** What waits anywhere, with the steps where it is taken up. */
  private static String piles(Model model) {
    String line = WaitingWords.line(WaitingWords.waiting(model));
    return line.isEmpty() ? "nothing waits" : line;
  }

  private static String plan(Model model, OpenJob job) {
    boolean blank = job.state().course().wish().isEmpty();
    if (!job.makesChain()) {
      return blank
          ? "not set: not needed here"
          : job.standing().left().entrySet().stream()
              .map(each -> each.getKey().counted(each.getValue().wanted()))
              .collect(Collectors.joining(", "));
    }
    UnitStyle units = model.settings().units();
    return job.standing()
        .counted()
        .plan()
        .map(
            plan ->
                plan.links()
                    + " links, "
                    + job.standing().made().lengthSaid(plan.lengthMm(), plan.plusMinusMm(), units))
        .orElse(blank ? "not set yet" : "set, but it does not come out");
  }

  private static String nearest(Model model, OpenJob job) {
    if (job.standing().made().closed()) {
      return "the job is closed: nothing to choose";
    }
    UnitStyle units = model.settings().units();
    return job.standing()
        .counted()
        .plan()
        .map(plan -> off(plan.offMm(), plan.plusMinusMm(), units))
        .orElse(job.makesChain() ? "once there is a plan" : "none: this makes no chain");
  }

  private static String off(double mm, double doubtMm, UnitStyle units) {
    String by = units.roundedBy(Math.abs(mm), doubtMm);
    return by.matches("0(\\.0+)? .*")
        ? "as long as wished, as far as can be told: other chains"
        : by + (mm < 0 ? " shorter" : " longer") + " than wished: other chains";
  }

  private static String wire(Model model, OpenJob job) {
    if (!job.makesChain()) {
      return "not counted here";
    }
    if (job.standing().counted().plan().isEmpty()) {
      return "once there is a plan";
    }
    if (!job.standing().wireKnown()) {
      return "none entered";
    }
    List<String> shortages = ShortageWords.of(job.standing());
    StockLeft stock = job.standing().stockLeft();
    String left = model.settings().units().length(stock.leftMm(PieceKind.LINK)) + " left";
    // What lacks is read whole; what is left stands at the wire's own place.
    return shortages.isEmpty() ? left : "lacks " + String.join(", ", shortages);
  }
}
