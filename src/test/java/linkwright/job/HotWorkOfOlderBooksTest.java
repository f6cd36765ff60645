package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Words whose statements name none, and what a bench is told of flames, kilns and watches. */
class HotWorkOfOlderBooksTest {
  private static final Instant TEN = Instant.parse("2026-03-02T10:00:00Z");

  private static FlameWord word(
      String book, String device, int number, int minutes, HotWorkState state, boolean older) {
    Optional<List<EntryId>> answers = older ? Optional.empty() : Optional.of(List.of());
    Instant at = TEN.plusSeconds(60L * minutes);
    return new FlameWord(book, book, new EntryId(device, number), at, state, "", answers, book);
  }

  private static FlameWord old(String book, int number, int minutes, HotWorkState state) {
    return word(book, "bench", number, minutes, state, true);
  }

  private static FlameWord named(String book, int number, int minutes, HotWorkState state) {
    return word(book, "bench", number, minutes, state, false);
  }

  private static HotWork.OfBook book(String name, FlameWord... words) {
    return new HotWork.OfBook(name, List.of(words), Optional.empty(), Set.of());
  }

  private static List<FlameWord> stand(HotWork.OfBook... books) {
    return HotWork.of(List.of(books)).stand();
  }

  @Test
  void in_one_book_a_later_line_answers_whatever_the_clock_says() {
    FlameWord lit = old("anklet", 1, 0, HotWorkState.LIT);
    FlameWord shut = old("anklet", 2, -30, HotWorkState.SHUT);
    assertThat(stand(book("anklet", lit, shut))).isEmpty();
  }

  @Test
  void in_one_book_an_earlier_line_answers_nothing_whatever_the_clock_says() {
    FlameWord shut = old("anklet", 1, 30, HotWorkState.SHUT);
    FlameWord lit = old("anklet", 2, 0, HotWorkState.LIT);
    assertThat(stand(book("anklet", shut, lit))).containsExactly(lit);
  }

  @Test
  void lighting_one_flame_puts_out_no_other() {
    FlameWord first = old("anklet", 1, 0, HotWorkState.LIT);
    FlameWord second = old("hook", 1, 5, HotWorkState.LIT);
    assertThat(stand(book("anklet", first), book("hook", second))).containsExactly(first, second);
    FlameWord again = old("anklet", 2, 9, HotWorkState.LIT);
    assertThat(stand(book("anklet", first, again))).containsExactly(first, again);
  }

  @Test
  void a_statement_that_names_none_answers_newer_words_of_its_own_machine_alone() {
    FlameWord lit = named("anklet", 1, 0, HotWorkState.LIT);
    assertThat(stand(book("anklet", lit, old("anklet", 2, 5, HotWorkState.SHUT)))).isEmpty();
    FlameWord atTheDoor = word("anklet", "door", 2, 5, HotWorkState.SHUT, true);
    assertThat(stand(book("anklet", lit, atTheDoor))).containsExactly(lit);
    assertThat(stand(book("anklet", lit), book("hook", old("hook", 1, 5, HotWorkState.SHUT))))
        .containsExactly(lit);
  }

  @Test
  void a_statement_that_names_others_answers_no_word_by_its_line() {
    FlameWord lit = named("anklet", 1, 0, HotWorkState.LIT);
    FlameWord older = old("anklet", 2, 1, HotWorkState.LIT);
    FlameWord shut = named("anklet", 3, 5, HotWorkState.SHUT);
    assertThat(stand(book("anklet", lit, older, shut))).containsExactly(lit, older);
  }

  @Test
  void of_two_later_statements_elsewhere_the_earlier_answered() {
    FlameWord late = old("hook", 1, 20, HotWorkState.SHUT);
    FlameWord soon = old("brooch", 1, 10, HotWorkState.SHUT);
    HotWork now =
        HotWork.of(
            List.of(
                book("anklet", old("anklet", 1, 0, HotWorkState.LIT)),
                book("hook", late),
                book("brooch", soon)));
    assertThat(now.lastOut()).containsEntry("anklet", soon);
  }

