package linkwright.job;

import java.time.Instant;

/**
 * One line of a job book.
 *
 * @param number counts up from 1 for each device
 * @param at when it was entered, UTC
 * @param device the machine it was entered on
 * @param person who entered it; empty if it was not said
 * @param fact what was entered
 */
public record Entry(int number, Instant at, String device, String person, Fact fact) {
  /** An entry of nobody in particular. */
  public Entry(int number, Instant at, String device, Fact fact) {
    this(number, at, device, "", fact);
  }

  public Entry {
    if (number < 1) {
      throw new IllegalArgumentException("number must be 1 or more, was " + number);
    }
  }

  /** The name by which other entries refer to this one: its device and number. */
  public EntryId id() {
    return new EntryId(device, number);
  }
}
