package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Which words of hot work stand, whatever the clock said when they were entered. */
class HotWorkTest {
  private static final Instant TEN = Instant.parse("2026-03-02T10:00:00Z");

  @Test
  void a_statement_in_one_book_hides_no_flame_in_another_though_the_clock_was_set_back() {
    FlameWord first = lit("anklet", 1, 0);
    FlameWord out = out("anklet", 2, 30, 1);
    FlameWord later = lit("hook", 1, -60);
    assertThat(HotWork.of(List.of(book("anklet", first, out), book("hook", later))).stand())
        .containsExactly(later);
  }

  @Test
  void a_statement_answers_the_words_that_it_names_and_no_other_of_its_book() {
    EntryId atTheDoor = new EntryId("door", 7);
    FlameWord other =
        new FlameWord("hook", "hook", atTheDoor, TEN, HotWorkState.LIT, "", named(), "hook");
    HotWork now = HotWork.of(List.of(book("hook", lit("hook", 1, 0), other, out("hook", 2, 5, 1))));
    assertThat(now.lit()).contains(other);
  }

  /** The book that says it is lit may be one that another window writes. */
  @Test
  void a_statement_in_another_book_answers_what_it_names_there_and_nothing_in_its_own() {
    FlameWord own = lit("hook", 1, 0);
    FlameWord far = lit("anklet", 1, 0);
    FlameWord out =
        new FlameWord(
            "hook",
            "hook",
            new EntryId("bench", 2),
            TEN,
            HotWorkState.SHUT,
            "",
            named(new EntryId("bench", 1)),
            "anklet");
    HotWork now = HotWork.of(List.of(book("anklet", far), book("hook", own, out)));
    assertThat(now.stand()).containsExactly(own);
    assertThat(now.lastOut().get("anklet")).isEqualTo(out);
  }

  @Test
  void words_of_older_books_are_answered_by_a_later_time_and_stand_at_the_same() {
    HotWork.OfBook lit = book("anklet", old("anklet", 1, 0, HotWorkState.LIT));
    HotWork.OfBook after = book("hook", old("hook", 1, 1, HotWorkState.SHUT));
    HotWork.OfBook together = book("hook", old("hook", 1, 0, HotWorkState.SHUT));
    assertThat(HotWork.of(List.of(lit, after)).open()).isFalse();
    assertThat(HotWork.of(List.of(lit, together)).open()).isTrue();
  }

  private static HotWork.OfBook book(String name, FlameWord... words) {
    return new HotWork.OfBook(name, List.of(words), Optional.empty(), Set.of());
  }

  private static FlameWord lit(String book, int number, int minutes) {
    return word(book, number, minutes, HotWorkState.LIT, named());
  }

  private static FlameWord out(String book, int number, int minutes, int answers) {
    return word(book, number, minutes, HotWorkState.SHUT, named(new EntryId("bench", answers)));
  }

  private static FlameWord old(String book, int number, int minutes, HotWorkState state) {
    return word(book, number, minutes, state, Optional.empty());
  }

  private static Optional<List<EntryId>> named(EntryId... ids) {
    return Optional.of(List.of(ids));
  }

  private static FlameWord word(
      String book, int number, int minutes, HotWorkState state, Optional<List<EntryId>> answers) {
    Instant at = TEN.plusSeconds(60L * minutes);
    return new FlameWord(book, book, new EntryId("bench", number), at, state, "", answers, book);
  }
}
