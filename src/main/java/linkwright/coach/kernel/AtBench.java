package linkwright.coach.kernel;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import linkwright.job.Course;
import linkwright.job.Fact;
import linkwright.job.InHand;
import linkwright.job.JobState;
import linkwright.job.LinkSizes;
import linkwright.job.OnWay;
import linkwright.job.Pile;
import linkwright.job.TimerRun;
import linkwright.routine.Hazard;
import linkwright.routine.PieceKind;
import linkwright.routine.Routine;
import linkwright.routine.RoutinePart;
import linkwright.routine.Stage;
import linkwright.routine.Step;
import linkwright.routine.StepCounting;
import linkwright.routine.Wait;
import linkwright.routine.WaitEnds;
import linkwright.standing.StillToDo;
import linkwright.standing.sizes.SizeAtBench;

/**
 * The step that is open at the bench and the pieces that belong to it; read by the bench's update
 * and its drawing alike.
 *
 * @param routine the job's routine
 * @param step the step that is open
 * @param number its place in the routine, from 1
 * @param piece the kind of piece it counts; none if it counts nothing
 * @param stage the stage that piece reaches here; none if it counts nothing
 * @param size which size of link is counted; empty where links are alike or all go together
 * @param pile the pile of that kind and size
 * @param waiting pieces that wait for this stage
 * @param redo pieces to be done again here
 * @param fromRedo whether what is in hand comes from the redo pile
 * @param inHand how many are in hand
 * @param wanted pieces of that kind and size that the chain takes; 0 if that is not known
 */
