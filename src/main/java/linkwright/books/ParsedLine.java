package linkwright.books;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import linkwright.books.facts.EntryTime;

/**
 * A line of a book as it was taken apart.
 *
 * @param entry the entry it says
 * @param after the check of the entry that the same device made before it, as the line names it;
 *     empty if it names none
 * @param linked whether it is of the second format, where every entry but a device's first names
 *     the one before it
 */
record ParsedLine(BookLine entry, String after, boolean linked) {
  /** Far beyond any book; so that one slip of a digit does not use up all numbers. */
  static final int MOST_NUMBER = 10_000_000;

  private static final Instant EARLIEST = Instant.parse("1970-01-01T00:00:00Z");
  private static final Instant LATEST = Instant.parse("9999-12-31T00:00:00Z");

  /**
   * Takes an entry's own keys out of the fields, which are its own from then on; empty if one is
   * missing or of the wrong kind. The first format had no persons, and its {@code by} was the
   * device.
   */
  static Optional<ParsedLine> of(Map<String, Object> rest) {
    boolean linked = rest.containsKey(BookText.DEVICE);
    Object number = rest.remove("n");
    Object at = rest.remove("at");
    Object by = rest.remove("by");
    Object device = linked ? rest.remove(BookText.DEVICE) : by;
    Object person = linked && by != null ? by : "";
    Object after = linked && rest.containsKey(BookText.AFTER) ? rest.remove(BookText.AFTER) : "";
    Object kind = rest.remove("kind");
    if (number instanceof Long n
        && n >= 1
        && n <= MOST_NUMBER
        && at instanceof String time
        && device instanceof String machine
        && person instanceof String who
        && after instanceof String before
        && kind instanceof String what) {
      try {
        Instant when = EntryTime.read(time);
        boolean within = !when.isBefore(EARLIEST) && when.isBefore(LATEST);
        BookLine entry = new BookLine(n.intValue(), when, machine, who, what, rest);
        return within ? Optional.of(new ParsedLine(entry, before, linked)) : Optional.empty();
      } catch (DateTimeException | IllegalArgumentException wrong) {
        return Optional.empty();
      }
    }
    return Optional.empty();
  }
}
