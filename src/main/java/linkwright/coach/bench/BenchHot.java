package linkwright.coach.bench;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Turn;
import linkwright.coach.keys.Act;
import linkwright.job.BenchFact;
import linkwright.job.Course;
import linkwright.job.HotWork;
import linkwright.job.HotWorkState;
import linkwright.routine.Hazard;
import linkwright.routine.WaitEnds;

/**
 * Before the first count or wait of a step that heats, the common key says that the torch is lit,
 * or that kiln or hotplate are on. Single flames out and lit again are nobody's business.
 */
final class BenchHot {
  /** What begins the heat of a step; what only takes out of a wait does not. */
  private static final Set<Act> BEGINS =
      Set.of(Act.THROUGH, Act.CUT_ONE, Act.BEGIN_ONE, Act.WAIT_FIRST);

  private BenchHot() {}

  /** What the common key says before it does that; empty where it does it at once. */
  static Optional<Act> before(Model model, AtBench at, Act act) {
    Set<Hazard> does = at.step().does();
    boolean gas = does.contains(Hazard.BURNS_GAS);
    HotWork now = model.hotWork();
    boolean said = gas ? now.lit().isPresent() : now.open();
    if (said || !heats(at) || !begins(model, at, act)) {
      return Optional.empty();
    }
    return Optional.of(gas ? Act.LIT : Act.HOT_ON);
  }

  private static boolean begins(Model model, AtBench at, Act act) {
    if (BEGINS.contains(act)) {
      return true;
    }
    Course course = model.job().orElseThrow().state().course();
    boolean waited = !at.timed().isEmpty() && !course.waits().at(at.step().id()).isEmpty();
    return (act == Act.TOGETHER || act == Act.DONE) && !waited;
  }

  /** Whether anything is heated here: done again, it is heated again. */
  static boolean heats(AtBench at) {
    Set<Hazard> does = at.step().does();
    return does.contains(Hazard.BURNS_GAS) || does.contains(Hazard.HEATS);
  }

  /** Says it; a number that was typed stays for the count that follows. */
  static Turn said(Model model, AtBench at, Act act) {
    HotWorkState state = act == Act.LIT ? HotWorkState.LIT : HotWorkState.HOT;
    String told = act == Act.LIT ? "Hot work is open." : "Hot work is open: kiln or hotplate on.";
    return Turn.keep(
        model.told(told),
        new BenchFact.HotWorkSaid(state, at.step().id(), "", Optional.of(List.of()), ""));
  }

  /**
   * What the timer's key does, as the key line says it: nobody says by it unknowingly that a flame
   * burns.
   */
  static String saysWait(Model model) {
    return AtBench.of(model)
        .flatMap(at -> BenchWait.saidFirst(model, at))
        .map(first -> first.words().replaceFirst(":.*", ""))
        .orElse(Act.WAIT.words());
  }

  /** What begins a wait, as the key line says it: of a heat before it nothing is said yet. */
  static String saysFirst(Model model) {
    return AtBench.of(model)
        .flatMap(at -> AtWait.of(model, at).next())
        .filter(wait -> wait.ends() == WaitEnds.LOOK)
        .map(wait -> "in the pickle: timer")
        .orElse(Act.WAIT_FIRST.words());
  }
}
