package linkwright.coach;

import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
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
        : turn;
  }
}
