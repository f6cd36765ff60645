package linkwright.coach.handbook;

import java.util.List;
import linkwright.coach.content.Part;

/**
 * One thing that can be looked up.
 *
 * @param kind what it is, in a word
 * @param title its name
 * @param parts all that is said of it
 */
public record HandbookEntry(LookupKind kind, String title, List<Part> parts) {
  /** What can be looked up. */
  public enum LookupKind {
    WORD("word"),
    METAL("metal"),
    SOLDER("solder"),
    CLASP("clasp"),
    MARK("mark"),
    LIMIT("limit");

    private final String word;

    LookupKind(String word) {
      this.word = word;
    }

    /** The word for it. */
    public String word() {
      return word;
    }
  }

  public HandbookEntry {
    parts = List.copyOf(parts);
  }
}
