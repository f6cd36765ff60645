package linkwright.coach.kernel;

import java.util.Optional;
import linkwright.coach.form.Form;

/**
 * What a place holds while one is there: only what is typed, chosen or looked at. What the book can
 * tell stands in the book alone.
 */
public interface Held {
  /** The place that holds it. */
  PlaceId place();

  /** The form that is being filled in there, if one is. */
  default Optional<Form> form() {
    return Optional.empty();
  }

  /** Where a job that was opened from here begins; empty for where it always does. */
  default Optional<PlaceId> opensAt() {
    return Optional.empty();
  }

  /** Whether something moves there from second to second. */
  default boolean moves() {
    return false;
  }

  /** How often the reader turned on to what had no room; goes round. */
  default int turned() {
    return 0;
  }
}
