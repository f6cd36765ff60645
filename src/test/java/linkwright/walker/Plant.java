package linkwright.walker;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.BenchNow;
import linkwright.coach.kernel.JobWait;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.safety.Cards;
import linkwright.job.BenchFact;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.HotWorkState;
import linkwright.job.TimerRun;
import linkwright.job.WaitEnd;
import linkwright.routine.Hazard;
import linkwright.routine.PieceKind;
import linkwright.routine.StepCounting;
import linkwright.routine.StepId;

/** A fault laid into what the program answered, so that the walker has to find it. */
enum Plant {
  /** The program as it is. */
  NONE(1, ""),
  WAIT_ENDED_BY_A_PRESS(4, "a wait ended by nothing"),
  LOOKED_AT_WHAT_IS_NOT_PICKLED(12, "a wait ended by nothing"),
  OUT_OF_NO_WAIT(105, "came out of no wait"),
  COUNTED_TWICE(81, "by the entries"),
  MORE_MOVED_THAN_THERE_WERE(81, "moved more than there were"),
  CAUTION_PASSED(2, "before the card"),
  PLAN_UNDONE(2, "undone beyond its reach"),
  WAIT_UNDONE(4, "undone beyond its reach"),
  OTHER_SITTING_UNDONE(12, "undone out of another sitting"),
  FLAME_SHUT_BY_A_PRESS(2, "every flame said to be out by nobody"),
  FLAME_FORGOTTEN(2, "a flame is forgotten"),
  HEATED_UNLIT(2, "heated before it was lit"),
  LEFT_LIT(2, "left with a flame lit"),
  WATCH_FORGOTTEN(11, "no fire watch"),
  WAIT_OF_ANOTHER_JOB_FORGOTTEN(1, "a wait is known nowhere"),
  LINE_OVER_ANOTHER(1, "not on the screen");

  /** A routine that has an occasion for it. */
  String routine() {
    return this == LOOKED_AT_WHAT_IS_NOT_PICKLED ? "torch-practice" : "round-cable";
  }

  /** What the walker has to say of it. */
  final String told;

  /** The walk by which there is an occasion for it, to begin with. */
  final int seed;

  Plant(int seed, String told) {
    this.seed = seed;
    this.told = told;
  }

  /** The model with the fault in it; the same where there is no occasion. */
  Model into(Model before, WalkEvent event, Model after) {
    boolean same =
        before.job().isPresent()
            && after.job().map(OpenJob::slug).equals(before.job().map(OpenJob::slug))
            && !after.job().get().lookOnly();
    boolean pressed = event.kind().equals("key") && event.what().equals("space");
    return same && pressed ? planted(before, after) : after;
  }

  private Model planted(Model before, Model after) {
    boolean bench = before.held().place() == PlaceId.BENCH;
    boolean lit = after.hotWork().lit().isPresent();
    boolean asked = before.held().place() == PlaceId.HOT_WORK;
    Optional<AtBench> at = AtBench.of(after).filter(open -> bench);
    return switch (this) {
      case NONE, LINE_OVER_ANOTHER -> after;
      case WAIT_ENDED_BY_A_PRESS -> ended(after, run -> true, WaitEnd.TIME);
      case LOOKED_AT_WHAT_IS_NOT_PICKLED ->
          ended(after, run -> !pickles(after, run.step().orElse(StepId.NONE)), WaitEnd.LOOKED);
      case OUT_OF_NO_WAIT ->
          at.filter(open -> open.together() && !open.timed().isEmpty() && open.waiting() > 0)
              .map(
                  open ->
                      entered(
                          after,
                          new Fact.PiecesThrough(
                              Map.of(open.piece(), open.waiting()),
                              open.stage(),
                              false,
                              open.step().id())))
              .orElse(after);
      case COUNTED_TWICE ->
          lastOf(after, Fact.PiecesThrough.class)
              .map(last -> countedTwice(after, last))
              .orElse(after);
      case MORE_MOVED_THAN_THERE_WERE ->
          at.filter(open -> open.counts() && !open.begins())
              .map(
                  open ->
                      entered(
                          after,
                          new Fact.PiecesThrough(
                              Map.of(open.piece(), 500), open.stage(), false, open.step().id())))
              .orElse(after);
      case CAUTION_PASSED ->
          at.filter(open -> Cards.of(after, open).next().isPresent())
              .map(open -> entered(after, new Fact.StepDone(open.step().id())))
              .orElse(after);
      case PLAN_UNDONE -> at.map(open -> undone(after, Fact.PlanSet.class)).orElse(after);
      case WAIT_UNDONE -> at.map(open -> undone(after, Fact.TimerStarted.class)).orElse(after);
      case OTHER_SITTING_UNDONE ->
          at.isPresent() && stepsAwaySince(after) ? undone(after, Fact.StepDone.class) : after;
      case FLAME_SHUT_BY_A_PRESS ->
          lit && !asked
              ? entered(
                  after,
                  new BenchFact.HotWorkSaid(
                      HotWorkState.SHUT, StepId.NONE, "all out", Optional.empty(), ""))
              : after;
      case FLAME_FORGOTTEN -> lit ? with(after, BenchNow.UNKNOWN) : after;
      case HEATED_UNLIT ->
          !lit
              ? at.filter(open -> open.step().does().contains(Hazard.BURNS_GAS))
                  .filter(open -> open.step().counts() == StepCounting.NOTHING)
                  .filter(open -> Cards.of(after, open).next().isEmpty())
                  .map(open -> entered(after, new Fact.StepDone(open.step().id())))
                  .orElse(after)
              : after;
      case LEFT_LIT ->
          lit && !asked ? entered(after, new Fact.SteppedAway(false, false, false)) : after;
      case WAIT_OF_ANOTHER_JOB_FORGOTTEN ->
          after.waits().stream().anyMatch(JobWait::elsewhere) && !lit
              ? with(after, BenchNow.UNKNOWN)
              : after;
      case WATCH_FORGOTTEN ->
          // Where a wait runs elsewhere that would be forgotten with it, and be found instead.
          after.watch().isPresent() && after.waits().stream().noneMatch(JobWait::elsewhere)
              ? with(after, BenchNow.UNKNOWN)
              : after;
    };
  }

