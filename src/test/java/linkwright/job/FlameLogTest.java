package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import linkwright.routine.WaitId;
import org.junit.jupiter.api.Test;

/** What one book tells of flames and of the last heat, whatever the clock says. */
class FlameLogTest {
  private static final Instant TEN = Instant.parse("2026-03-02T10:00:00Z");
  private static final StepId SOLDER = new StepId("solder");
  private static final StepId JOIN = new StepId("join");
  private static final StepId FILE = new StepId("file");

  private final List<Entry> book = new ArrayList<>();

  /** Enters it so many minutes after ten; the entry's number counts up from 1. */
  private FlameLogTest at(int minutes, Fact fact) {
    Instant when = TEN.plusSeconds(60L * minutes);
    book.add(new Entry(book.size() + 1, when, "bench", "Anna", fact));
    return this;
  }

  private FlameLog log() {
    return JobState.replay(book, routine -> Map.of()).flames();
  }

  /** The number of the entry that was the last heat where the torch solders and joins. */
  private Optional<Integer> heat(boolean oneByOne) {
    return log()
        .lastHeat(step -> step.equals(SOLDER) || step.equals(JOIN), step -> oneByOne)
        .map(heat -> heat.id().number());
  }

  private static Fact lit() {
    return new BenchFact.HotWorkSaid(HotWorkState.LIT, SOLDER, "", Optional.of(List.of()), "");
  }

  private static Fact through(StepId step) {
    return new Fact.PiecesThrough(Map.of(PieceKind.LINK, 1), Stage.SOLDERED, false, step);
  }

  private static Fact wait(StepId step) {
    return new Fact.TimerStarted("Cool", 300, new WaitId("cool"), step, Map.of());
  }

  @Test
  void a_word_is_told_as_it_was_said_under_the_names_of_its_book_and_job() {
    List<EntryId> answered = List.of(ShortBook.id(1));
    at(0, lit());
    at(
        5,
        new BenchFact.HotWorkSaid(
            HotWorkState.SHUT, SOLDER, "all out", Optional.of(answered), "hook"));
    assertThat(log().words("anklet", "Anklet in silver"))
        .containsExactly(
            new FlameWord(
                "anklet",
                "Anklet in silver",
                ShortBook.id(1),
                TEN,
                HotWorkState.LIT,
                "Anna",
                Optional.of(List.of()),
                "anklet"),
            new FlameWord(
                "anklet",
                "Anklet in silver",
                ShortBook.id(2),
                TEN.plusSeconds(300),
                HotWorkState.SHUT,
                "Anna",
                Optional.of(answered),
                "hook"));
  }

  @Test
  void a_clock_that_was_set_back_changes_no_order_of_words() {
    at(0, lit()).at(30, lit()).at(-60, lit()).at(45, lit());
    assertThat(log().said())
        .extracting(FlameLog.Said::at)
        .containsExactly(TEN, TEN.plusSeconds(1800), TEN.plusSeconds(1800), TEN.plusSeconds(2700));
  }

  @Test
  void a_heat_is_never_before_what_was_said_last_and_knows_how_many_words_came_before() {
    at(0, lit()).at(-10, through(SOLDER)).at(20, through(JOIN));
    assertThat(log().worked())
        .isEqualTo(
            Map.of(
                SOLDER, new Heat(ShortBook.id(2), TEN, TEN.minusSeconds(600), 1, 1),
                JOIN,
                    new Heat(ShortBook.id(3), TEN.plusSeconds(1200), TEN.plusSeconds(1200), 2, 1)));
  }

  @Test
  void where_nothing_was_worked_nothing_was_heated() {
    at(0, lit()).at(1, new Fact.StepOpened(SOLDER)).at(2, new Fact.Noted("a little hot"));
    assertThat(heat(true)).isEmpty();
  }

  @Test
  void the_last_heat_is_the_last_count_where_the_torch_burns() {
    at(0, through(SOLDER)).at(1, through(JOIN)).at(2, through(FILE));
    assertThat(heat(false)).contains(2);
    at(3, through(SOLDER));
    assertThat(heat(false)).contains(4);
  }

