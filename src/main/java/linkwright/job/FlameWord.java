package linkwright.job;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What was said of hot work in one book.
 *
 * @param book the book's name
 * @param job the job's name
 * @param id the entry
 * @param at when it was said; never before what the same book said earlier, for a clock that was
 *     set back changes no order
 * @param state what was said
 * @param person who said it; may be empty
 * @param answers the words of that book that are over with it; absent in an older book
 */
public record FlameWord(
    String book,
    String job,
    EntryId id,
    Instant at,
    HotWorkState state,
    String person,
    Optional<List<EntryId>> answers) {
  public FlameWord {
    answers = answers.map(List::copyOf);
  }

  /**
   * Whether it is of an older book, whose words have no order but that of their lines and times.
   */
  boolean isByTime() {
    return answers.isEmpty();
  }
}
