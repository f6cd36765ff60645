package linkwright.coach.bench;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import linkwright.coach.content.ActMention;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Clock;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.safety.HotWorkWords;
import linkwright.coach.keys.Act;
import linkwright.job.Fact;
import linkwright.job.OnWay;
import linkwright.job.TimerRun;
import linkwright.job.WaitEnd;
import linkwright.routine.Routine;
import linkwright.routine.RoutinePart;
import linkwright.routine.Step;
import linkwright.routine.Wait;
import linkwright.standing.OwnWaits;
import linkwright.standing.StillToDo;

/**
 * The waits of steps at the bench. A wait ends by its time, or by a look where pieces are pickled;
 * while it runs the work goes on elsewhere, and going on ends no wait.
 */
final class BenchWait {
  private BenchWait() {}

  /** A wait of another step that is over; the next press of the common key goes there. */
  static Optional<Step> due(Model model, AtBench at) {
    if (isOver(model, at)) {
      return Optional.empty();
    }
    return model.timers().ringing(model.steady()).stream()
        .filter(timer -> !timer.isOf(at.step().id()))
        .flatMap(timer -> timer.step().stream())
        .flatMap(id -> at.routine().step(id).stream())
        .findFirst();
  }

  /** The step of the wait that she is on the way to, if it is another than the one that is open. */
  static Optional<Step> toward(Model model) {
    Optional<String> slug = model.job().map(OpenJob::slug);
    Optional<String> toward = model.bench().mind().toward();
    return toward.isPresent() && toward.equals(slug)
        ? AtBench.of(model).flatMap(at -> due(model, at))
        : Optional.empty();
  }

  static Turn toDue(Model model, AtBench at) {
    String slug = model.job().orElseThrow().slug();
    return due(model, at)
        .map(
            step ->
                BenchGate.open(
                    model
                        .calledTo(slug, step.id())
                        .told(
                            "Its wait is over: “"
                                + step.title()
                                + "”."
                                + BenchFault.notSaid(model)),
                    step))
        .orElseGet(() -> Turn.to(model));
  }

  /** Starts a wait by whatever key; before what begins by a heat, that key says that it is lit. */
  static Turn asked(Model model, AtBench at) {
    return saidFirst(model, at)
        .map(first -> BenchHot.said(model, at, first))
        .orElseGet(() -> start(model, at));
  }

  /** What that key says instead of starting the wait, before what begins by a heat. */
  static Optional<Act> saidFirst(Model model, AtBench at) {
    boolean begins =
        (at.waitRunning(model).isEmpty() || AtWait.of(model, at).next().isPresent())
            && !at.timed().isEmpty()
            && chainIn(model, at).isEmpty();
    return BenchHot.before(model, at, Act.WAIT_FIRST).filter(first -> begins);
  }

  /** Starts the step's next wait, or its first once more when it is over. */
  static Turn start(Model model, AtBench at) {
    Optional<TimerRun> runs = at.waitRunning(model);
    AtWait here = AtWait.of(model, at);
    if (here.next().isEmpty() && runs.isPresent()) {
      return Turn.to(model.told(till(runs.get(), model) + ": it runs already."));
    }
    if (chainIn(model, at).isPresent()) {
      return notYet(model, at);
    }
    Map<OnWay, Integer> in = at.together() ? here.goesIn() : Map.of();
    return here.next()
        .or(() -> at.timed().stream().findFirst())
        .map(wait -> begun(model, at, wait, in))
        .orElseGet(() -> Turn.to(model.told("This step has no wait.")));
  }

  private static Turn begun(Model model, AtBench at, Wait wait, Map<OnWay, Integer> in) {
    Fact.TimerStarted begun =
        new Fact.TimerStarted(wait.name(), wait.seconds(), wait.id(), at.step().id(), in);
    String what =
        begun.wentIn().entrySet().stream()
            .map(each -> ", " + each.getKey().counted(each.getValue()))
            .sorted()
            .collect(Collectors.joining());
    // Begun anew, the wait that is over is no more.
    List<Fact> facts = new ArrayList<>(in.isEmpty() ? over(model, at) : List.of());
    facts.add(begun);
    boolean hers = OwnWaits.seconds(wait, model.handbook().own()).isPresent();
    String runs = ": the timer runs" + (hers ? ", as long as your bench says." : ".");
    return Turn.keep(model.told(wait.name() + what + runs), facts);
  }

  /** While a wait runs, the nearest step where other work waits; with none it says so. */
  static Turn meanwhile(Model model, AtBench at) {
    AtBench waits = chainIn(model, at).orElse(at);
    String left =
        waits
            .waitRunning(model)
            .or(() -> model.watch())
            .map(timer -> till(timer, model))
            .orElse("The wait runs still");
    Optional<Turn> back = BenchBack.turn(model, at);
    if (back.isPresent()) {
      return back.get();
    }
    return other(model, at)
        .or(() -> waits.equals(at) ? Optional.empty() : Optional.of(waits.step()))
        .map(
            step -> BenchGate.open(model.told(left + ". Meanwhile: “" + step.title() + "”."), step))
        .orElseGet(() -> Turn.to(model.told(left + ", and no other work waits. " + ends(waits))));
  }

