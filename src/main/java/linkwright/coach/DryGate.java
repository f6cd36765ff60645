package linkwright.coach;

import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.Writing;

/** Nothing that is done in a rehearsal or a lesson enters anything in a job's book. */
final class DryGate {
  private DryGate() {}

  /** The turn, unless it would. */
  static Turn held(Model model, Turn turn) {
    boolean dry = model.writing() instanceof Writing.Nothing && Places.of(model).isDry();
    return dry && turn.effects().stream().anyMatch(Effect::entersInJob)
        ? Turn.to(
            model.trouble(
                "Nothing is entered in a job from here. {do:round} leads out; then it can be."))
        : left(model, turn);
  }

  /** A rehearsal is not left in silence: what comes after it counts. */
  private static Turn left(Model model, Turn turn) {
    boolean leaves =
        model.held().place() == PlaceId.REHEARSAL
            && turn.next().filter(to -> to != PlaceId.HELP && to != PlaceId.FIND).isPresent();
    boolean atWork = model.job().filter(job -> !job.lookOnly()).isPresent();
    String told =
        "The rehearsal is left: nothing of it was entered."
            + (atWork ? " What is done from here on counts." : "");
    return leaves ? new Turn(turn.model().told(told), turn.effects(), turn.next()) : turn;
  }
}
