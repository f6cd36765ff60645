package linkwright.coach.tray;

import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/**
 * The jobs at hand.
 *
 * @param at which one is chosen among those shown
 * @param search what the list is narrowed by; empty for all
 * @param form the form that is open
 * @param all whether those that were put away are shown too
 * @param again whether the one that is about to be opened is to be made again
 * @param turned how often the reader turned on to what had no room
 */
public record TrayHeld(
    int at, String search, Optional<Form> form, boolean all, boolean again, int turned)
    implements Held {
  /** All of them, or one form of the place. */
  public TrayHeld(int at, Optional<Form> form) {
    this(at, "", form, false, false, 0);
  }

  /** The same at another line, or with another form. */
  TrayHeld at(int line, Optional<Form> other) {
    return new TrayHeld(line, search, other, all, false, 0);
  }

  /** The same narrowed by other words. */
  TrayHeld narrowed(String words, Optional<Form> other) {
    return new TrayHeld(0, words, other, all, false, 0);
  }

  /** The same, turned on so often. */
  TrayHeld turned(int times) {
    return new TrayHeld(at, search, form, all, false, times);
  }

  @Override
  public Optional<PlaceId> opensAt() {
    return again ? Optional.of(PlaceId.MADE_AGAIN) : Optional.empty();
  }

  @Override
  public PlaceId place() {
    return PlaceId.TRAY;
  }
}
