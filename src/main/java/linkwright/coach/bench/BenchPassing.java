package linkwright.coach.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.WaitingWords;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.job.Again;
import linkwright.job.BenchFact;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.JobCard;
import linkwright.job.StepLeft;
import linkwright.job.Trials;
import linkwright.plan.FinenessWord;
import linkwright.routine.RoutinePart;
import linkwright.routine.Step;
import linkwright.routine.StepId;
import linkwright.standing.WaitingPiece;

/**
 * What is left behind when the work goes on: pieces that wait at an earlier step, pieces that
 * failed, a step at which nothing was done. It is said once, and entered.
 */
final class BenchPassing {
  private BenchPassing() {}

  /** Pieces that failed, of which nobody said yet when they are redone. */
  static Optional<BenchAsk> failed(Model model, AtBench at) {
    return earlier(model, at).stream()
        .filter(pile -> pile.spot().redo() && pile.again() == Again.NOT_SAID)
        .findFirst()
        .map(pile -> new BenchAsk.WhenAgain(pile));
  }

  /** Pieces that wait at an earlier step and were not passed before. */
  static Optional<BenchAsk> waiting(Model model, AtBench at) {
    List<WaitingPiece> left =
        earlier(model, at).stream()
            .filter(pile -> !pile.spot().redo() && !isPassed(model, pile))
            .filter(pile -> !inAWait(model, at, pile))
            .toList();
    if (left.isEmpty()) {
      return Optional.empty();
    }
    List<Fact> facts = new ArrayList<>();
    left.forEach(
        pile -> facts.add(new BenchFact.StepSkipped(pile.step().orElseThrow().id(), why(pile))));
    WaitingPiece first = left.get(0);
    return Optional.of(
        new BenchAsk.Passing(
            WaitingWords.line(left) + (first.count() == 1 && left.size() == 1 ? " waits" : " wait"),
            "to step " + first.number() + ", “" + first.step().orElseThrow().title() + "”",
            first.step().map(Step::id),
            facts));
  }

  /** That going on asks that, as the key line says it. */
  static String says(BenchAsk ask) {
    return ask instanceof BenchAsk.WhenAgain again
        ? "ask when "
            + again.pile().count()
            + (again.pile().count() == 1 ? " is" : " are")
            + " redone"
        : "ask about what waits";
  }

  /** Wanted pieces that are taken up at an earlier step. */
  private static List<WaitingPiece> earlier(Model model, AtBench at) {
    return WaitingWords.of(model).stream()
        .filter(pile -> pile.waits() && pile.wanted() && pile.number() < at.number())
        .toList();
  }

  private static boolean isPassed(Model model, WaitingPiece pile) {
    return wasLeft(model, pile.step().orElseThrow().id(), why(pile));
  }

  private static boolean inAWait(Model model, AtBench at, WaitingPiece pile) {
    OpenJob job = model.job().orElseThrow();
    AtBench there = AtBench.of(at.routine(), job, pile.step().orElseThrow());
    boolean more = there.together() && AtWait.of(model, there).hasWork();
    return there.waitRunning(model).isPresent() && !more;
  }

  private static Map<StepId, BenchFact.StepSkipped> passed(Model model) {
    return model.job().orElseThrow().state().course().passed();
  }

  /** Whether the step was passed before with the same left there. */
  private static boolean wasLeft(Model model, StepId step, String why) {
    return Optional.ofNullable(passed(model).get(step))
        .filter(skipped -> skipped.why().equals(why))
        .isPresent();
  }

  /** Whether it was said that there is no mark to strike at the step. */
  private static boolean isNotDue(OpenJob job, StepId step) {
    return Optional.ofNullable(job.state().course().passed().get(step))
        .filter(skipped -> skipped.left() == StepLeft.NOT_DUE)
        .isPresent();
  }

  private static String why(WaitingPiece pile) {
    return pile.counted() + " left waiting";
  }

