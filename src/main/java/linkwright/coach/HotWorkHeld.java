package linkwright.coach;

import java.util.List;
import java.util.Optional;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.keys.Act;
import linkwright.job.FlameWord;

/**
 * Whether every flame is out is asked.
 *
 * @param from what the place holds that it is asked in front of
 * @param then what was about to be done there; empty for nothing
 * @param answered the words that were said to be over; empty before she answered
 * @param statement in what words
 */
record HotWorkHeld(Held from, Optional<Act> then, List<FlameWord> answered, String statement)
    implements Held {
  HotWorkHeld {
    answered = List.copyOf(answered);
  }

  HotWorkHeld(Held from, Optional<Act> then) {
    this(from, then, List.of(), "");
  }

  /** Asked by itself, in front of that. */
  static HotWorkHeld before(Held from) {
    return new HotWorkHeld(from, Optional.empty());
  }

  HotWorkHeld answer(List<FlameWord> words, String said) {
    return new HotWorkHeld(from, then, words, said);
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
