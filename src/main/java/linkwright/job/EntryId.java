package linkwright.job;

import java.util.Optional;

/**
 * How one entry names another; stays true when books of two machines are merged.
 *
 * @param device the machine the entry was made on
 * @param number its number there
 */
public record EntryId(String device, int number) {
  /** As it stands in a book: {@code bench-7}. */
  @Override
  public String toString() {
    return device + "-" + number;
  }

  /** Reads {@code bench-7} back; empty if it is not of that shape. */
  static Optional<EntryId> parse(String text) {
    int dash = text.lastIndexOf('-');
    if (dash < 1) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new EntryId(text.substring(0, dash), Integer.parseInt(text.substring(dash + 1))));
    } catch (NumberFormatException notANumber) {
      return Optional.empty();
    }
  }
}
