package linkwright.standing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.job.Again;
import linkwright.job.JobState;
import linkwright.job.LinkSizes;
import linkwright.job.Pile;
import linkwright.job.PileSpot;
import linkwright.routine.PieceKind;
import linkwright.routine.Routine;
import linkwright.routine.Stage;
import linkwright.routine.Step;

/**
 * Pieces of one kind that stand at one place, and the step where they are taken up again.
 *
 * @param spot the kind, the stage, and whether they are to be done again
 * @param count how many
 * @param step where they are taken up; empty where nothing more is done to them
 * @param number that step's place in the routine, from 1; 0 for none
 * @param wanted whether the chain still takes such pieces; those beyond it are spare
 * @param again when they are to be done again, if that was said
 * @param lies where they lie, in her own words; empty if she never said
 */
public record WaitingPiece(
    PileSpot spot,
    int count,
    Optional<Step> step,
    int number,
    boolean wanted,
    Again again,
    String lies) {

  /** Every pile of a job, in the order of the routine; what is finished comes last. */
  public static List<WaitingPiece> of(
      JobState state, Routine routine, Map<PieceKind, StillToDo> left) {
    List<WaitingPiece> all = new ArrayList<>();
    List<WaitingPiece> finished = new ArrayList<>();
    for (int i = 0; i < routine.steps().size(); i++) {
      Step step = routine.steps().get(i);
      for (Map.Entry<PieceKind, Stage> each : step.stage().entrySet()) {
        boolean first = firstAt(routine, each.getKey(), each.getValue()).equals(step);
        if (first) {
          at(all, state, step, i + 1, each, left);
        }
      }
    }
    for (PieceKind piece : state.piles().byPiece().keySet()) {
      bySize(state, piece)
          .forEach(
              (size, pile) -> {
                if (pile.finished() > 0) {
                  Stage last = pile.stages().get(pile.stages().size() - 1);
                  PileSpot spot = new PileSpot(piece, last, false, size);
                  finished.add(
                      new WaitingPiece(
                          spot,
                          pile.finished(),
                          Optional.empty(),
                          0,
                          false,
                          Again.NOT_SAID,
                          state.piles().lies(spot)));
                }
              });
    }
    all.addAll(finished);
    return all;
  }

  private static Map<String, Pile> bySize(JobState state, PieceKind piece) {
    Map<String, Pile> sizes = state.piles().sizes().piles();
    return piece.equals(PieceKind.LINK) && !sizes.isEmpty()
        ? sizes
        : Map.of(LinkSizes.UNSAID, state.piles().of(piece));
  }

  private static Step firstAt(Routine routine, PieceKind piece, Stage stage) {
    return routine.steps().stream()
        .filter(step -> stage.equals(step.stage().get(piece)))
        .findFirst()
        .orElseThrow();
  }

  private static void at(
      List<WaitingPiece> all,
      JobState state,
      Step step,
      int number,
      Map.Entry<PieceKind, Stage> each,
      Map<PieceKind, StillToDo> left) {
    bySize(state, each.getKey())
        .forEach(
            (size, pile) -> {
              Optional<StillToDo> todo =
                  Optional.ofNullable(left.get(each.getKey())).map(kind -> kind.of(size));
              at(all, state, step, number, each, size, pile, todo);
            });
  }

  private static void at(
      List<WaitingPiece> all,
      JobState state,
      Step step,
      int number,
      Map.Entry<PieceKind, Stage> each,
      String size,
      Pile pile,
      Optional<StillToDo> todo) {
    Stage stage = each.getValue();
    int here = pile.stages().indexOf(stage);
    int fresh = pile.waitingFor(stage);
    if (here > 0 && fresh > 0) {
      boolean wanted = todo.stream().allMatch(left -> pile.atOrPast(stage) < left.wanted());
      PileSpot spot = new PileSpot(each.getKey(), pile.stages().get(here - 1), false, size);
      all.add(of(state, spot, fresh, step, number, wanted, Again.NOT_SAID));
    }
    if (pile.redoAt(stage) > 0) {
      boolean wanted =
          todo.stream().allMatch(left -> left.more() > 0 && !pile.chainHas(stage, left.wanted()));
      PileSpot spot = new PileSpot(each.getKey(), stage, true, size);
      all.add(of(state, spot, pile.redoAt(stage), step, number, wanted, pile.again(stage)));
    }
  }

  private static WaitingPiece of(
      JobState state,
      PileSpot spot,
      int count,
      Step step,
      int number,
      boolean wanted,
      Again again) {
    String lies = state.piles().lies(spot);
    return new WaitingPiece(spot, count, Optional.of(step), number, wanted, again, lies);
  }

  /** Whether they wait for a step. */
  public boolean waits() {
    return step.isPresent();
  }

  /** What they are: {@code links}, {@code long links}. */
  public String what() {
    return (spot.size().isEmpty() ? "" : spot.size() + " ") + spot.piece().word(count);
  }

  /** How many of what: {@code 6 links}, {@code 2 links to redo}. */
  public String counted() {
    return count
        + " "
        + what()
        + (spot.redo() ? " to redo" : "")
        + (wanted || !waits() ? "" : spot.redo() ? ", spare" : " over");
  }
}
