package linkwright.coach.exchange;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;
import linkwright.job.Fact;

/**
 * The form that is open, what was done last, and what one more keeping of the same form does.
 *
 * @param form the form that is open
 * @param said what was written or entered last, in a sentence; empty for nothing
 * @param asked what was typed when a question was put; empty where none is
 * @param rows the entries that these rows come to, once they were read
 * @param left the form that was left, with what is typed in it
 */
record ExchangeHeld(
    Optional<Form> form,
    String said,
    Map<String, String> asked,
    List<Fact> rows,
    Optional<Form> left,
    int turned)
    implements Held {
  ExchangeHeld {
    asked = Map.copyOf(asked);
    rows = List.copyOf(rows);
  }

  static ExchangeHeld of(Optional<Form> form, String said) {
    return new ExchangeHeld(form, said, Map.of(), List.of(), Optional.empty(), 0);
  }

  /** The same, asking whether what is typed is meant. */
  ExchangeHeld asking(Form told, List<Fact> entries) {
    return new ExchangeHeld(Optional.of(told), said, told.texts(), entries, left, 0);
  }

  /** The same on other pages. */
  ExchangeHeld turned(int other) {
    return new ExchangeHeld(form, said, asked, rows, left, other);
  }

  /** The same without a form, what is typed in it kept. */
  ExchangeHeld shut() {
    return new ExchangeHeld(Optional.empty(), said, Map.of(), List.of(), form, 0);
  }

  @Override
  public PlaceId place() {
    return PlaceId.EXCHANGE;
  }
}
