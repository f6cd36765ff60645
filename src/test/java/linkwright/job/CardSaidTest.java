package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CardSaidTest {
  private static JobCard said(String key, String text) {
    return new JobCard(Map.of(key, text), false);
  }

  /** Days as ISO 8601 writes them, and as they are written with dots. */
  @ParameterizedTest
  @CsvSource({
    "2026-12-20, 2026-12-20", "20.12.2026, 2026-12-20", "1.2.2027, 2027-02-01",
    "01.02.2027, 2027-02-01", "29.2.2028, 2028-02-29", "' 2026-12-20 ', 2026-12-20"
  })
  void a_day_is_read_in_both_ways(String typed, LocalDate day) {
    assertThat(JobCard.readDay(typed).orThrow()).isEqualTo(day);
    assertThat(said(JobCard.PROMISED, typed).promised()).contains(day);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "soon", "2026-13-01", "31.2.2027", "29.2.2027", "20.12.26"})
  void what_is_no_day_is_told_and_promises_nothing(String typed) {
    assertThat(JobCard.readDay(typed).problem().orElseThrow()).contains("is not a day");
    assertThat(said(JobCard.PROMISED, typed).daysLeft(LocalDate.of(2026, 11, 26))).isEmpty();
  }

  /** Counted on a calendar: 4 days of November and 20 of December. */
  @ParameterizedTest
  @CsvSource({"2026-11-26, 24", "2026-12-20, 0", "2026-12-23, -3"})
  void days_are_left_till_it_is_promised(LocalDate today, long days) {
    assertThat(said(JobCard.PROMISED, "2026-12-20").daysLeft(today)).hasValue(days);
  }

  @Test
  void what_is_owed_is_the_price_less_what_was_paid() {
    JobCard both = new JobCard(Map.of(JobCard.QUOTE, "180 EUR", JobCard.DEPOSIT, "60 EUR"), false);
    assertThat(both.owed()).hasValue(120);
    assertThat(both.currency()).isEqualTo("EUR");
    assertThat(said(JobCard.QUOTE, "180 EUR").owed()).hasValue(180);
    assertThat(said(JobCard.DEPOSIT, "60 EUR").owed()).isEmpty();
    assertThat(said(JobCard.DEPOSIT, "60 EUR").currency()).isEmpty();
  }

  @Test
  void it_wants_a_mark_unless_none_is_said() {
    assertThat(said(JobCard.MARK, "925").wantsMark()).isTrue();
    for (String none : new String[] {"", "  ", "none", "None ", "no mark", "NO", "-"}) {
      assertThat(said(JobCard.MARK, none).wantsMark()).as(none).isFalse();
    }
  }

  @Test
  void the_last_card_holds_and_a_job_put_away_comes_back() {
    JobCard card = JobCard.BLANK.after(new BenchFact.CardSet(Map.of(JobCard.CUSTOMER, "Ada")));
    assertThat(card.of(JobCard.CUSTOMER)).isEqualTo("Ada");
    assertThat(card.of(JobCard.CLASP)).isEmpty();
    JobCard away = card.after(new BenchFact.JobPutAway(true));
    assertThat(away.away()).isTrue();
    assertThat(away.after(new Fact.Noted("lies flat"))).isEqualTo(away);
    JobCard again = away.after(new BenchFact.CardSet(Map.of(JobCard.MARK, "925")));
    assertThat(again.away()).isTrue();
    assertThat(again.said()).containsOnlyKeys(JobCard.MARK);
    assertThat(again.after(new BenchFact.JobPutAway(false)).away()).isFalse();
  }
}
