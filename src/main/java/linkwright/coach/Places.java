package linkwright.coach;

import java.util.List;

/** Which screen behaves how, and where one arrives. */
final class Places {
  /** The acts that every screen has. */
  static final List<Act> COMMON =
      List.of(Act.ROUND, Act.HELP, Act.UNDO, Act.BRING_BACK, Act.ANSWER);

  private Places() {}

  static Place of(Model model) {
    Screen screen = model.screen();
    if (screen instanceof Screen.Tray) {
      return new TrayPlace();
    }
    if (screen instanceof Screen.Round) {
      return new RoundPlace();
    }
    if (screen instanceof Screen.Plan) {
      return new PlanPlace();
    }
    if (screen instanceof Screen.Tests) {
      return new TestsPlace();
    }
    if (screen instanceof Screen.Trial) {
      return new TrialPlace();
    }
    if (screen instanceof Screen.WeighIn) {
      return new WeighPlace();
    }
    if (screen instanceof Screen.Bench) {
      return new BenchPlace();
    }
    if (screen instanceof Screen.Book) {
      return new BookPlace();
    }
    if (screen instanceof Screen.Wire) {
      return new WirePlace();
    }
    if (screen instanceof Screen.TimerList) {
      return new TimersPlace();
    }
    if (screen instanceof Screen.Cautions) {
      return new CautionsPlace();
    }
    if (screen instanceof Screen.Reckoner) {
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
