package linkwright.books;

import java.time.Instant;
import java.util.Map;

/**
 * One entry of a job book as it stands in the file, before the job room gives it a meaning.
 *
 * @param number the entry's number on its device, from 1
 * @param at when it was made
 * @param device the device that made it, not blank
 * @param person who made it, in her own words or an id; empty if it was not said
 * @param kind what sort of entry it is, not blank
 * @param fields everything else, in the order written; values are {@link String}, {@link Long},
 *     {@link Double} (finite), {@link Boolean}, or a list or map of the same. Whole numbers of
 *     other types are widened; anything else is refused. {@code n}, {@code at}, {@code by} and
 *     {@code kind} and the like are taken by the entry itself.
 */
public record BookLine(
    int number, Instant at, String device, String person, String kind, Map<String, Object> fields) {

  /** A line of nobody in particular. */
  public BookLine(int number, Instant at, String device, String kind, Map<String, Object> fields) {
    this(number, at, device, "", kind, fields);
  }

  /** The same entry under another device's name. */
  BookLine madeBy(String another) {
    return new BookLine(number, at, another, person, kind, fields);
  }

  /** Copies the fields, so that a line never changes once made. */
  public BookLine {
    if (number < 1) {
      throw new IllegalArgumentException("number must be 1 or more, not " + number);
    }
    if (device.isBlank()) {
      throw new IllegalArgumentException("device must not be blank: '" + device + "'");
    }
    if (kind.isBlank()) {
      throw new IllegalArgumentException("kind must not be blank: '" + kind + "'");
    }
    for (String taken : BookText.OWN_KEYS) {
      if (fields.containsKey(taken)) {
        throw new IllegalArgumentException("fields must not use the entry's own key " + taken);
      }
    }
    fields = FieldValues.copyOf(fields);
  }
}
