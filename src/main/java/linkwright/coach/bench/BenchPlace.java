package linkwright.coach.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import linkwright.coach.content.Content;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Ringing;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.drawn.PictureContent;
import linkwright.coach.kernel.safety.Cards;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.kernel.undo.Undo;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.job.Again;
import linkwright.job.Course;
import linkwright.quantity.Count;
import linkwright.routine.RoutinePart;
import linkwright.routine.StepCounting;
import linkwright.routine.StepId;

/**
 * The bench: one step at a time, its cautions first, then one key for the common act. Everything it
 * enters is a fact; the counts come back from the book.
 */
public final class BenchPlace implements Place {
  @Override
  public Content content(Model model) {
    return BenchContent.of(model, screen(model));
  }

  /** What says that so many are right. */
  private static final Set<Act> SAYS_SURE = Set.of(Act.CUT_ONE, Act.BEGIN_ONE, Act.ONWARD);

  /** What the common key says before anything is heated; then nothing else counts there. */
  static final Set<Act> FLAME = Set.of(Act.LIT, Act.HOT_ON);

  @Override
  public List<Act> allActs() {
    return BenchActs.ALL;
  }

  @Override
  public List<Act> acts(Model model) {
    List<Act> acts = openActs(model);
    return BenchLook.isAheadClosed(model)
        ? acts.stream().filter(act -> act != Act.LOOK_ON).toList()
        : acts;
  }

  private List<Act> openActs(Model model) {
    BenchHeld screen = screen(model);
    if (screen.ask() instanceof BenchAsk.Looking) {
      return List.of(
          Act.BACK_FROM_LOOK, Act.OPEN_STEP, Act.LOOK_ON, Act.LOOK_BACK, Act.MORE, Act.TO_PILES);
    }
    if (BenchSitting.away(model)) {
      return List.of(Act.BACK_AT_BENCH, Act.MORE, Act.LESS);
    }
    if (BenchGate.caution(model).isPresent()) {
      return Turning.with(
          List.of(
              Act.SEEN, Act.PREVIOUS_STEP, Act.NEXT_STEP, Act.LOOK_ON, Act.LOOK_BACK, Act.TO_PILES),
          () -> BenchSitting.cardPages(model, screen) > 1);
    }
    if (screen.ask() instanceof BenchAsk.Passing passing) {
      List<Act> acts = new ArrayList<>(List.of(Act.PASS_ON, Act.LEAVE_QUESTION, Act.TO_PILES));
      if (AtBench.of(model)
          .filter(at -> passing.back().equals(Optional.of(at.step().id())))
          .isPresent()) {
        // It is about this step, and asked as that opens: nobody is kept here by it.
        acts.addAll(List.of(Act.NEXT_STEP, Act.PREVIOUS_STEP));
      }
      return acts;
    }
    if (screen.ask() instanceof BenchAsk.WhenAgain) {
      return List.of(Act.AGAIN_NOW, Act.LEAVE_QUESTION, Act.TO_PILES);
    }
    if (screen.ask() instanceof BenchAsk.Why) {
      return List.of(Act.NONE_OF_THEM, Act.LEAVE_QUESTION);
    }
    List<Act> acts = new ArrayList<>();
    if (screen.ask() instanceof BenchAsk.Repeated) {
      acts.addAll(List.of(Act.HELD_REDO, Act.LEAVE_QUESTION));
    }
    AtBench.of(model)
        .map(at -> actsAt(model, at))
        .ifPresent(here -> acts.addAll(acts.isEmpty() ? here : here.subList(1, here.size())));
    acts.addAll(Math.min(1, acts.size()), TypedNumber.givenUp(screen, acts));
    acts.addAll(
        List.of(
            Act.NEXT_STEP,
            Act.PREVIOUS_STEP,
            Act.UNDO,
            Act.TO_PILES,
            Act.LOOK_ON,
            Act.LOOK_BACK,
            Act.MORE,
            Act.LESS,
            Act.STEP_AWAY,
            Act.ANSWER,
            Act.BRING_BACK,
            Act.TO_TIMERS));
    return acts;
  }

