package linkwright.job;

import java.util.Optional;
import java.util.regex.Pattern;
import linkwright.quantity.Count;

/**
 * How one entry names another; stays true when books of two machines are merged.
 *
 * @param device the machine the entry was made on
 * @param number its number there
 */
public record EntryId(String device, int number) {
  /** What tells two machines of one name apart: nothing that a person needs to read. */
  private static final Pattern TELLS_APART =
      Pattern.compile("-(?=[a-z]*[2-9])[a-hjkmnp-tv-z2-9]{8}(?=$|~)");

  /** As it stands in a book: {@code bench-k7f3m2q9-7}. */
  public String written() {
    return device + "-" + number;
  }

  /** As it is shown: {@code bench-7}. */
  @Override
  public String toString() {
    return shown(device) + "-" + number;
  }

  /** A device as it is shown, without what tells it from others of its name. */
  public static String shown(String device) {
    return TELLS_APART.matcher(device).replaceFirst("");
  }

  /** Reads back what is written; empty if it is not of that shape. */
  public static Optional<EntryId> parse(String text) {
    int dash = text.lastIndexOf('-');
    return dash < 1
        ? Optional.empty()
        : Count.inDigits(text.substring(dash + 1), 9)
            .map(number -> new EntryId(text.substring(0, dash), number));
  }
}
