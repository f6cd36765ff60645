package linkwright.job;

import java.time.Instant;

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
 */
public record FlameWord(
    String book, String job, EntryId id, Instant at, HotWorkState state, String person) {}