  private static List<Act> actsAt(Model model, AtBench at) {
    List<Act> acts = new ArrayList<>();
    Act common = commonAct(model, at);
    acts.add(common);
    if (at.looked() && at.ownTimer(model).isPresent()) {
      acts.add(Act.LOOKED);
    }
    boolean drawn = !PictureContent.pages(at.step(), model).isEmpty();
    if (drawn && screen(model).drawn() > 0) {
      acts.add(Act.DRAWN);
    }
    if (at.counts() && !at.begins()) {
      acts.addAll(List.of(Act.REDO, Act.SCRAP));
      if (drawn && !acts.contains(Act.DRAWN)) {
        acts.add(Act.DRAWN);
      }
      acts.add(Act.TAKE);
      if (!FLAME.contains(common)) {
        acts.add(Act.ALL);
      }
      if (at.judges()) {
        acts.add(Act.TO_JOINTS);
      }
    }
    boolean cut = at.failable() > 0 || JustCounted.of(model, at).isPresent();
    if (at.counts() && at.begins() && cut) {
      acts.add(Act.SCRAP);
    }
    if (BenchCount.canTakeOtherSize(model, at)) {
      acts.add(Act.OTHER_SIZE);
    }
    if (!at.timed().isEmpty() && !FLAME.contains(common)) {
      acts.add(Act.WAIT);
    }
    if (model.hotWork().open()) {
      acts.add(Act.TO_HOT_WORK);
    }
    if (drawn && !acts.contains(Act.DRAWN)) {
      acts.add(Act.DRAWN);
    }
    if (at.step().part() == RoutinePart.TRIAL && !at.counts()) {
      acts.add(Act.TO_TESTS);
    }
    if (at.step().part() == RoutinePart.SAMPLE && !at.counts()) {
      acts.add(Act.TO_TRIAL);
    }
    return acts;
  }

  /** What the one key for the common act does here; before it heats, it says so. */
  public static Act commonAct(Model model, AtBench at) {
    Act act = doneHere(model, at);
    return BenchHot.before(model, at, act).orElse(act);
  }

  private static Act doneHere(Model model, AtBench at) {
    if (BenchWait.due(model, at).isPresent()) {
      return Act.TO_DUE;
    }
    if (BenchWait.chainIn(model, at).isPresent()) {
      return Act.MEANWHILE;
    }
    if (!at.counts()) {
      return atStep(model, at);
    }
    boolean batch = at.step().counts() == StepCounting.BATCH && !at.begins();
    boolean along = !BenchCount.alongAtBatch(model, at).isEmpty();
    boolean batchWaits = batch && (along || at.waiting() + at.redo() > 0);
    if (!batchWaits && BenchWait.isOver(model, at)) {
      return Act.WAIT_OVER;
    }
    if (at.begins()) {
      Act one = at.cuts() ? Act.CUT_ONE : Act.BEGIN_ONE;
      return BenchCount.enoughAreCut(model, at) ? Act.ONWARD : one;
    }
    if (batch && !batchWaits && at.waitRunning(model).isPresent()) {
      return Act.MEANWHILE;
    }
    boolean spare = !batch && at.enough();
    if (spare || (at.waiting() + at.redo() == 0 && !along)) {
      return Act.ONWARD;
    }
    if (!batch) {
      return Act.THROUGH;
    }
    AtWait wait = AtWait.of(model, at);
    if (!wait.out().isEmpty()) {
      return Act.TOGETHER;
    }
    if (wait.next().isPresent()) {
      return Act.WAIT_FIRST;
    }
    return at.waitRunning(model).isPresent() ? Act.MEANWHILE : Act.TOGETHER;
  }

