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
 * @param answers the words that are over with it; absent in an older book
 * @param of the name of the book that holds these
 */
public record FlameWord(
    String book,
    String job,
    EntryId id,
    Instant at,
    HotWorkState state,
    String person,
    Optional<List<EntryId>> answers,
    String of) {
  public FlameWord {
    answers = answers.map(List::copyOf);
  }

  /** Whether it is a statement that names that word. */
  boolean names(FlameWord word) {
    return state == HotWorkState.SHUT
        && of.equals(word.book())
        && answers.filter(ids -> ids.contains(word.id())).isPresent();
  }

  /**
   * Whether it is of an older book, whose words have no order but that of their lines and times.
   */
  boolean isByTime() {
    return answers.isEmpty();
  }
}