  @Test
  void what_stands_longest_stands_first() {
    FlameWord late = named("anklet", 1, 20, HotWorkState.LIT);
    FlameWord early = named("hook", 1, 5, HotWorkState.LIT);
    assertThat(stand(book("anklet", late), book("hook", early))).containsExactly(early, late);
  }

  @Test
  void a_kiln_is_no_flame_and_a_flame_no_kiln() {
    FlameWord kiln = named("anklet", 1, 0, HotWorkState.HOT);
    FlameWord flame = named("anklet", 2, 5, HotWorkState.LIT);
    HotWork both = HotWork.of(List.of(book("anklet", kiln, flame)));
    assertThat(both.lit()).contains(flame);
    assertThat(both.hot()).contains(kiln);
    HotWork kilnAlone = HotWork.of(List.of(book("anklet", kiln)));
    assertThat(kilnAlone.lit()).isEmpty();
    assertThat(kilnAlone.open()).isTrue();
    assertThat(kilnAlone.isOut()).as("a kiln asks for no watch").isFalse();
  }

  @Test
  void a_watch_is_due_once_what_was_lit_is_out_and_nothing_else_is_lit() {
    FlameWord lit = old("anklet", 1, 0, HotWorkState.LIT);
    FlameWord shut = old("anklet", 2, 5, HotWorkState.SHUT);
    assertThat(HotWork.of(List.of(book("anklet", lit, shut))).isOut()).isTrue();
    assertThat(HotWork.of(List.of(book("anklet", lit))).isOut()).isFalse();
    assertThat(HotWork.of(List.of(book("anklet", shut))).isOut()).isFalse();
    FlameWord elsewhere = named("hook", 1, 9, HotWorkState.LIT);
    assertThat(HotWork.of(List.of(book("anklet", lit, shut), book("hook", elsewhere))).isOut())
        .isFalse();
    assertThat(HotWork.NOT_KNOWN.isOut()).isFalse();
  }

  @Test
  void something_was_heated_where_a_count_came_after_the_last_lighting() {
    FlameWord lit = named("anklet", 1, 0, HotWorkState.LIT);
    FlameWord again = named("anklet", 5, 60, HotWorkState.LIT);
    assertThat(heated(1, lit)).containsExactly("anklet");
    assertThat(heated(0, lit)).as("counted before it was lit").isEmpty();
    assertThat(heated(1, lit, again)).as("lit again and nothing counted since").isEmpty();
    assertThat(heated(2, lit, again)).containsExactly("anklet");
    assertThat(HotWork.of(List.of(book("anklet", lit))).heated()).isEmpty();
  }

  /** Which books were heated in, if so many words had been said at the last count. */
  private static Set<String> heated(int words, FlameWord... said) {
    Heat heat = new Heat(new EntryId("bench", 9), TEN, TEN, 1, words);
    return HotWork.of(
            List.of(new HotWork.OfBook("anklet", List.of(said), Optional.of(heat), Set.of())))
        .heated();
  }

  @Test
  void a_watch_was_ended_where_its_own_book_says_so_of_the_entry_it_began_with() {
    EntryId begin = new EntryId("bench", 4);
    List<HotWork.OfBook> books =
        List.of(
            book("hook"), new HotWork.OfBook("anklet", List.of(), Optional.empty(), Set.of(begin)));
    assertThat(HotWork.ended(books, new HotWork.From("anklet", begin, TEN))).isTrue();
    assertThat(HotWork.ended(books, new HotWork.From("hook", begin, TEN))).isFalse();
    EntryId other = new EntryId("bench", 5);
    assertThat(HotWork.ended(books, new HotWork.From("anklet", other, TEN))).isFalse();
  }
}