  /** A picture as it is shown: a fault lays a line over another. */
  String shown(String picture) {
    if (this != LINE_OVER_ANOTHER) {
      return picture;
    }
    List<String> lines = new ArrayList<>(picture.lines().toList());
    lines.set(lines.size() / 3, "over");
    return String.join("\n", lines);
  }

  private static Model ended(Model after, Predicate<TimerRun> which, WaitEnd how) {
    return after.timers().running().stream()
        .filter(run -> run.step().isPresent() && !run.rings(after.steady()))
        .filter(which)
        .findFirst()
        .map(run -> entered(after, new Fact.TimerAnswered(run.id(), how, "")))
        .orElse(after);
  }

  private static boolean pickles(Model model, StepId step) {
    return AtBench.of(model)
        .flatMap(at -> at.routine().step(step))
        .filter(found -> found.does().contains(Hazard.PICKLES))
        .isPresent();
  }

  private static Model undone(Model after, Class<? extends Fact> kind) {
    return lastOf(after, kind)
        .map(last -> entered(after, new Fact.Struck(last.id(), "undone")))
        .orElse(after);
  }

  /** Whether she stepped away after a step was done last. */
  private static boolean stepsAwaySince(Model model) {
    Optional<Entry> done = lastOf(model, Fact.StepDone.class);
    Optional<Entry> away = lastOf(model, Fact.SteppedAway.class);
    return done.isPresent() && away.isPresent() && away.get().number() > done.get().number();
  }

  private static Optional<Entry> lastOf(Model model, Class<? extends Fact> kind) {
    return model.job().orElseThrow().entries().stream()
        .filter(entry -> kind.isInstance(entry.fact()))
        .reduce((first, second) -> second);
  }

  private static Entry next(Model model, Fact fact) {
    OpenJob job = model.job().orElseThrow();
    int number = job.entries().stream().mapToInt(Entry::number).max().orElse(0) + 1;
    return new Entry(number, model.now(), job.device(), job.person(), fact);
  }

  private static Model entered(Model model, Fact fact) {
    OpenJob job = model.job().orElseThrow();
    return model.with(
        job.after(List.of(next(model, fact)), model.handbook(), model.settings())
            .steadied(job.state().timers(), model));
  }

  /** The piles moved once more than the book says. */
  private static Model countedTwice(Model model, Entry last) {
    OpenJob job = model.job().orElseThrow();
    Fact.PiecesThrough through = (Fact.PiecesThrough) last.fact();
    boolean moves =
        through.pieces().keySet().stream()
            .anyMatch(
                (PieceKind kind) ->
                    job.state().piles().of(kind).waitingFor(through.stage()) > 0
                        && !through.redo());
    if (!moves) {
      return model;
    }
    OpenJob twice = job.after(List.of(next(model, through)), model.handbook(), model.settings());
    return model.with(
        new OpenJob(
            job.slug(),
            job.device(),
            job.entries(),
            twice.state(),
            job.lookOnly(),
            job.told(),
            job.drafts(),
            job.standing(),
            job.doubtful(),
            job.words(),
            job.earlier()));
  }

  private static Model with(Model model, BenchNow bench) {
    return new Model(
        model.handbook(),
        model.settings(),
        model.paging(),
        model.now(),
        model.steady(),
        model.width(),
        model.height(),
        model.tray(),
        model.job(),
        model.held(),
        model.notice(),
        model.rungAt(),
        model.presses(),
        model.writing(),
        bench,
        model.learning());
  }
}
