package linkwright.coach.bench;

import java.util.Optional;
import linkwright.coach.content.Content;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Turn;
import linkwright.coach.keys.Act;
import linkwright.routine.Step;

/** What the plain walk and a job as text ask of the bench. */
public final class BenchAnswers {
  private BenchAnswers() {}

  /** The step that is open, whatever is to be seen or answered before it. */
  public static Optional<Content> step(Model model) {
    return AtBench.of(model)
        .map(at -> new Content(BenchContent.title(at), StepContent.of(model, BenchHeld.PLAIN, at)));
  }

  /**
   * What the common key says before anything is heated at the step; empty where it heats nothing.
   */
  public static Optional<Act> saidFirst(Model model) {
    return AtBench.of(model)
        .map(at -> BenchPlace.commonAct(model, at))
        .filter(BenchPlace.FLAME::contains);
  }

  /** Whether an act says that a flame burns, or that kiln or hotplate are on. */
  public static boolean lights(Model model, Act act) {
    return BenchPlace.FLAME.contains(act)
        || (act == Act.WAIT
            && AtBench.of(model).flatMap(at -> BenchWait.saidFirst(model, at)).isPresent());
  }

  /** The step whose wait is over while another one is open. */
  public static Optional<Step> due(Model model) {
    return AtBench.of(model).flatMap(at -> BenchWait.due(model, at));
  }

  /** That a number was typed and counts nothing, behind another sentence; empty if none was. */
  public static String typed(Model model) {
    return TypedNumber.dropped(BenchPlace.screen(model));
  }

  /** Goes there, whatever stands in front of the step that is open. */
  public static Turn toDue(Model model) {
    return AtBench.of(model)
        .map(at -> TypedNumber.told(model, Act.TO_DUE, BenchWait.toDue(model, at)))
        .orElseGet(() -> Turn.to(model));
  }

  /** The same, told that the job is closed and how it is opened again. */
  public static Model reopenFirst(Model model) {
    return BenchSitting.reopenFirst(model);
  }

  /** That, in words, at the bench of a job that is closed; empty anywhere else. */
  public static Optional<String> closed(Model model) {
    return model.held() instanceof BenchHeld && BenchSitting.closed(model)
        ? Optional.of(BenchSitting.CLOSED)
        : Optional.empty();
  }

  /** Whether nobody is at the bench. */
  public static boolean away(Model model) {
    return BenchSitting.away(model);
  }

  /**
   * Whether a number is asked about that is out of reason: the key that counts would confirm it.
   */
  public static boolean asksSure(Model model) {
    return BenchPlace.screen(model).ask() instanceof BenchAsk.Sure;
  }
}