  /** A trial that ends with nothing tried is asked about; empty where that is no matter. */
  static Optional<BenchAsk> untried(Model model, AtBench at) {
    OpenJob job = model.job().orElseThrow();
    Trials trials = job.state().trials();
    boolean last =
        at.number() >= at.routine().steps().size()
            || at.routine().steps().get(at.number()).part() != at.step().part();
    boolean told = passed(model).containsKey(at.step().id());
    if (!last || told || !job.makesChain()) {
      return Optional.empty();
    }
    if (at.step().part() == RoutinePart.TRIAL && trials.pieces().isEmpty()) {
      return untried(at, "No test piece is logged", "to the test pieces");
    }
    return at.step().part() == RoutinePart.SAMPLE && trials.lengths().isEmpty()
        ? untried(at, "No trial length is logged", "to the trial length")
        : Optional.empty();
  }

  private static Optional<BenchAsk> untried(AtBench at, String told, String there) {
    String why = told.substring(0, 1).toLowerCase(Locale.ROOT) + told.substring(1);
    Fact skipped = new BenchFact.StepSkipped(at.step().id(), why);
    return Optional.of(new BenchAsk.Passing(told, there, Optional.empty(), List.of(skipped)));
  }

  /**
   * Whether a mark is due is asked as its step opens, where the job card says nothing of it; empty
   * at any other step, and once something was done there.
   */
  static Optional<BenchAsk> marked(Model model, AtBench at) {
    OpenJob job = model.job().orElseThrow();
    List<Entry> entries = job.entries();
    Fact last = entries.get(entries.size() - 1).fact();
    boolean opened = last instanceof Fact.StepOpened || last instanceof Fact.CautionSeen;
    boolean marks = at.step().detail().when().words().containsKey("mark");
    StepId step = at.step().id();
    return opened && marks && !isNotDue(job, step) && job.state().card().of(JobCard.MARK).isBlank()
        ? Optional.of(
            new BenchAsk.Passing(
                "Is a fineness mark due, by the law of your place or as ordered? The job card says"
                    + " nothing of it"
                    + rules(model, job),
                "it is due: this step",
                Optional.of(step),
                List.of(new BenchFact.StepSkipped(step, "no mark is due", StepLeft.NOT_DUE))))
        : Optional.empty();
  }

  /** What the plan says of it, by the rules that are known; empty where it says nothing. */
  private static String rules(Model model, OpenJob job) {
    return job.standing()
        .counted()
        .plan()
        .flatMap(
            plan ->
                FinenessWord.inShort(
                    plan.wish().metal(),
                    job.standing().made().massG(plan.massChainG()),
                    model.handbook().reference()))
        .map(word -> "; by the rules the plan knows: " + word)
        .orElse("");
  }

  /** Asked once: that it is due goes on the job card, as if it had stood there. */
  private static Turn marked(Model plain, OpenJob job) {
    Map<String, String> said = new LinkedHashMap<>(job.state().card().said());
    said.put(JobCard.MARK, "due");
    return Turn.keep(plain.told("The job card says now: mark due."), new BenchFact.CardSet(said));
  }

  /** What is entered of steps that are passed on the way to a later one. */
  static List<Fact> skipped(Model model, AtBench at, int to) {
    List<Fact> facts = new ArrayList<>();
    OpenJob job = model.job().orElseThrow();
    for (int i = at.number(); i < to; i++) {
      AtBench there = AtBench.of(at.routine(), job, at.routine().steps().get(i - 1));
      if (there.ownTimer(model).isPresent() && !there.counts()) {
        // What was put into its wait is done when that is over, not passed.
        continue;
      }
      String why = leftAt(job, there);
      StepId step = there.step().id();
      if (!why.isEmpty() && !wasLeft(model, step, why)) {
        facts.add(new BenchFact.StepSkipped(step, why));
      }
    }
    return facts;
  }

  /** Whether nothing was done at a step that counts nothing, and nothing entered of that yet. */
  static boolean isUndone(OpenJob job, AtBench at) {
    return !at.isDone(job.state()) && !job.state().course().passed().containsKey(at.step().id());
  }