  /** At a step that counts nothing its wait comes before it is done. */
  private static Act atStep(Model model, AtBench at) {
    if (at.waitRunning(model).isPresent()) {
      return Act.MEANWHILE;
    }
    if (at.watches() && model.hotWork().open()) {
      return Act.SHUT_FIRST;
    }
    Course course = model.job().orElseThrow().state().course();
    boolean isDone = course.stepsDone().contains(at.step().id()) && !at.heatedSince(course);
    boolean over = BenchWait.isOver(model, at);
    if (isDone && (over || BenchBack.fromElsewhere(model, at))) {
      return over ? Act.WAIT_OVER : Act.ONWARD;
    }
    if (!isDone && at.watches() && model.watch().isPresent()) {
      return Act.MEANWHILE;
    }
    return !isDone && AtWait.of(model, at).next().isPresent() ? Act.WAIT_FIRST : Act.DONE;
  }

  @Override
  public Turn act(Model model, Act act) {
    return TypedNumber.told(model, act, underCautions(model, acted(model, act)));
  }

  /** What is worked at a step is worked under the lines of its cautions. */
  private static Turn underCautions(Model model, Turn turn) {
    return AtBench.of(model).map(at -> Cards.of(model, at).workedUnder(model, turn)).orElse(turn);
  }

  private static Turn acted(Model before, Act act) {
    boolean unsure =
        (screen(before).ask() instanceof BenchAsk.Sure && !SAYS_SURE.contains(act))
            || (screen(before).ask() instanceof BenchAsk.Early && act != Act.LOOKED);
    Model model =
        unsure
            ? before.with(BenchScreens.plain(screen(before)))
            : letStand(before, act == Act.HELD_REDO);
    BenchHeld screen = screen(model);
    Optional<AtBench> found = AtBench.of(model);
    if (found.isEmpty()) {
      return Turn.to(BenchSitting.noRoutine(model));
    }
    AtBench at = found.get();
    Optional<Turn> refused = TypedNumber.refused(model, at, act);
    if (refused.isPresent()) {
      return refused.get();
    }
    return switch (act) {
      case SHUT_FIRST -> Turn.goTo(model, PlaceId.HOT_WORK);
      case LIT, HOT_ON -> BenchHot.said(model, at, act);
      case SEEN, BACK_AT_BENCH, NONE_OF_THEM -> BenchSitting.seen(model, screen);
      case LEAVE_QUESTION -> Turn.to(model.with(BenchScreens.plain(screen)));
      case HELD_REDO -> HeldKey.redo(model, at);
      case WAIT, WAIT_FIRST -> BenchWait.asked(model, at);
      case MEANWHILE -> BenchWait.meanwhile(model, at);
      case LOOKED -> BenchWait.looked(model, at);
      case TO_DUE -> BenchWait.toDue(model, at);
      case WAIT_OVER -> BenchWait.answerOver(model, at);
      case THROUGH, DONE, TOGETHER, CUT_ONE, BEGIN_ONE, ONWARD ->
          BenchCount.through(model, at, number(screen).orElse(1));
      case ALL -> BenchCount.through(model, at, Math.max(1, at.available()));
      case REDO -> BenchFault.ask(model, at, false, number(screen).orElse(1));
      case SCRAP -> BenchFault.ask(model, at, true, number(screen).orElse(1));
      case OTHER_SIZE -> BenchCount.otherSize(model, at);
      case TAKE -> BenchCount.take(model, at, number(screen).orElse(1));
      case PASS_ON ->
          screen.ask() instanceof BenchAsk.Passing asked
              ? BenchPassing.passOn(model, at, asked)
              : Turn.to(model);
      case AGAIN_NOW ->
          screen.ask() instanceof BenchAsk.WhenAgain asked
              ? BenchPassing.planned(model, at, asked, Again.NOW)
              : Turn.to(model);
      case LOOK_ON -> BenchLook.by(model, at, 1);
      case LOOK_BACK -> BenchLook.by(model, at, -1);
      case OPEN_STEP -> BenchLook.open(model, at);
      case BACK_FROM_LOOK -> Turn.to(model.with(BenchHeld.PLAIN));
      case NEXT_STEP -> BenchGate.step(model, at, 1);
      case PREVIOUS_STEP -> BenchGate.step(model, at, -1);
      case MORE, LESS ->
          BenchGate.caution(model).isPresent()
              ? Turn.to(model.with(BenchSitting.cardTurned(model, screen, act)))
              : Turn.to(model.with(BenchScreens.part(screen, Turning.to(screen.part(), act))));
      case DRAWN ->
          Turn.to(
              model.with(
                  BenchScreens.nextDrawn(screen, PictureContent.pages(at.step(), model).size())));
      case STEP_AWAY -> BenchSitting.stepAway(model, screen);
      case UNDO -> Undo.last(model.with(BenchScreens.plain(screen)));
      case BRING_BACK -> Undo.bringBack(model.with(BenchScreens.plain(screen)));
      case ANSWER -> Ringing.answer(model);
      default -> Turn.goTo(model, act);
    };
  }