  /** By the order of the lines: the clock was set back by an hour between the two. */
  @Test
  void the_last_heat_is_the_last_line_though_its_clock_says_earlier() {
    at(0, through(SOLDER)).at(-60, through(JOIN));
    assertThat(heat(false)).contains(2);
    at(-50, wait(SOLDER)).at(-120, through(SOLDER)).at(-119, through(JOIN));
    assertThat(heat(true)).contains(5);
  }

  @Test
  void a_step_done_and_a_wait_begun_are_heats_of_their_own_step() {
    at(0, new Fact.StepOpened(FILE)).at(1, new Fact.StepDone(SOLDER));
    assertThat(heat(false)).contains(2);
    at(2, wait(JOIN));
    assertThat(heat(false)).contains(3);
    at(3, new Fact.TimerStarted("Tea", 300));
    assertThat(heat(false)).as("a timer of her own heats nothing").contains(3);
  }

  @Test
  void what_names_no_step_is_worked_at_the_one_that_is_open() {
    List<Fact> work =
        List.of(
            through(StepId.NONE),
            new Fact.PiecesSentBack(
                PieceKind.LINK, 1, Stage.SOLDERED, Stage.SOLDERED, false, "gap"),
            new Fact.PiecesScrapped(PieceKind.LINK, 1, Stage.SOLDERED, false, "melted"),
            new Fact.WireCut(PieceKind.LINK, 1, 38));
    for (Fact fact : work) {
      book.clear();
      at(0, fact);
      assertThat(log().worked()).as("no step is open: %s", fact).isEmpty();
      at(1, new Fact.StepOpened(SOLDER)).at(2, fact);
      assertThat(log().worked()).as("%s", fact).containsOnlyKeys(SOLDER);
      assertThat(heat(false)).as("%s", fact).contains(3);
    }
    at(3, new Fact.StepOpened(FILE)).at(4, through(SOLDER));
    assertThat(heat(false)).as("the step that a count names comes first").contains(5);
  }

  @Test
  void what_comes_out_of_a_wait_was_heated_before_it_unless_each_piece_is_a_heat() {
    at(0, wait(SOLDER)).at(5, through(SOLDER));
    assertThat(heat(false)).contains(1);
    assertThat(heat(true)).contains(2);
    book.clear();
    at(0, wait(SOLDER)).at(5, new Fact.StepDone(SOLDER));
    assertThat(heat(false)).contains(1);
    assertThat(heat(true)).contains(2);
  }

  @Test
  void links_and_rings_that_come_out_of_a_wait_in_one_act_are_both_taken_out() {
    at(0, wait(SOLDER)).at(5, through(SOLDER)).at(5, through(SOLDER));
    assertThat(heat(false)).contains(1);
    assertThat(heat(true)).contains(3);
    at(6, through(SOLDER));
    assertThat(heat(false)).as("a minute later it was soldered").contains(4);
  }

  @Test
  void what_waits_elsewhere_or_goes_in_or_fails_beside_a_wait_is_a_heat() {
    at(0, wait(JOIN)).at(1, through(SOLDER));
    assertThat(heat(false)).contains(2);
    at(2, wait(JOIN));
    assertThat(heat(false)).contains(3);
    at(3, new Fact.StepOpened(JOIN));
    at(4, new Fact.PiecesScrapped(PieceKind.LINK, 1, Stage.JOINED, false, "melted"));
    assertThat(heat(false)).contains(5);
  }

  @Test
  void metal_that_was_counted_by_mistake_was_heated_all_the_same() {
    at(0, through(SOLDER)).at(1, new Fact.Struck(ShortBook.id(1), "undone"));
    assertThat(heat(false)).contains(1);
  }

  @Test
  void every_watch_that_was_ended_is_kept() {
    at(0, new BenchFact.WatchEnded(ShortBook.id(7), "the fire brigade watches"));
    at(1, new BenchFact.WatchEnded(ShortBook.id(9), "moved outside"));
    assertThat(log().ended()).containsExactlyInAnyOrder(ShortBook.id(7), ShortBook.id(9));
    assertThat(log().worked()).isEmpty();
  }
}
