package linkwright.coach;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import linkwright.job.Fact;
import linkwright.routine.Caution;
import linkwright.routine.Counts;
import linkwright.routine.Part;
import linkwright.routine.Wait;

/**
 * The bench: one step at a time, its cautions first, then one key for the common act. Everything it
 * enters is a fact; the counts come back from the book.
 */
final class BenchPlace implements Place {
  private static final int MOST_DIGITS = 4;

  /** The acts to which a number typed belongs. */
  private static final Set<Act> COUNTING =
      Set.of(Act.THROUGH, Act.CUT_ONE, Act.ONWARD, Act.REDO, Act.SCRAP, Act.TAKE);

  @Override
  public List<Act> acts(Model model) {
    Screen.Bench screen = screen(model);
    if (away(model)) {
      return List.of(Act.BACK_AT_BENCH);
    }
    if (BenchGate.caution(model).isPresent()) {
      return List.of(Act.SEEN, Act.PREVIOUS_STEP, Act.NEXT_STEP);
    }
    if (screen.ask() instanceof BenchAsk.Away) {
      return List.of(Act.AWAY_NOW);
    }
    if (screen.ask() instanceof BenchAsk.Why) {
      return List.of(Act.NONE_OF_THEM);
    }
    List<Act> acts = new ArrayList<>();
    AtBench.of(model).ifPresent(at -> acts.addAll(actsAt(model, at)));
    acts.addAll(
        List.of(
            Act.NEXT_STEP,
            Act.PREVIOUS_STEP,
            Act.UNDO,
            Act.DETAIL,
            Act.STEP_AWAY,
            Act.ANSWER,
            Act.BRING_BACK));
    return acts;
  }

  private static List<Act> actsAt(Model model, AtBench at) {
    List<Act> acts = new ArrayList<>();
    acts.add(commonAct(model, at));
    if (at.counts() && !at.begins()) {
      acts.addAll(List.of(Act.REDO, Act.SCRAP, Act.TAKE, Act.ALL));
    }
    if (at.counts() && at.begins() && at.failable() > 0) {
      acts.add(Act.SCRAP);
    }
    if (!at.step().waits().isEmpty()) {
      acts.add(Act.WAIT);
    }
    if (at.step().part() == Part.TRIAL && !at.counts()) {
      acts.add(Act.TO_TESTS);
    }
    if (at.step().part() == Part.SAMPLE && !at.counts()) {
      acts.add(Act.TO_TRIAL);
    }
    return acts;
  }

  /** What the one key for the common act does here. */
  private static Act commonAct(Model model, AtBench at) {
    if (!at.counts()) {
      return waitBeforeDone(model, at) ? Act.WAIT_FIRST : Act.DONE;
    }
    if (at.begins()) {
      Act one = at.cuts() ? Act.CUT_ONE : Act.BEGIN_ONE;
      return BenchCount.enoughAreCut(model, at) ? Act.ONWARD : one;
    }
    if (at.waiting() + at.redo() == 0) {
      return Act.ONWARD;
    }
    if (at.step().counts() != Counts.BATCH) {
      return Act.THROUGH;
    }
    if (at.nextWait(model).isPresent()) {
      return Act.WAIT_FIRST;
    }
    return at.waitRunning(model).isPresent() ? Act.NOT_YET : Act.TOGETHER;
  }

  /** A wait such as the fire watch is begun by the common key; the next press goes on. */
  private static boolean waitBeforeDone(Model model, AtBench at) {
    Set<String> done = model.job().orElseThrow().state().course().stepsDone();
    return at.nextWait(model).isPresent() && !done.contains(at.step().id());
  }

  @Override
  public Turn act(Model model, Act act) {
    Screen.Bench screen = screen(model);
    Optional<AtBench> found = AtBench.of(model);
    if (found.isEmpty()) {
      return Turn.to(noRoutine(model));
    }
    if (COUNTING.contains(act) && number(screen).orElse(1) == 0) {
      return Turn.to(
          model
              .with(BenchScreens.plain(screen))
              .trouble("0 counts nothing. Type how many, or just press the key for one."));
    }
    AtBench at = found.get();
    return switch (act) {
      case SEEN, BACK_AT_BENCH, AWAY_NOW, NONE_OF_THEM -> seen(model, screen);
      case WAIT_FIRST -> startWait(model, at);
      case NOT_YET -> notYet(model, at);
      case THROUGH, DONE, TOGETHER, CUT_ONE, BEGIN_ONE, ONWARD ->
          BenchCount.through(model, at, number(screen).orElse(1));
      case ALL -> BenchCount.through(model, at, Math.max(1, at.available()));
      case REDO -> BenchFault.ask(model, at, false, number(screen).orElse(1));
      case SCRAP -> BenchFault.ask(model, at, true, number(screen).orElse(1));
      case TAKE -> BenchCount.take(model, at, number(screen).orElse(1));
      case NEXT_STEP -> BenchGate.step(model, at, 1);
      case PREVIOUS_STEP -> BenchGate.step(model, at, -1);
      case WAIT -> startWait(model, at);
      case DETAIL -> Turn.to(model.with(BenchScreens.nextPart(screen)));
      case STEP_AWAY ->
          Turn.to(model.with(BenchScreens.asking(screen, new BenchAsk.Away(false, false, false))));
      case UNDO -> Undo.last(model.with(BenchScreens.plain(screen)));
      case BRING_BACK -> Undo.bringBack(model.with(BenchScreens.plain(screen)));
      case ANSWER -> Update.answer(model);
      default -> Places.go(model, act);
    };
  }

