package linkwright.coach;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import linkwright.coach.bench.BenchAnswers;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.safety.HotWorkWords;
import linkwright.coach.kernel.turning.AskedOnce;
import linkwright.coach.keys.Act;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.routine.Hazard;
import linkwright.routine.Routine;
import linkwright.routine.Step;
import linkwright.routine.StepId;
import linkwright.standing.StillToDo;

/** Nobody leaves an open flame unasked, nor a fire watch untold. */
final class HotWorkGate {
  /** The acts by which one leaves the bench. */
  private static final Set<Act> LEAVING = Set.of(Act.LEAVE, Act.TO_TRAY, Act.STEP_AWAY, Act.CLOSE);

  /** What answers whether every flame is out. */
  private static final Set<Act> ANSWERS = Set.of(Act.FLAMES_OUT, Act.STILL_LIT);

  static final String UNREAD =
      "Read the question first: that press came before anybody could, and counts nothing.";

  private HotWorkGate() {}

  /** The same, with since when the question stands on the screen. */
  static Model drawn(Model model, Optional<Instant> since) {
    return model.held() instanceof HotWorkHeld held && held.drawn().isEmpty() && since.isPresent()
        ? model.with(held.drawn(since))
        : model;
  }

  /** Whether a key answers before what it answers could be read. */
  static boolean pressedUnread(Model model, Act act, Instant at) {
    return ANSWERS.contains(act) && model.held() instanceof HotWorkHeld held && !held.readBy(at);
  }

  /** What was told of the flames stands still after a key that means nothing there. */
  static Turn stands(Model before, Turn turn) {
    boolean nothing = turn.effects().isEmpty() && turn.next().isEmpty();
    return nothing
            && before.notice().text().equals(UNREAD)
            && turn.model().held().equals(before.held())
        ? Turn.to(turn.model().with(before.notice()))
        : turn;
  }

  /** The same of a click; what chooses its acts by words draws nothing. */
  private static boolean clickedUnread(Model model, Act act) {
    return ANSWERS.contains(act)
        && model.held() instanceof HotWorkHeld held
        && held.drawn().isPresent()
        && !held.readBy(model.steady());
  }

  /** What an act of a place does; one that leaves is asked about first while hot work is open. */
  static Turn act(Model model, Place place, Act act) {
    if (clickedUnread(model, act)) {
      return Turn.to(model.told(UNREAD));
    }
    Optional<Turn> elsewhere = FlamesElsewhere.before(model, act);
    if (elsewhere.isPresent()) {
      return elsewhere.get();
    }
    if (!LEAVING.contains(act) || model.held() instanceof HotWorkHeld) {
      return done(model, place, act);
    }
    // What closes a job opens a form: it is asked as that is kept.
    return act != Act.CLOSE && asks(model)
        ? Turn.to(model.with(new HotWorkHeld(model.held(), Optional.of(act))))
        : leave(model, place, act);
  }

  /**
   * What a form does that is kept. No job is closed beside an open flame but with her answer, which
   * is asked last: after whatever else the form asks.
   */
  static Turn confirmed(Model model, Place place, Form form) {
    Optional<Form> asking = form.asking();
    if (asking.isPresent()) {
      return place.edited(model, asking.get(), false);
    }
    Turn turn = place.confirmed(model, form);
    return turn.effects().stream().anyMatch(HotWorkGate::closes) && asks(model)
        ? Turn.to(model.with(new HotWorkHeld(model.held(), Optional.of(Act.KEEP))))
        : turn;
  }

  private static boolean closes(Effect effect) {
    return effect instanceof Effect.KeepFacts keep
        && keep.facts().stream().anyMatch(Fact.JobClosed.class::isInstance);
  }

  /** Whoever only looks at a job could enter no answer: she is told of the flame as she leaves. */
  private static boolean asks(Model model) {
    return model.hotWork().open() && model.job().filter(OpenJob::lookOnly).isEmpty();
  }

  /** Answered: on with what was about to be done. */
  static Turn passed(Model model, HotWorkHeld held) {
    Model back = model.with(held.from());
    return held.then()
        .map(act -> leave(back, Places.of(back), act))
        .orElseGet(() -> Turn.to(told(back)));
  }

  /**
   * What she answered stands in no book, for another window writes that one: she goes on all the
   * same, told what the books say still.
   */
  static Turn notSaid(Model model, HotWorkHeld held) {
    Turn on = passed(model, held);
    Model told =
        on.model()
            .trouble(
                "Not entered: in the book of "
                    + HotWorkWords.jobs(model)
                    + " a flame is lit still. Say it out where that book is open.");
    return new Turn(told, on.effects(), on.next());
  }

