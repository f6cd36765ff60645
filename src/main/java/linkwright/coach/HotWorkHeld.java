package linkwright.coach;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Pauses;
import linkwright.job.FlameWord;

/**
 * Whether every flame is out is asked.
 *
 * @param from what the place holds that it is asked in front of
 * @param then what was about to be done there; empty for nothing
 * @param answered the words that were said to be over; empty before she answered
 * @param statement in what words
 * @param drawn since when it stands on the screen, by the steady clock; empty if it does not yet
 */
record HotWorkHeld(
    Held from,
    Optional<Act> then,
    List<FlameWord> answered,
    String statement,
    Optional<Instant> drawn)
    implements Held {
  HotWorkHeld {
    answered = List.copyOf(answered);
  }

  HotWorkHeld(Held from, Optional<Act> then) {
    this(from, then, List.of(), "", Optional.empty());
  }

  /** Asked by itself, in front of that. */
  static HotWorkHeld before(Held from) {
    return new HotWorkHeld(from, Optional.empty());
  }

  HotWorkHeld answer(List<FlameWord> words, String said) {
    return new HotWorkHeld(from, then, words, said, drawn);
  }

  HotWorkHeld drawn(Optional<Instant> since) {
    return new HotWorkHeld(from, then, answered, statement, since);
  }

  /** Whether it stood long enough by that moment for anybody to have read it. */
  boolean readBy(Instant at) {
    return drawn
        .filter(since -> Duration.between(since, at).compareTo(Pauses.UNREAD) >= 0)
        .isPresent();
  }

  @Override
  public Optional<PlaceId> opensAt() {
    return from.opensAt();
  }

  @Override
  public PlaceId place() {
    return PlaceId.HOT_WORK;
  }
}
