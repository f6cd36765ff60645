package linkwright.coach.round;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.Places;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Turn;
import linkwright.coach.keys.Act;
import linkwright.coach.tray.TrayHeld;

/** The way round a job: every place with its key; the bench is where enter leads. */
final class RoundPlace implements Place {
  /** The places in the order of the work. */
  static final List<Act> PLACES =
      List.of(
          Act.TO_PLAN,
          Act.TO_TESTS,
          Act.TO_TRIAL,
          Act.TO_BENCH,
          Act.TO_WIRE,
          Act.TO_WEIGH_IN,
          Act.TO_BOOK,
          Act.TO_CAUTIONS,
          Act.TO_TIMERS,
          Act.TO_RECKONER,
          Act.TO_TRAY);

  @Override
  public List<Act> acts(Model model) {
    List<Act> acts = new ArrayList<>(PLACES);
    acts.add(Act.LEAVE);
    return acts;
  }

  @Override
  public Turn act(Model model, Act act) {
    return switch (act) {
      case LEAVE -> Turn.with(model, new Effect.ShutJob(), new Effect.Leave());
      case TO_TRAY ->
          Turn.with(
              model.withJob(Optional.empty()).with(new TrayHeld(0, Optional.empty())),
              new Effect.ShutJob(),
              new Effect.ReadTray());
      default -> Places.go(model, act);
    };
  }
}