  /** Leaving tells the minutes left of a fire watch, and leaves. */
  private static Turn leave(Model model, Place place, Act act) {
    Turn turn = done(told(model), place, act);
    List<Effect> effects = new ArrayList<>();
    turn.effects().forEach(effect -> effects.add(said(effect, model)));
    return new Turn(turn.model(), effects, turn.next());
  }

  private static Turn done(Model model, Place place, Act act) {
    Optional<Form> form = model.held().form();
    if (act == Act.KEEP && form.isPresent()) {
      return place.confirmed(model, form.get().completed());
    }
    return AskedOnce.acts(place, model).contains(act)
        ? place.act(model, act)
        : EverywhereActs.act(model, act);
  }

  private static Model told(Model model) {
    return HotWorkWords.watch(model).map(model::told).orElse(model);
  }

  private static Effect said(Effect effect, Model model) {
    return effect instanceof Effect.Leave ? leave(model) : effect;
  }

  /** The end, with what is to be said of flame and watch. */
  static Effect.Leave leave(Model model) {
    String typed = BenchAnswers.typed(model);
    return new Effect.Leave((HotWorkWords.parting(model) + typed).strip());
  }

  /** What was found open when the program began is asked about before all else. */
  static Model first(Model model) {
    if (model.bench().mind().asked() || model.held().form().isPresent()) {
      return model;
    }
    Model asked = model.askedAbout();
    return asks(model) ? asked.with(HotWorkHeld.before(model.held())) : asked;
  }

  /**
   * Where a step opened and nothing hot is left to do in this job, it is asked; so it is on the way
   * from a flame to work without one, where the routine lights the torch anew after that.
   */
  static Turn nothingLeft(Turn turn, List<Entry> kept) {
    Model model = turn.model();
    boolean opened = kept.stream().anyMatch(entry -> entry.fact() instanceof Fact.StepOpened);
    boolean asks =
        opened
            && turn.next().isEmpty()
            && model.held().place() == PlaceId.BENCH
            && model.hotWork().lit().isPresent()
            && AtBench.of(model)
                .filter(at -> hotIsLeft(model, at) && !isLitAnew(model, at))
                .isEmpty();
    return asks
        ? new Turn(model.with(HotWorkHeld.before(model.held())), turn.effects(), turn.next())
        : turn;
  }

  /** Whether she comes from a flame, and the next one is another that begins with its lighting. */
  private static boolean isLitAnew(Model model, AtBench at) {
    List<Step> steps = at.routine().steps();
    Optional<Step> next =
        steps.subList(at.number() - 1, steps.size()).stream()
            .filter(step -> step.does().contains(Hazard.BURNS_GAS))
            .findFirst();
    return next.filter(
                step -> !step.id().equals(at.step().id()) && step.does().contains(Hazard.LIGHTS))
            .isPresent()
        && cameFrom(model.job().orElseThrow())
            .flatMap(at.routine()::step)
            .filter(from -> from.does().contains(Hazard.BURNS_GAS))
            .filter(from -> steps.indexOf(from) < at.number() - 1)
            .isPresent();
  }

  /** The step that was open before the one that is. */
  private static Optional<StepId> cameFrom(OpenJob job) {
    return job.entries().stream()
        .filter(entry -> entry.fact() instanceof Fact.StepOpened)
        .map(entry -> ((Fact.StepOpened) entry.fact()).step())
        .filter(step -> !step.equals(job.state().course().step()))
        .reduce((one, other) -> other);
  }

  private static boolean hotIsLeft(Model model, AtBench at) {
    OpenJob job = model.job().orElseThrow();
    Routine routine = at.routine();
    Set<StepId> done = job.state().course().stepsDone();
    for (Step step : routine.steps()) {
      AtBench there = AtBench.of(routine, job, step);
      boolean ahead = there.number() >= at.number();
      if (step.does().contains(Hazard.BURNS_GAS)
          && (there.counts() ? isLeft(job, there, ahead) : ahead && !done.contains(step.id()))) {
        return true;
      }
    }
    return false;
  }

  private static boolean isLeft(OpenJob job, AtBench there, boolean ahead) {
    StillToDo left = job.standing().left().get(there.piece());
    if (left == null) {
      return ahead || there.waiting() + there.redo() > 0;
    }
    return left.more() > 0 && there.through() < left.wanted();
  }
}