  /** What the common key does while a wait runs: with no other work it only says till when. */
  static String says(Model model) {
    boolean leads =
        AtBench.of(model)
            .filter(
                at ->
                    BenchBack.turn(model, at).isPresent()
                        || chainIn(model, at).isPresent()
                        || other(model, at).isPresent())
            .isPresent();
    return leads ? Act.MEANWHILE.words() : "till when it runs";
  }

  /** How the wait ends, and what else can be done till then. */
  private static String ends(AtBench at) {
    if (at.number() >= at.routine().steps().size()) {
      return "It ends by its time. Weigh in meanwhile ({do:to-weigh-in}).";
    }
    return at.looked()
        ? "Clean and white already? " + ActMention.of(Act.LOOKED) + ": looked, done."
        : "It ends by its time.";
  }

  /** Till when it runs: a line that stands still holds no countdown. */
  private static String till(TimerRun timer, Model model) {
    Instant ends = model.now().plus(timer.left(model.steady()));
    return timer.named() + ": till " + HotWorkWords.at(model, ends);
  }

  private static Optional<Step> other(Model model, AtBench at) {
    return other(model, at, at);
  }

  /** The step with work that is nearest to a wait, as one goes there from another step. */
  private static Optional<Step> other(Model model, AtBench at, AtBench from) {
    OpenJob job = model.job().orElseThrow();
    Routine routine = at.routine();
    return routine.steps().stream()
        .map(step -> AtBench.of(routine, job, step))
        .filter(there -> there.number() != at.number() && hasWork(model, at, there))
        .min(
            Comparator.<AtBench>comparingInt(there -> Math.abs(there.number() - at.number()))
                .thenComparing(there -> -there.number()))
        .map(there -> firstUndone(model, from, there).orElse(there.step()));
  }

  /** No step between them that counts nothing, yet does something, is gone past untold. */
  private static Optional<Step> firstUndone(Model model, AtBench at, AtBench there) {
    OpenJob job = model.job().orElseThrow();
    return at.routine().steps().stream()
        .limit(there.number() - 1L)
        .skip(at.number())
        .map(step -> AtBench.of(at.routine(), job, step))
        .filter(between -> !between.counts() && between.step().detail().loop().isEmpty())
        .filter(between -> between.waitRunning(model).isEmpty())
        .filter(between -> BenchPassing.isUndone(job, between))
        .map(AtBench::step)
        .findFirst();
  }

  /**
   * Pieces wait there; where pieces begin, in the part of the job that is being made now, and for a
   * chain that is not whole.
   */
  static boolean hasWork(Model model, AtBench at, AtBench there) {
    boolean waits = there.waitRunning(model).isPresent();
    boolean more = there.together() && AtWait.of(model, there).hasWork();
    OpenJob job = model.job().orElseThrow();
    StillToDo left = job.standing().left().get(there.piece());
    if (!there.counts() || (waits && !more) || chainIn(model, there).isPresent()) {
      return false;
    }
    if (!Partners.neededAreThere(job, there)) {
      return false;
    }
    if (there.begins()) {
      boolean ofTheJob = at.together() && isOfTheWhole(at) && left != null && left.wanted() > 0;
      boolean now = there.step().part() == at.step().part();
      return (now || ofTheJob) && !BenchCount.enoughAreCut(model, there);
    }
    boolean wanted = left == null || left.more() > 0;
    boolean fresh = there.waiting() > 0 && !there.enough() && Partners.othersAreThere(job, there);
    boolean again = there.redo() > 0 && !there.enough() && !BenchPassing.isLater(there);
    return fresh || (again && wanted);
  }

  /**
   * Where the work goes on from a step that counts pieces while an earlier one has a wait running:
   * not past what is still in it. Empty where no wait runs, or the work is here.
   */
  static Optional<Turn> behind(Model model, AtBench at) {
    return waitBehind(model, at)
        .flatMap(
            waits ->
                pastWait(model, at, waits)
                    .map(
                        on ->
                            BenchGate.open(
                                model.told(
                                    till(waits.waitRunning(model).orElseThrow(), model)
                                        + ". On to “"
                                        + on.title()
                                        + "”."),
                                on)));
  }

  /** The same as the key line says it. */
  static Optional<String> saysBehind(Model model, AtBench at) {
    return waitBehind(model, at)
        .flatMap(
            waits ->
                pastWait(model, at, waits)
                    .map(
                        on ->
                            on.id().equals(waits.step().id())
                                ? "back to the wait that runs"
                                : isNext(at, on) ? Act.ONWARD.words() : Act.MEANWHILE.words()));
  }

