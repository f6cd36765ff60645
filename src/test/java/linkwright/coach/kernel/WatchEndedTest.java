package linkwright.coach.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import linkwright.job.ClockMoves;
import linkwright.job.EntryId;
import linkwright.job.FlameWord;
import linkwright.job.Heat;
import linkwright.job.HotWork;
import linkwright.job.HotWorkState;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WatchEndedTest {
  private static final Instant NOW = Instant.parse("2026-03-02T08:00:00Z");
  private static final Instant LATER = NOW.plus(Duration.ofHours(2));

  /** The clock was set back since, and the program started anew: all lie in the future. */
  @ParameterizedTest
  @CsvSource({"anklet, hook", "hook, anklet"})
  void a_heat_whose_watch_was_ended_hides_no_statement(String heated, String lit) {
    EntryId heat = new EntryId("window", 3);
    EntryId flame = new EntryId("window", 5);
    EntryId shut = new EntryId("window", 6);
    List<HotWork.OfBook> books =
        List.of(
            new HotWork.OfBook(
                heated, List.of(), Optional.of(new Heat(heat, LATER, LATER, 1, 0)), Set.of(heat)),
            new HotWork.OfBook(
                lit,
                List.of(
                    word(lit, flame, HotWorkState.LIT, List.of()),
                    word(lit, shut, HotWorkState.SHUT, List.of(flame))),
                Optional.empty(),
                Set.of()));
    HeatTimes times =
        HeatTimes.NONE.seen(books, HotWork.of(books), ClockMoves.NONE, NOW, NOW, true);
    assertThat(times.begins(from -> HotWork.ended(books, from)))
        .extracting(begin -> begin.from().id())
        .containsExactly(shut);
  }

  private static FlameWord word(
      String book, EntryId id, HotWorkState state, List<EntryId> answers) {
    return new FlameWord(book, book, id, LATER, state, "", Optional.of(answers), book);
  }
}
