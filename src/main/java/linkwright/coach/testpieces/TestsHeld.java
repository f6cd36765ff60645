package linkwright.coach.testpieces;

import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;
import linkwright.standing.TestPieces;

/** Test pieces and what they teach; empty where the link has no pattern. */
public record TestsHeld(int at, Optional<TestPieces> taught, Optional<Form> form) implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.TEST_PIECES;
  }
}