  /** Any other key than the one that confirms lets the piece stand that was just counted. */
  private static Model letStand(Model model, boolean confirmed) {
    BenchHeld screen = screen(model);
    return screen.ask() instanceof BenchAsk.Repeated && !confirmed
        ? model.with(BenchScreens.plain(screen))
        : model;
  }

  @Override
  public String says(Model model, Act act) {
    boolean drawn = screen(model).drawn() > 0;
    return switch (act) {
      case MORE ->
          drawn || BenchGate.caution(model).isPresent()
              ? "the next page"
              : "why and what may go wrong";
      case DRAWN -> drawn ? DrawnContent.next(model, screen(model)) : act.words();
      case LEAVE_QUESTION -> TypedNumber.says(screen(model), act);
      case BACK_AT_BENCH -> BenchSitting.closed(model) ? "closed: how it opens" : act.words();
      case MEANWHILE -> BenchWait.says(model);
      case DONE, TOGETHER, WAIT_OVER -> BenchWait.saysOver(model, act);
      case WAIT -> BenchHot.saysWait(model);
      case WAIT_FIRST -> BenchHot.saysFirst(model);
      case ONWARD -> BenchGate.saysOnward(model);
      default -> act.words();
    };
  }

  @Override
  public boolean countIsTyped(Model model) {
    return !screen(model).digits().isEmpty();
  }

  @Override
  public Turn keyHeld(Model model) {
    return HeldKey.held(model);
  }

  /** While the bench asks or shows a caution, nothing behind it changes. */
  @Override
  public boolean undoes(Model model) {
    return !BenchSitting.away(model)
        && BenchGate.caution(model).isEmpty()
        && (screen(model).ask() instanceof BenchAsk.Nothing
            || screen(model).ask() instanceof BenchAsk.Sure
            || screen(model).ask() instanceof BenchAsk.Early);
  }

  @Override
  public Turn typed(Model before, Key key) {
    Model model = letStand(before, false);
    BenchHeld screen = screen(model);
    if (screen.ask() instanceof BenchAsk.Why why) {
      return underCautions(model, BenchFault.answer(model, why, key));
    }
    Optional<Turn> answered =
        AtBench.of(model).flatMap(at -> BenchPassing.answered(model, at, screen.ask(), key));
    if (answered.isPresent()) {
      return answered.get();
    }
    if (screen.ask() instanceof BenchAsk.Looking) {
      return BenchLook.typed(model, key);
    }
    return Turn.to(TypedNumber.typed(model, screen, key));
  }

  @Override
  public Turn settled(Model model) {
    return BenchGate.settle(model);
  }

  @Override
  public Turn enter(Model model) {
    return BenchSitting.enter(model);
  }

  @Override
  public Turn enterAt(Model model, String id) {
    return BenchLook.at(model, new StepId(id));
  }

  static Optional<Integer> number(BenchHeld screen) {
    return Count.inDigits(screen.digits(), 9);
  }

  static BenchHeld screen(Model model) {
    return model.held() instanceof BenchHeld bench ? bench : BenchHeld.PLAIN;
  }
}
