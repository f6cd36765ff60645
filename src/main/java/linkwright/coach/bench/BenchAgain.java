package linkwright.coach.bench;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.routine.PieceKind;
import linkwright.routine.Routine;
import linkwright.routine.Stage;
import linkwright.routine.Step;
import linkwright.standing.StillToDo;

/**
 * Another batch: the step at which the work goes on when a part of the routine is left and pieces
 * that are judged by then are missing.
 *
 * @param step the step to open
 * @param told what to say
 */
record BenchAgain(Step step, String told) {

  static Optional<BenchAgain> of(Model model, AtBench at) {
    List<Step> steps = at.routine().steps();
    boolean last = at.number() >= steps.size();
    if (!last && steps.get(at.number()).part() == at.step().part()) {
      return Optional.empty();
    }
    OpenJob job = model.job().orElseThrow();
    for (Map.Entry<PieceKind, StillToDo> each : job.standing().left().entrySet()) {
      boolean judged = judgedAt(at.routine(), each.getKey()) <= at.number();
      if (judged && each.getValue().more() > 0) {
        Optional<Step> begin = begin(at.routine(), job, each.getKey(), each.getValue());
        if (begin.isPresent()) {
          return begin.map(step -> new BenchAgain(step, told(each.getKey(), step)));
        }
      }
    }
    return Optional.empty();
  }

  /** The number of the step behind which a kind of piece is good; far off if there is none. */
  private static int judgedAt(Routine routine, PieceKind piece) {
    List<Stage> stages = routine.stagesOf(piece);
    if (stages.isEmpty()) {
      return Integer.MAX_VALUE;
    }
    Stage judged =
        stages.contains(StillToDo.JUDGED) ? StillToDo.JUDGED : stages.get(stages.size() - 1);
    for (int i = 0; i < routine.steps().size(); i++) {
      if (judged.equals(routine.steps().get(i).stage().get(piece))) {
        return i + 1;
      }
    }
    return Integer.MAX_VALUE;
  }

  /** Where the piece begins if more are to be cut, else where the first of them wait. */
  private static Optional<Step> begin(
      Routine routine, OpenJob job, PieceKind piece, StillToDo left) {
    boolean cut = left.toCut().orElse(1) > 0;
    return routine.steps().stream()
        .filter(
            step -> {
              AtBench there = AtBench.of(routine, job, step);
              boolean waits = (there.waiting() > 0 && !there.enough()) || there.redo() > 0;
              return there.piece().equals(piece) && (cut ? there.begins() : waits);
            })
        .findFirst();
  }

  private static String told(PieceKind piece, Step step) {
    String kind = Character.toUpperCase(piece.id().charAt(0)) + piece.many().substring(1);
    return kind + " are missing: another batch, from “" + step.title() + "”.";
  }
}