  /** What is left at a step that is gone past; empty if nothing is. */
  private static String leftAt(OpenJob job, AtBench at) {
    if (!at.counts()) {
      return isNotDue(job, at.step().id()) || at.isDone(job.state()) ? "" : "nothing done";
    }
    if (at.begins()) {
      return at.through() == 0 ? "none " + at.stage() : "";
    }
    int left = at.redo() + (at.enough() ? 0 : at.waiting());
    return left == 0 ? "" : at.piece().counted(left) + " left waiting";
  }

  /** Goes on past what was told, which is entered. */
  static Turn passOn(Model model, AtBench at, BenchAsk.Passing asked) {
    return with(asked.facts(), BenchGate.next(model.with(BenchHeld.PLAIN), at));
  }

  /** A turn that enters those facts first. */
  static Turn with(List<Fact> first, Turn turn) {
    List<Fact> facts = new ArrayList<>(first);
    List<Effect> others = new ArrayList<>();
    turn.effects()
        .forEach(
            effect -> {
              if (effect instanceof Effect.KeepFacts keep) {
                facts.addAll(keep.facts());
              } else {
                others.add(effect);
              }
            });
    return new Turn(
        turn.model(), Turn.keep(turn.model(), facts).and(others).effects(), turn.next());
  }

  /** What a key answers to a question of what is left behind; empty where none is asked. */
  static Optional<Turn> answered(Model model, AtBench at, BenchAsk ask, Key key) {
    if (ask instanceof BenchAsk.Passing passing) {
      return Optional.of(answered(model, at, passing, key));
    }
    return ask instanceof BenchAsk.WhenAgain again
        ? Optional.of(answered(model, at, again, key))
        : Optional.empty();
  }

  /** A number answers; the acts have keys of their own. */
  private static Turn answered(Model model, AtBench at, BenchAsk.Passing asked, Key key) {
    if (!key.is("1")) {
      return none(model, key, "Press 1, or {do:pass-on} to go on past it.");
    }
    Model plain = model.with(BenchHeld.PLAIN);
    if (asked.back().equals(Optional.of(at.step().id()))) {
      return marked(plain, model.job().orElseThrow());
    }
    return asked
        .back()
        .flatMap(at.routine()::step)
        .map(step -> BenchGate.open(plain, step))
        .orElseGet(
            () ->
                Turn.goTo(
                    plain, at.step().part() == RoutinePart.TRIAL ? Act.TO_TESTS : Act.TO_TRIAL));
  }

  /** When those that failed are redone. */
  private static Turn answered(Model model, AtBench at, BenchAsk.WhenAgain asked, Key key) {
    return switch (key.text()) {
      case "1" -> planned(model, at, asked, Again.NEXT_HEAT);
      case "2" -> planned(model, at, asked, Again.NOW);
      case "3" -> planned(model, at, asked, Again.SPARES);
      default -> none(model, key, "Press the number of the answer, 1 to 3.");
    };
  }

  /** Whether she said that what is to be redone there is not for now. */
  static boolean isLater(AtBench there) {
    Again when = there.pile().again(there.stage());
    return when == Again.NEXT_HEAT || when == Again.SPARES;
  }

  /** A number that is no answer is told what would be one; other keys are told by themselves. */
  private static Turn none(Model model, Key key, String would) {
    return Turn.to(key.text().matches("[0-9]") ? model.told(would) : model);
  }

  static Turn planned(Model model, AtBench at, BenchAsk.WhenAgain asked, Again when) {
    WaitingPiece pile = asked.pile();
    Fact said = new BenchFact.RedoPlanned(pile.spot().piece(), pile.spot().stage(), when);
    Model plain = model.with(BenchHeld.PLAIN);
    return switch (when) {
      case NOW ->
          with(
              List.of(said),
              BenchGate.open(
                  plain.told("Some go back: on to “" + pile.step().orElseThrow().title() + "”."),
                  pile.step().orElseThrow()));
      case NEXT_HEAT ->
          Turn.keep(plain.told("They wait for the next heat at step " + pile.number() + "."), said);
      case SPARES, NOT_SAID ->
          Turn.keep(plain.told("They wait at step " + pile.number() + " unless spares do."), said);
    };
  }
}