  @Override
  public Turn typed(Model model, Key key) {
    Screen.Bench screen = screen(model);
    if (screen.ask() instanceof BenchAsk.Why why) {
      return BenchFault.answer(model, why, key);
    }
    if (screen.ask() instanceof BenchAsk.Away away) {
      return Turn.to(model.with(BenchScreens.asking(screen, toggled(away, key))));
    }
    if (key.is(Key.Kind.BACKSPACE) && !screen.digits().isEmpty()) {
      String fewer = screen.digits().substring(0, screen.digits().length() - 1);
      return Turn.to(model.with(BenchScreens.digits(screen, fewer)));
    }
    boolean digit = key.kind() == Key.Kind.CHARACTER && key.text().matches("[0-9]");
    if (digit && screen.digits().length() < MOST_DIGITS) {
      String more = (screen.digits() + key.text()).replaceFirst("^0+(?=.)", "");
      return Turn.to(model.with(BenchScreens.digits(screen, more)));
    }
    return Turn.to(model);
  }

  @Override
  public Turn settled(Model model) {
    return BenchGate.settle(model);
  }

  /** Comes to the bench: a sitting begins, and the step that was open is open again. */
  static Turn enter(Model model) {
    Model there = model.with(Screen.Bench.PLAIN);
    if (AtBench.of(there).isEmpty()) {
      return Turn.to(noRoutine(there));
    }
    if (model.job().map(OpenJob::lookOnly).orElse(true)) {
      return Turn.to(there);
    }
    return away(model) && !closed(model)
        ? Turn.keep(there, new Fact.SittingStarted())
        : BenchGate.settle(there);
  }

  private static Model noRoutine(Model model) {
    return model.trouble(
        "The routine of this job is not among the files at hand. Put it back into the"
            + " routines folder and open the job again.");
  }

  private static boolean closed(Model model) {
    return model.job().map(job -> job.state().course().closed()).orElse(false);
  }

  private static Turn seen(Model model, Screen.Bench screen) {
    if (screen.ask() instanceof BenchAsk.Away away) {
      return Turn.keep(
          model.with(BenchScreens.plain(screen)),
          new Fact.SteppedAway(away.torchOut(), away.gasShut(), away.hotWorkSafe()));
    }
    if (screen.ask() instanceof BenchAsk.Why) {
      return Turn.to(model.with(BenchScreens.plain(screen)).told("Nothing was counted."));
    }
    if (away(model) && closed(model)) {
      return Turn.to(
          model.trouble("This job is closed. Open it again where it was weighed in (esc, i, g)."));
    }
    if (away(model)) {
      return Turn.keep(model, new Fact.SittingStarted());
    }
    Optional<Caution> card = BenchGate.caution(model);
    return card.map(seen -> seen(model, screen, seen)).orElseGet(() -> BenchGate.settle(model));
  }

  /** A card is seen once its last page was. */
  private static Turn seen(Model model, Screen.Bench screen, Caution card) {
    return screen.cardPage() + 1 < CardRows.pages(model, card).size()
        ? Turn.to(model.with(BenchScreens.turned(screen)))
        : Turn.keep(model.with(BenchScreens.firstPage(screen)), new Fact.CautionSeen(card.id()));
  }

  private static BenchAsk.Away toggled(BenchAsk.Away away, Key key) {
    return switch (key.text()) {
      case "1" -> new BenchAsk.Away(!away.torchOut(), away.gasShut(), away.hotWorkSafe());
      case "2" -> new BenchAsk.Away(away.torchOut(), !away.gasShut(), away.hotWorkSafe());
      case "3" -> new BenchAsk.Away(away.torchOut(), away.gasShut(), !away.hotWorkSafe());
      default -> away;
    };
  }

  /** A press too early counts nothing; another key does, for who knows better. */
  private static Turn notYet(Model model, AtBench at) {
    String left =
        at.waitRunning(model)
            .map(timer -> timer.name() + ": " + Clock.running(timer.left(model.now()).toSeconds()))
            .orElse("The timer runs");
    String all = model.settings().keys().keysOf(Act.ALL).get(0);
    return Turn.to(model.told(left + " to go. To take them out all the same: " + all + "."));
  }

  private static Turn startWait(Model model, AtBench at) {
    Optional<Wait> next = at.nextWait(model).or(() -> at.step().waits().stream().findFirst());
    return next.map(
            wait ->
                Turn.keep(
                    model.told(wait.name() + ": the timer runs."),
                    new Fact.TimerStarted(wait.name(), wait.seconds())))
        .orElseGet(() -> Turn.to(model.told("This step has no wait.")));
  }

  /** Whether the bench was left, told or by a long silence, or no sitting was begun yet. */
  static boolean away(Model model) {
    return model.job().map(job -> !job.state().times().sittingAt(model.now())).orElse(true);
  }

  private static Optional<Integer> number(Screen.Bench screen) {
    return screen.digits().isEmpty()
        ? Optional.empty()
        : Optional.of(Integer.parseInt(screen.digits()));
  }

  static Screen.Bench screen(Model model) {
    return model.screen() instanceof Screen.Bench bench ? bench : Screen.Bench.PLAIN;
  }
}
