package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import linkwright.routine.StepId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CautionsMetTest {
  private static final Instant MORNING = Instant.parse("2026-03-02T08:00:00Z");

  private final List<Entry> book = new ArrayList<>();

  private CautionsMetTest met(String person, CautionMet how, String digest, int day) {
    Fact seen = new Fact.CautionSeen("torch", how, digest, new StepId("solder"));
    Instant at = MORNING.plus(Duration.ofDays(day));
    book.add(new Entry(book.size() + 1, at, "bench", person, seen));
    return this;
  }

  private CautionsMet told() {
    return JobState.replay(book, any -> Map.of()).cautions();
  }

  private boolean whole(String digest, int day) {
    return whole("Anna", "torch", digest, day);
  }

  private boolean whole(String person, String caution, String digest, int day) {
    return told().comesWhole(person, caution, digest, MORNING.plus(Duration.ofDays(day)));
  }

  @Test
  void comes_whole_the_first_time_and_to_each_person() {
    assertThat(whole("a", 0)).isTrue();
    met("Anna", CautionMet.WHOLE, "a", 0);
    assertThat(whole("a", 0)).isFalse();
    assertThat(whole("Berta", "torch", "a", 0)).isTrue();
    assertThat(whole("Anna", "pickle", "a", 0)).isTrue();
  }

  @Test
  void comes_again_when_its_text_or_its_reason_is_another() {
    met("Anna", CautionMet.WHOLE, "a", 0);
    assertThat(whole("b", 1)).isTrue();
  }

  @Test
  void comes_again_after_14_days_in_which_she_did_not_work_under_it() {
    met("Anna", CautionMet.WHOLE, "a", 0);
    assertThat(whole("a", 14)).isFalse();
    assertThat(whole("a", 15)).isTrue();
    met("Anna", CautionMet.LINE, "a", 10);
    assertThat(whole("a", 24)).isFalse();
    assertThat(whole("a", 25)).isTrue();
  }

  @Test
  void comes_again_after_90_days_however_often_she_works_under_it() {
    met("Anna", CautionMet.WHOLE, "a", 0);
    for (int day = 7; day <= 90; day += 7) {
      met("Anna", CautionMet.LINE, "a", day);
    }
    assertThat(whole("a", 90)).isFalse();
    assertThat(whole("a", 91)).isTrue();
  }

  @Test
  void a_line_alone_never_stands_for_the_whole_card() {
    met("Anna", CautionMet.LINE, "a", 0);
    assertThat(whole("a", 0)).isTrue();
  }

  @Test
  void what_was_met_in_another_book_counts_the_later_of_both() {
    met("Anna", CautionMet.WHOLE, "a", 0);
    CautionsMet one = told();
    book.clear();
    met("Anna", CautionMet.LINE, "a", 20);
    CautionsMet other = told();
    Instant later = MORNING.plus(Duration.ofDays(30));
    assertThat(one.and(other).comesWhole("Anna", "torch", "a", later)).isFalse();
    assertThat(other.and(one).comesWhole("Anna", "torch", "a", later)).isFalse();
    assertThat(one.comesWhole("Anna", "torch", "a", later)).isTrue();
  }

  @Test
  void of_two_books_the_later_whole_card_and_the_later_text_count() {
    met("Anna", CautionMet.WHOLE, "a", 20).met("Anna", CautionMet.LINE, "a", 95);
    CautionsMet one = told();
    book.clear();
    met("Anna", CautionMet.WHOLE, "older", 0);
    CautionsMet other = told();
    Instant later = MORNING.plus(Duration.ofDays(100));
    for (CautionsMet both : List.of(one.and(other), other.and(one))) {
      assertThat(both.comesWhole("Anna", "torch", "a", later)).isFalse();
      assertThat(both.comesWhole("Anna", "torch", "older", later)).isTrue();
    }
  }

  /** Only the two weeks without it bring it back: she was shown this text within 90 days. */
  @ParameterizedTest
  @CsvSource({"a, 15, true", "a, 90, true", "a, 91, false", "b, 15, false"})
  void it_is_read_again_where_its_text_is_the_same_and_was_shown_lately(
      String digest, int day, boolean again) {
    met("Anna", CautionMet.WHOLE, "a", 0);
    Instant now = MORNING.plus(Duration.ofDays(day));
    assertThat(told().isReread("Anna", "torch", digest, now)).isEqualTo(again);
    assertThat(told().isReread("Berta", "torch", digest, now)).isFalse();
    assertThat(told().isReread("Anna", "pickle", digest, now)).isFalse();
  }

  @Test
  void what_was_never_shown_whole_is_not_read_again() {
    met("Anna", CautionMet.LINE, "a", 0);
    assertThat(told().isReread("Anna", "torch", "a", MORNING)).isFalse();
  }

  @Test
  void within_twelve_hours_another_line_would_say_nothing_new() {
    met("Anna", CautionMet.LINE, "a", 0);
    Instant evening = MORNING.plus(Duration.ofHours(12));
    assertThat(told().lately("Anna", "torch", evening.minusSeconds(1))).isTrue();
    assertThat(told().lately("Anna", "torch", evening)).isFalse();
    assertThat(told().lately("Berta", "torch", MORNING)).isFalse();
    assertThat(told().lately("Anna", "pickle", MORNING)).isFalse();
  }
}
