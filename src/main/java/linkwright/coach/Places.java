package linkwright.coach;

import java.util.List;
import linkwright.coach.bench.BenchHeld;
import linkwright.coach.bench.BenchPlace;
import linkwright.coach.book.BookHeld;
import linkwright.coach.book.BookPlace;
import linkwright.coach.cautions.CautionsHeld;
import linkwright.coach.cautions.CautionsPlace;
import linkwright.coach.help.HelpPlace;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Turn;
import linkwright.coach.keys.Act;
import linkwright.coach.plan.PlanHeld;
import linkwright.coach.plan.PlanPlace;
import linkwright.coach.reckoner.ReckonPlace;
import linkwright.coach.reckoner.ReckonerHeld;
import linkwright.coach.round.RoundHeld;
import linkwright.coach.round.RoundPlace;
import linkwright.coach.testpieces.TestsHeld;
import linkwright.coach.testpieces.TestsPlace;
import linkwright.coach.timers.TimersHeld;
import linkwright.coach.timers.TimersPlace;
import linkwright.coach.tray.TrayHeld;
import linkwright.coach.tray.TrayPlace;
import linkwright.coach.trial.TrialHeld;
import linkwright.coach.trial.TrialPlace;
import linkwright.coach.weigh.WeighHeld;
import linkwright.coach.weigh.WeighPlace;
import linkwright.coach.wire.WireHeld;
import linkwright.coach.wire.WirePlace;

/** Which screen behaves how, and where one arrives. */
final class Places {
  /** The acts that every screen has. */
  static final List<Act> COMMON = List.of(Act.ROUND, Act.HELP, Act.UNDO, Act.ANSWER);

  private Places() {}

  static Place of(Model model) {
    Held screen = model.held();
    if (screen instanceof TrayHeld) {
      return new TrayPlace();
    }
    if (screen instanceof RoundHeld) {
      return new RoundPlace();
    }
    if (screen instanceof PlanHeld) {
      return new PlanPlace();
    }
    if (screen instanceof TestsHeld) {
      return new TestsPlace();
    }
    if (screen instanceof TrialHeld) {
      return new TrialPlace();
    }
    if (screen instanceof WeighHeld) {
      return new WeighPlace();
    }
    if (screen instanceof BenchHeld) {
      return new BenchPlace();
    }
    if (screen instanceof BookHeld) {
      return new BookPlace();
    }
    if (screen instanceof WireHeld) {
      return new WirePlace();
    }
    if (screen instanceof TimersHeld) {
      return new TimersPlace();
    }
    if (screen instanceof CautionsHeld) {
      return new CautionsPlace();
    }
    if (screen instanceof ReckonerHeld) {
      return new ReckonPlace();
    }
    return new HelpPlace();
  }

  /**
   * Opens a job where its work is: the plan if there is none yet, else the way round. What is no
   * chain can be made without a plan: one that was begun so is not asked for it again.
   */
  static Turn arrive(Model model, OpenJob job) {
    boolean needed =
        job.standing().counted().part().isEmpty() || job.state().course().step().isEmpty();
    return job.state().course().wish().isEmpty() && needed && !job.lookOnly()
        ? go(model, Act.TO_PLAN)
        : Turn.to(model);
  }

  /** Goes to the place that an act of the way round names. */
  static Turn go(Model model, Act act) {
    return switch (act) {
      case TO_PLAN -> PlanPlace.enter(model);
      case TO_TESTS -> TestsPlace.enter(model);
      case TO_TRIAL -> TrialPlace.enter(model);
      case TO_WEIGH_IN -> WeighPlace.enter(model);
      case TO_BENCH -> BenchPlace.enter(model);
      case TO_BOOK -> BookPlace.enter(model);
      case TO_WIRE -> WirePlace.enter(model);
      case TO_TIMERS -> TimersPlace.enter(model);
      case TO_CAUTIONS -> CautionsPlace.enter(model);
      case TO_RECKONER -> ReckonPlace.enter(model);
      default -> Turn.to(model);
    };
  }
}
