package linkwright.coach.book;

import java.util.List;
import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;

/**
 * The book.
 *
 * @param at which row is chosen: the doubtful lines first, then the entries found
 * @param search what is searched for; empty: all entries are shown
 * @param found places in the book of the entries found, the newest first
 * @param form the form that is open
 * @param turned how often its reader turned on to what had no room beside the list
 */
public record BookHeld(int at, String search, List<Integer> found, Optional<Form> form, int turned)
    implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.BOOK;
  }

  BookHeld with(int row) {
    return new BookHeld(row, search, found, form, 0);
  }

  BookHeld turned(int to) {
    return new BookHeld(at, search, found, form, to);
  }

  BookHeld with(Optional<Form> other) {
    return new BookHeld(at, search, found, other, 0);
  }
}