public record AtBench(
    Routine routine,
    Step step,
    int number,
    PieceKind piece,
    Stage stage,
    String size,
    Pile pile,
    int waiting,
    int redo,
    boolean fromRedo,
    int inHand,
    int wanted) {
  /** The open step of the job on the bench; empty if the job's routine is not known. */
  public static Optional<AtBench> of(Model model) {
    return model
        .job()
        .flatMap(
            job ->
                job.standing()
                    .walked()
                    .filter(routine -> !routine.steps().isEmpty())
                    .map(routine -> of(routine, job, stepIn(routine, job))));
  }

  /**
   * The open step. If the routine has it no more, under no name, the last one before it in the book
   * that it has: never the first, as if nothing had been done.
   */
  private static Step stepIn(Routine routine, OpenJob job) {
    Optional<Step> open = routine.step(job.state().course().step());
    for (int i = job.entries().size() - 1; i >= 0 && open.isEmpty(); i--) {
      if (job.entries().get(i).fact() instanceof Fact.StepOpened opened) {
        open = routine.step(opened.step());
      }
    }
    return open.orElse(routine.steps().get(0));
  }

  public static AtBench of(Routine routine, OpenJob job, Step step) {
    JobState state = job.state();
    PieceKind piece = step.stage().keySet().stream().findFirst().orElse(PieceKind.NONE);
    Stage stage = step.stage().getOrDefault(piece, Stage.NONE);
    boolean batch = step.counts() == StepCounting.BATCH && !state.piles().of(piece).begins(stage);
    String size = batch ? LinkSizes.UNSAID : SizeAtBench.of(state, job.standing(), piece, stage);
    Pile pile = size.isEmpty() ? state.piles().of(piece) : state.piles().of(piece, size);
    int waiting = pile.waitingFor(stage);
    int redo = pile.redoAt(stage);
    InHand hand = state.piles().hand();
    int held = hand.holds(piece, stage);
    int wanted = left(job, piece, size).map(StillToDo::wanted).orElse(0);
    boolean newOnes = waiting > 0 && !pile.chainHas(stage, wanted);
    boolean fromRedo =
        (held > 0 && (hand.redo() ? redo : waiting) > 0) ? hand.redo() : (!newOnes && redo > 0);
    int available = fromRedo ? redo : waiting;
    int inHand = held > 0 ? Math.min(held, available) : Math.min(1, available);
    return new AtBench(
        routine,
        step,
        routine.steps().indexOf(step) + 1,
        piece,
        stage,
        size,
        pile,
        waiting,
        redo,
        fromRedo,
        step.counts() == StepCounting.EACH ? inHand : 0,
        wanted);
  }

  private static Optional<StillToDo> left(OpenJob job, PieceKind piece, String size) {
    return Optional.ofNullable(job.standing().left().get(piece)).map(all -> all.of(size));
  }

  /** What is still to do of the kind and size that is counted here. */
  public Optional<StillToDo> left(OpenJob job) {
    return left(job, piece, size);
  }

  /** What is counted, in a word for one or several: {@code long links}. */
  public String counted(int count) {
    return counted(size, piece, count);
  }

  /** The same of another size. */
  public static String counted(String size, PieceKind piece, int count) {
    return size.isEmpty() ? piece.word(count) : size + " " + piece.word(count);
  }

  /** Whether the chain has all its pieces of this kind; any that wait or failed are spare. */
  public boolean enough() {
    return pile.chainHas(stage, wanted);
  }

  /** Pieces that can come through now from where the piece in hand comes. */
  public int available() {
    return fromRedo ? redo : waiting;
  }

  /** Whether the pieces begin here by being cut; a rod or a broken link is there already. */
  public boolean cuts() {
    return begins() && stage.equals(Stage.CUT);
  }

  /** Pieces that can fail now: those that can come through, or, where pieces begin, those cut. */
  public int failable() {
    return begins() ? pile.waitingFor(failsAt()) : available();
  }

  /** The stage before which a piece is lost here: a blank cut badly never comes to the next. */
  public Stage failsAt() {
    return begins() && pile.stages().size() > 1 ? pile.stages().get(1) : stage;
  }

  /** Whether all that waits goes through together here. */
  public boolean together() {
    return step.counts() == StepCounting.BATCH && !piece.equals(PieceKind.NONE) && !begins();
  }

  /** All that waits here to go through, of each kind. */
  public Map<OnWay, Integer> there(JobState state) {
    Map<OnWay, Integer> all = new LinkedHashMap<>();
    step.stage()
        .forEach(
            (kind, to) ->
                piles(state, kind)
                    .forEach(
                        (of, each) ->
                            all.put(new OnWay(kind, to, false, of), each.waitingFor(to))));
    piles(state, piece)
        .forEach((of, each) -> all.put(new OnWay(piece, stage, true, of), each.redoAt(stage)));
    all.values().removeIf(count -> count == 0);
    return all;
  }

  private static Map<String, Pile> piles(JobState state, PieceKind kind) {
    Map<String, Pile> sized = state.piles().sizes().piles();
    return kind.equals(PieceKind.LINK) && !sized.isEmpty()
        ? sized
        : Map.of(LinkSizes.UNSAID, state.piles().of(kind));
  }

  /**
   * Whether a step that counts nothing is done: said here, or done at a place of its own, as test
   * pieces and trial lengths are.
   */
  public boolean isDone(JobState state) {
    return state.course().stepsDone().contains(step.id())
        || (step.part() == RoutinePart.TRIAL && !state.trials().pieces().isEmpty())
        || (step.part() == RoutinePart.SAMPLE && !state.trials().lengths().isEmpty());
  }

  /**
   * Whether what was heated just before this step was heated again since this one was done: then it
   * has to be done again too.
   */
  public boolean heatedSince(Course course) {
    Optional<Step> hot = Optional.empty();
    for (Step before : routine.steps().subList(0, number() - 1)) {
      boolean heats =
          before.does().contains(Hazard.HEATS) || before.does().contains(Hazard.BURNS_GAS);
      hot = heats ? Optional.of(before) : hot;
    }
    return hot.filter(step -> step.counts() == StepCounting.NOTHING)
        .map(step -> course.doneSince(step.id(), this.step.id()))
        .orElse(false);
  }

  /** Whether this step counts pieces. */
  public boolean counts() {
    return step.counts() != StepCounting.NOTHING && !piece.equals(PieceKind.NONE);
  }

  /** Whether pieces begin here: blanks are cut from wire. */
  public boolean begins() {
    return counts() && pile.begins(stage);
  }

  /** Pieces that have come through this stage and are not in a redo pile. */
  public int through() {
    return pile.atOrPast(stage);
  }

  /** Its waits that have a time of their own; the fire watch is the bench's. */
  public List<Wait> timed() {
    return step.waits().stream().filter(wait -> wait.ends() != WaitEnds.WATCH).toList();
  }

  /** Whether the fire watch is kept here. */
  public boolean watches() {
    return step.waits().stream().anyMatch(wait -> wait.ends() == WaitEnds.WATCH);
  }

  /** The timer of this step that is due next and is not yet. */
  public Optional<TimerRun> waitRunning(Model model) {
    return own(model).filter(timer -> !timer.rings(model.steady())).findFirst();
  }

  /** The timer of this step that ends first, running or due. */
  public Optional<TimerRun> ownTimer(Model model) {
    return own(model).findFirst();
  }

  private Stream<TimerRun> own(Model model) {
    return model.timers().running().stream()
        .filter(timer -> timer.isOf(step.id()))
        .sorted(Comparator.comparing(TimerRun::end));
  }

  /**
   * Whether its waits end by a look: what is pickled is done when it is clean, not by the clock.
   */
  public boolean looked() {
    return step.does().contains(Hazard.PICKLES);
  }

  /** Whether pieces are judged here, so that their joints can be counted. */
  public boolean judges() {
    return counts() && !begins() && stage().equals(StillToDo.JUDGED);
  }

  /** A joint that fails is made again where it was made last before this; else here. */
  public Stage usualRedoStage() {
    List<Stage> stages = pile().stages();
    for (int i = stages.indexOf(stage()) - 1; i > 0; i--) {
      if (stages.get(i).makesAJoint()) {
        return stages.get(i);
      }
    }
    return stage();
  }
}
