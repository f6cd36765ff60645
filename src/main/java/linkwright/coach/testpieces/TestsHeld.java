package linkwright.coach.testpieces;

import java.util.Map;
import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.keys.Act;
import linkwright.standing.TestPieces;

/**
 * Test pieces.
 *
 * @param at which of them is chosen
 * @param taught what they teach; empty where the link has no pattern
 * @param others name of another link of the chain → what its pieces teach
 * @param form the piece that is being logged
 * @param turned how often its reader turned on
 * @param drawn whether the next piece is shown bend by bend in place of the list
 */
public record TestsHeld(
    int at,
    Optional<TestPieces> taught,
    Map<String, TestPieces> others,
    Optional<Form> form,
    int turned,
    boolean drawn)
    implements Held {
  /** What is known of that link of the chain; the planned one has no name. */
  Optional<TestPieces> of(String size) {
    return size.isEmpty() ? taught : Optional.ofNullable(others.get(size));
  }

  @Override
  public PlaceId place() {
    return PlaceId.TEST_PIECES;
  }

  TestsHeld with(Optional<Form> other) {
    return new TestsHeld(at, taught, others, other, turned, drawn);
  }

  TestsHeld at(int other) {
    return new TestsHeld(other, taught, others, Optional.empty(), turned, false);
  }

  TestsHeld turned(Act act) {
    return new TestsHeld(at, taught, others, form, Turning.to(turned, act), drawn);
  }

  TestsHeld turnedOver() {
    return new TestsHeld(at, taught, others, form, 0, !drawn);
  }
}
