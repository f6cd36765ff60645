package linkwright.coach.bench;

import java.util.List;
import java.util.Optional;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.safety.Cards;
import linkwright.coach.keys.Act;
import linkwright.job.BenchFact;
import linkwright.job.Fact;
import linkwright.routine.Hazard;
import linkwright.routine.Step;
import linkwright.standing.StillToDo;

/** How steps open: the next is where work waits, and its cautions are seen first. */
final class BenchGate {
  /** What is said of the common key at the last step, where it only tells what comes next. */
  private static final String LAST = "weigh in comes next";

  private BenchGate() {}

  /** The caution to be seen before the open step can be worked on. */
  static Optional<Cards.Card> caution(Model model) {
    return AtBench.of(model)
        .flatMap(
            at ->
                takesOut(model, at) ? Cards.of(model, at).ownNext(at) : Cards.of(model, at).next());
  }

  /**
   * What is due in the pickle is taken out before the cards of other steps are read: whoever takes
   * over has those before anything is heated.
   */
  private static boolean takesOut(Model model, AtBench at) {
    return at.looked()
        && !at.step().does().contains(Hazard.BURNS_GAS)
        && BenchWait.isOver(model, at);
  }

  /** No step is passed while cards of it were not turned over: some stand nowhere else. */
  static Model cardsFirst(Model model, AtBench at) {
    boolean due =
        BenchWait.due(model, at).isPresent()
            || model.due().stream().anyMatch(wait -> wait.elsewhere() && !wait.held());
    return model.trouble(
        due
            ? "First the wait that is over: {do:to-due} goes there. Then this card."
            : "First this card: {do:seen} turns it. Step "
                + at.number()
                + " is not passed without.");
  }

  /** What an entry leads to: a book that names no step of its routine has its step opened. */
  static Turn settle(Model model) {
    Optional<AtBench> open = AtBench.of(model);
    if (open.isEmpty() || BenchSitting.away(model)) {
      return Turn.to(model);
    }
    Step step = open.get().step();
    boolean inBook = model.job().orElseThrow().state().course().step().equals(step.id());
    BenchHeld screen = BenchPlace.screen(model);
    if (inBook && screen.ask() instanceof BenchAsk.Onto onto && caution(model).isEmpty()) {
      Model plain = model.with(BenchHeld.PLAIN);
      return open.get()
          .routine()
          .step(onto.step())
          .map(target -> jump(plain, open.get(), target))
          .orElseGet(() -> Turn.to(plain));
    }
    if (!inBook) {
      return open(model, step);
    }
    Optional<BenchAsk> marked =
        caution(model).isPresent() ? Optional.empty() : BenchPassing.marked(model, open.get());
    return Turn.to(
        model.with(
            marked
                .map(ask -> BenchScreens.asking(screen, ask))
                .orElseGet(() -> BenchScreens.kept(screen))));
  }

  /** Opens the step so many further on. */
  static Turn step(Model model, AtBench at, int by) {
    if (by > 0 && caution(model).isPresent()) {
      return Turn.to(cardsFirst(model, at));
    }
    List<Step> steps = at.routine().steps();
    int next = at.number() - 1 + by;
    if (next < 0) {
      return Turn.to(model.told("This is the first step."));
    }
    if (next >= steps.size()) {
      return Turn.to(model.told("This is the last step. Next: weigh in ({do:to-weigh-in})."));
    }
    Turn opened = open(model, steps.get(next));
    List<Fact> skipped = BenchPassing.skipped(model, at, next + 1);
    return skipped.isEmpty()
        ? opened
        : BenchPassing.with(
            skipped,
            open(
                model.told("Passed, and entered so: " + left(at, skipped) + "."), steps.get(next)));
  }

  /**
   * Goes to a step, wherever it stands; what is passed on the way is entered. On the way to a later
   * one each step in between opens as long as it has cards that are due: none is passed by a jump.
   */
  static Turn jump(Model model, AtBench at, Step target) {
    List<Step> steps = at.routine().steps();
    int to = steps.indexOf(target) + 1;
    if (to <= at.number()) {
      return open(model, target);
    }
    if (caution(model).isPresent()) {
      return Turn.to(cardsFirst(model.with(BenchHeld.PLAIN), at));
    }
    OpenJob job = model.job().orElseThrow();
    Step next =
        steps.subList(at.number(), to - 1).stream()
            .filter(step -> Cards.of(model, AtBench.of(at.routine(), job, step)).next().isPresent())
            .findFirst()
            .orElse(target);
    List<Fact> skipped = BenchPassing.skipped(model, at, steps.indexOf(next) + 1);
    Turn opened = BenchPassing.with(skipped, open(model, next));
    if (next.equals(target)) {
      return opened;
    }
    return new Turn(onTo(opened.model(), target, to), opened.effects(), opened.next());
  }

  private static Model onTo(Model model, Step target, int number) {
    return model
        .with(BenchScreens.asking(BenchHeld.PLAIN, new BenchAsk.Onto(target.id())))
        .told("On the way to step " + number + ": the cards of the steps before it come first.");
  }

  private static String left(AtBench at, List<Fact> skipped) {
    BenchFact.StepSkipped first = (BenchFact.StepSkipped) skipped.get(0);
    return "step " + at.number() + ", " + first.why();
  }

