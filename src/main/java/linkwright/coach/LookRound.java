package linkwright.coach;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Turn;

/**
 * Looks at the other books of the bench, for others may write them: now and then, and on coming.
 */
final class LookRound {
  /** So often, s. */
  private static final long EVERY = 10;

  private LookRound() {}

  static Turn now(Model model) {
    return Turn.with(model.lookingRound(), new Effect.ReadBench());
  }

  static Turn tick(Turn turn) {
    Model model = turn.model();
    long second = model.steady().getEpochSecond();
    boolean known = model.bench().lookedAt() > 0;
    if (!known || second - model.bench().lookedAt() < EVERY) {
      return turn;
    }
    List<Effect> effects = new ArrayList<>(turn.effects());
    effects.add(new Effect.ReadBench());
    return new Turn(model.lookingRound(), effects, turn.next());
  }

  /** A job was opened: at the wait that she came for, else where its work is. */
  static Turn opened(Model before, Model next, OpenJob job) {
    boolean toWait = before.bench().toward().filter(job.slug()::equals).isPresent();
    PlaceId place =
        toWait
            ? DueWaits.placeOf(next, job)
            : before.held().opensAt().orElseGet(() -> Places.firstOf(job));
    Turn there = Turn.goTo(next, place);
    if (before.held() instanceof HotWorkHeld asked && asked.then().isEmpty()) {
      // What is asked first stays in front of where the job begins.
      Turn arrived = Coach.arrived(before, there);
      there =
          new Turn(
              arrived.model().with(HotWorkHeld.before(arrived.model().held())),
              arrived.effects(),
              Optional.empty());
    }
    List<Effect> effects = new ArrayList<>(there.effects());
    effects.add(new Effect.ReadBench());
    effects.add(new Effect.OpenStudent("", ""));
    return new Turn(there.model(), effects, there.next());
  }
}