  private static boolean isNext(AtBench at, Step on) {
    return at.number() < at.routine().steps().size()
        && at.routine().steps().get(at.number()).id().equals(on.id());
  }

  private static Optional<AtBench> waitBehind(Model model, AtBench at) {
    if (!at.counts()) {
      return Optional.empty();
    }
    OpenJob job = model.job().orElseThrow();
    return at.routine().steps().stream()
        .limit(at.number() - 1L)
        .map(step -> AtBench.of(at.routine(), job, step))
        .filter(there -> there.waitRunning(model).isPresent())
        .findFirst();
  }

  private static Optional<Step> pastWait(Model model, AtBench at, AtBench waits) {
    Step on = other(model, waits, at).orElse(waits.step());
    return on.id().equals(at.step().id()) ? Optional.empty() : Optional.of(on);
  }

  /** She has looked, and it is clean: a wait that ends by a look is over. */
  static Turn looked(Model model, AtBench at) {
    BenchHeld screen = BenchPlace.screen(model);
    boolean sure = screen.ask() instanceof BenchAsk.Early;
    Model plain = model.with(BenchScreens.plain(screen));
    return at.ownTimer(model)
        .filter(timer -> at.looked())
        .map(
            timer ->
                timer.barelyBegun(model.steady()) && !sure
                    ? early(model, timer)
                    : Turn.keep(
                        plain.told(timer.named() + ": looked, done."),
                        new Fact.TimerAnswered(timer.id(), WaitEnd.LOOKED, "")))
        .orElseGet(() -> Turn.to(plain.told("No wait runs here that ends by a look.")));
  }

  private static Turn early(Model model, TimerRun timer) {
    return Turn.to(
        model
            .with(BenchScreens.asking(BenchPlace.screen(model), new BenchAsk.Early()))
            .trouble(
                timer.named()
                    + ": clean so soon, with "
                    + Clock.spoken((double) timer.left(model.steady()).toSeconds())
                    + " to go? {do:looked} again if it is."));
  }

  /** Whether a wait of this step is over and was not answered. */
  static boolean isOver(Model model, AtBench at) {
    return ringing(model, at).findAny().isPresent();
  }

  /** The waits of this step that are over, ended by their time; one that runs goes on. */
  private static List<Fact> over(Model model, AtBench at) {
    return ringing(model, at)
        .map(timer -> (Fact) new Fact.TimerAnswered(timer.id(), WaitEnd.TIME, ""))
        .toList();
  }

  /**
   * The same as the press enters them that takes out what is in them: of a pickle the clock only
   * reminds, and whoever takes out of it has looked.
   */
  static List<Fact> answered(Model model, AtBench at) {
    WaitEnd how = at.looked() ? WaitEnd.LOOKED : WaitEnd.TIME;
    return ringing(model, at)
        .map(timer -> (Fact) new Fact.TimerAnswered(timer.id(), how, ""))
        .toList();
  }

  private static Stream<TimerRun> ringing(Model model, AtBench at) {
    return model.timers().ringing(model.steady()).stream()
        .filter(timer -> timer.isOf(at.step().id()));
  }

  /** A press that ends a wait that is over, as the key line says it. */
  static String saysOver(Model model, Act act) {
    return AtBench.of(model).filter(at -> at.looked() && isOver(model, at)).isPresent()
        ? Act.LOOKED.words()
        : act.words();
  }

  /** A wait that is over at a step with nothing left to go on with. */
  static Turn answerOver(Model model, AtBench at) {
    return Turn.keep(
        model.told(at.looked() ? "Looked, done." : "Its wait is over."), answered(model, at));
  }

  /**
   * The step before this one in whose wait the chain is: what is done to the whole of it comes
   * later. What is through that wait already can be worked at.
   */
  static Optional<AtBench> chainIn(Model model, AtBench at) {
    OpenJob job = model.job().orElseThrow();
    if (!job.makesChain() || !isOfTheWhole(at) || (at.counts() && !at.together())) {
      return Optional.empty();
    }
    return at.routine().steps().stream()
        .limit(at.number() - 1L)
        .map(step -> AtBench.of(at.routine(), job, step))
        .filter(there -> isOfTheWhole(there) && there.waitRunning(model).isPresent())
        .findFirst();
  }

  private static boolean isOfTheWhole(AtBench at) {
    return at.step().part() == RoutinePart.JOIN || at.step().part() == RoutinePart.FINISH;
  }

  /** Takes nothing out of a wait that runs. */
  static Turn notYet(Model model, AtBench at) {
    AtBench waits = chainIn(model, at).orElse(at);
    String left =
        waits.waitRunning(model).map(timer -> till(timer, model)).orElse("The wait runs still");
    return Turn.to(
        model.told(
            left
                + (waits.equals(at) ? ": they stay in. " : ": the chain is in it. ")
                + ends(waits)));
  }
}