  /** Opens a step in the book; its cautions are seen before anything can be done there. */
  static Turn open(Model model, Step step) {
    Model shown = BenchBack.opening(model, step).with(BenchHeld.PLAIN);
    boolean isOpen = model.job().orElseThrow().state().course().step().equals(step.id());
    return isOpen ? Turn.to(shown) : Turn.keep(shown, new Fact.StepOpened(step.id()));
  }

  /**
   * Opens the step where work waits once this one has nothing left: first where she was called away
   * from, then a redo pile at an earlier step, then another batch if pieces are missing, else the
   * next step.
   */
  static Turn onward(Model model, AtBench at) {
    Optional<Turn> back = BenchBack.turn(model, at);
    if (back.isPresent()) {
      return back.get();
    }
    Optional<Step> past = BenchBack.past(model, at);
    if (past.isPresent()) {
      return open(model.told("On to “" + past.get().title() + "”."), past.get());
    }
    Optional<BenchAsk> failed = BenchPassing.failed(model, at);
    if (failed.isPresent()) {
      return Turn.to(model.with(BenchScreens.asking(BenchPlace.screen(model), failed.get())));
    }
    Optional<Step> redo = redoBefore(model, at);
    if (redo.isPresent()) {
      return open(model.told("Some go back: on to “" + redo.get().title() + "”."), redo.get());
    }
    Optional<Turn> behind = BenchWait.behind(model, at);
    if (behind.isPresent()) {
      return behind.get();
    }
    Optional<BenchAgain> again = BenchAgain.of(model, at);
    if (again.isPresent()) {
      return open(model.told(again.get().told()), again.get().step());
    }
    return BenchPassing.waiting(model, at)
        .map(ask -> Turn.to(model.with(BenchScreens.asking(BenchPlace.screen(model), ask))))
        .orElseGet(() -> next(model, at));
  }

  /** Where going on leads from the open step, as the key line says it. */
  static String saysOnward(Model model) {
    return AtBench.of(model).flatMap(at -> elsewhere(model, at)).orElse(Act.ONWARD.words());
  }

  private static Optional<String> elsewhere(Model model, AtBench at) {
    if (BenchBack.turn(model, at).isPresent()) {
      return Optional.of("back to where you worked");
    }
    if (BenchBack.past(model, at).isPresent()) {
      return Optional.of("on to where work waits");
    }
    Optional<BenchAsk> failed = BenchPassing.failed(model, at);
    if (failed.isPresent()) {
      return failed.map(BenchPassing::says);
    }
    if (redoBefore(model, at).isPresent()) {
      return Optional.of("back to those to redo");
    }
    Optional<String> behind = BenchWait.saysBehind(model, at);
    return behind
        .or(() -> BenchAgain.of(model, at).map(again -> "on with another batch"))
        .or(() -> BenchPassing.waiting(model, at).map(BenchPassing::says))
        .or(
            () ->
                goneBackTo(model, at, at.step()).isPresent()
                    ? Optional.of("back to more of it")
                    : Optional.empty())
        .or(() -> after(model, at).isPresent() ? Optional.empty() : Optional.of(LAST));
  }

  /** The next step, whatever is left behind. */
  static Turn next(Model model, AtBench at) {
    Optional<Step> back = goneBackTo(model, at, at.step());
    if (back.isPresent()) {
      String until = at.step().detail().loop().orElseThrow().until();
      return open(
          model.told("Back to “" + back.get().title() + "”, until " + until + "."), back.get());
    }
    return after(model, at)
        .map(next -> open(model, next))
        .orElseGet(() -> Turn.to(model.told("All done here. Next: weigh in ({do:to-weigh-in}).")));
  }

  /** The step after this one; one that only leads back is passed by where nothing waits for it. */
  private static Optional<Step> after(Model model, AtBench at) {
    return at.routine().steps().stream()
        .skip(at.number())
        .filter(
            step ->
                step.detail().loop().isEmpty()
                    || !step.stage().isEmpty()
                    || goneBackTo(model, at, step).isPresent())
        .findFirst();
  }

  /** The step that a loop leads back to, while pieces wait there for what is to be reached. */
  private static Optional<Step> goneBackTo(Model model, AtBench at, Step step) {
    OpenJob job = model.job().orElseThrow();
    return step.detail()
        .loop()
        .flatMap(loop -> at.routine().step(loop.backTo()))
        .filter(back -> AtBench.of(at.routine(), job, back).waiting() > 0);
  }

  /** The earliest step before this one with pieces to be redone that are still wanted. */
  private static Optional<Step> redoBefore(Model model, AtBench at) {
    OpenJob job = model.job().orElseThrow();
    return at.routine().steps().stream()
        .limit(at.number() - 1L)
        .filter(
            step -> {
              AtBench there = AtBench.of(at.routine(), job, step);
              StillToDo left = job.standing().left().get(there.piece());
              return there.redo() > 0
                  && !there.enough()
                  && !BenchPassing.isLater(there)
                  && (left == null || left.more() > 0);
            })
        .findFirst();
  }

  /** Opens the step whose redo pile holds pieces, if one does. */
  static Turn toRedo(Model model, AtBench at) {
    OpenJob job = model.job().orElseThrow();
    return at.routine().steps().stream()
        .filter(step -> AtBench.of(at.routine(), job, step).redo() > 0)
        .findFirst()
        .map(step -> open(model, step))
        .orElseGet(() -> Turn.to(model.told("Nothing is to be redone.")));
  }
}
