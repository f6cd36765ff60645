package linkwright.coach.reckoner;

import java.util.Map;
import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;
import linkwright.reckon.Reckoning;

/**
 * The reckoner.
 *
 * @param at which sum is chosen
 * @param form what it is reckoned from, while it is typed
 * @param result what that comes to, if the form is open
 * @param last what it came to before the field in which the caret is was typed into; empty if it
 *     could not be reckoned then
 * @param typed sum → what was typed for it on this visit
 * @param turned how often its reader turned on
 */
public record ReckonerHeld(
    int at,
    Optional<Form> form,
    Optional<Reckoning> result,
    Optional<Reckoning> last,
    Map<String, Map<String, String>> typed,
    int turned)
    implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.RECKONER;
  }

  public ReckonerHeld {
    typed = Map.copyOf(typed);
  }

  /** The sums to choose from, at one of them. */
  static ReckonerHeld list(int at, Map<String, Map<String, String>> typed) {
    return new ReckonerHeld(at, Optional.empty(), Optional.empty(), Optional.empty(), typed, 0);
  }

  /** The same with its form as it is now. */
  ReckonerHeld with(Form other) {
    return new ReckonerHeld(at, Optional.of(other), result, before(other, result), typed, turned);
  }

  /** The same reckoned from what the form says now. */
  ReckonerHeld reckoned(Form other, Reckoning now, Map<String, Map<String, String>> texts) {
    Optional<Reckoning> told = Optional.of(now);
    return new ReckonerHeld(at, Optional.of(other), told, before(other, told), texts, 0);
  }

  /** A caret in another field has left a field that is typed: what it comes to stands. */
  private Optional<Reckoning> before(Form other, Optional<Reckoning> now) {
    boolean sameField = form.filter(open -> open.at() == other.at()).isPresent();
    return sameField ? last : now.filter(Reckoning::good).or(() -> last);
  }

  ReckonerHeld turned(int by) {
    return new ReckonerHeld(at, form, result, last, typed, turned + by);
  }
}
