package linkwright.coach.content;

import java.util.List;

/**
 * All that a place has to say at a moment, in the order in which it is read.
 *
 * @param title where one is, in a few words
 * @param parts what is said
 */
public record Content(String title, List<Part> parts) {
  public Content {
    parts = List.copyOf(parts);
  }

  /** A place with these parts. */
  public static Content of(String title, Part... parts) {
    return new Content(title, List.of(parts));
  }
}
