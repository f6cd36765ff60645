package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReplayTest {
  private static final StagesByKind ORDER =
      routine ->
          Map.of(
              PieceKind.LINK,
              Stage.all(List.of("cut", "formed", "soldered", "checked", "joined", "finished")),
              PieceKind.RING,
              Stage.all(List.of("cut", "joined", "checked", "finished")));

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void a_book_and_more_entries_replay_as_the_more_entries_from_where_the_book_stood(long seed) {
    Random chance = new Random(seed);
    List<Entry> book = book(chance, "bench", 300, false);
    int cut = chance.nextInt(book.size());

    JobState state = JobState.replay(book.subList(0, cut), ORDER);
    for (Entry entry : book.subList(cut, book.size())) {
      state = state.after(entry, ORDER);
    }

    assertThat(state).as("seed %d", seed).isEqualTo(JobState.replay(book, ORDER));
  }

  @ParameterizedTest
  @ValueSource(longs = {11, 12, 13, 14, 15, 16})
  void struck_entries_count_as_if_they_had_never_been_made(long seed) {
    Random chance = new Random(seed);
    List<Entry> book = book(chance, "bench", 200, true);
    Strikes strikes = Strikes.in(book);

    List<Entry> without =
        book.stream()
            .filter(entry -> !strikes.has(entry) && !(entry.fact() instanceof Fact.Struck))
            .toList();

    JobState state = JobState.replay(book, ORDER);
    JobState plain = JobState.replay(without, ORDER);
    assertThat(strikes.struck()).as("seed %d", seed).isNotEmpty();
    assertThat(state.piles()).as("seed %d", seed).isEqualTo(plain.piles());
    assertThat(state.course()).as("seed %d", seed).isEqualTo(plain.course());
    assertThat(state.wire()).as("seed %d", seed).isEqualTo(plain.wire());
    assertThat(state.trials()).as("seed %d", seed).isEqualTo(plain.trials());
    assertThat(state.timers()).as("seed %d", seed).isEqualTo(plain.timers());
    assertThat(state.accounts()).as("seed %d", seed).isEqualTo(plain.accounts());
  }

  @ParameterizedTest
  @ValueSource(longs = {21, 22, 23, 24})
  void which_entries_are_struck_does_not_depend_on_their_order(long seed) {
    Random chance = new Random(seed);
    List<Entry> both = new ArrayList<>(book(chance, "bench", 80, true));
    both.addAll(book(chance, "laptop", 80, true));
    Strikes strikes = Strikes.in(both);
    for (int i = 0; i < 20; i++) {
      Collections.shuffle(both, chance);
      assertThat(Strikes.in(both)).as("seed %d", seed).isEqualTo(strikes);
    }
  }

  @Test
  void books_of_two_machines_put_in_order_of_time_give_one_state() {
    long seed = 31;
    Random chance = new Random(seed);
    List<Entry> bench = book(chance, "bench", 60, true);
    List<Entry> laptop = book(chance, "laptop", 60, true);
    assertThat(JobState.replay(merged(bench, laptop), ORDER))
        .as("seed %d", seed)
        .isEqualTo(JobState.replay(merged(laptop, bench), ORDER));
  }

  @Nested
  class Striking {
    private final Entry cut = at(1, new Fact.WireCut(PieceKind.LINK, 3, 38));
    private final Entry strike = at(2, new Fact.Struck(cut.id(), "undone"));
    private final Entry strikeOfStrike = at(3, new Fact.Struck(strike.id(), "it was right"));

    @Test
    void a_struck_entry_counts_no_more() {
      assertThat(Strikes.in(List.of(cut, strike)).has(cut)).isTrue();
    }

    @Test
    void a_strike_that_was_struck_does_not_count() {
      Strikes strikes = Strikes.in(List.of(cut, strike, strikeOfStrike));
      assertThat(strikes.has(cut)).isFalse();
      assertThat(strikes.has(strike)).isTrue();
    }

    @Test
    void a_third_strike_brings_the_first_back() {
      Entry third = at(4, new Fact.Struck(strikeOfStrike.id(), "no, it was wrong"));
      assertThat(Strikes.in(List.of(cut, strike, strikeOfStrike, third)).has(cut)).isTrue();
    }

    @Test
    void strikes_that_strike_each_other_do_not_count() {
      Entry one = at(1, new Fact.Struck(new EntryId("bench", 2), ""));
      Entry two = at(2, new Fact.Struck(new EntryId("bench", 1), ""));
      Entry self = at(3, new Fact.Struck(new EntryId("bench", 3), ""));
      assertThat(Strikes.in(List.of(one, two, self)).struck()).isEmpty();
    }

    @Test
    void a_strike_from_outside_ends_their_quarrel() {
      Entry one = at(1, new Fact.Struck(new EntryId("bench", 2), ""));
      Entry two = at(2, new Fact.Struck(new EntryId("bench", 1), ""));
      Entry outside = at(3, new Fact.Struck(one.id(), "undone"));
      Strikes strikes = Strikes.in(List.of(one, two, outside));
      assertThat(strikes.struck()).containsExactly(one.id());
    }

    @Test
    void a_strike_counts_once_however_often_it_is_made() {
      Entry twice = at(3, new Fact.Struck(cut.id(), "undone"));
      Entry back = at(4, new Fact.Struck(strike.id(), "it was right"));
      assertThat(Strikes.in(List.of(cut, strike, twice)).has(cut)).isTrue();
      assertThat(Strikes.in(List.of(cut, strike, twice, back)).has(cut)).isTrue();
    }

    @Test
    void a_strike_held_by_one_that_counts_and_one_that_does_not_is_struck() {
      Entry other = at(4, new Fact.Struck(strike.id(), "struck too"));
      Entry ofOther = at(5, new Fact.Struck(other.id(), "no"));
      Strikes strikes = Strikes.in(List.of(cut, strike, strikeOfStrike, other, ofOther));
      assertThat(strikes.has(strike)).isTrue();
      assertThat(strikes.has(other)).isTrue();
      assertThat(strikes.has(strikeOfStrike)).isFalse();
      assertThat(strikes.has(cut)).isFalse();
    }

    @Test
    void a_book_without_strikes_has_none() {
      assertThat(Strikes.in(List.of(cut)).struck()).isEmpty();
    }

    @Test
    void an_undo_and_what_brings_it_back_are_known_by_their_reason() {
      assertThat(Strikes.isOfUndo(new Fact.Struck(cut.id(), Strikes.UNDONE))).isTrue();
      assertThat(Strikes.isOfUndo(new Fact.Struck(cut.id(), Strikes.BROUGHT_BACK))).isTrue();
      assertThat(Strikes.isOfUndo(new Fact.Struck(cut.id(), "miscounted"))).isFalse();
      assertThat(Strikes.isOfUndo(cut.fact())).isFalse();
    }

    @Test
    void a_strike_of_an_entry_that_is_not_there_changes_nothing() {
      Entry lost = at(2, new Fact.Struck(new EntryId("gone", 9), ""));
      assertThat(JobState.replay(List.of(cut, lost), ORDER).wire().usedMm(PieceKind.LINK))
          .isEqualTo(114);
    }
  }

  private static Entry at(int number, Fact fact) {
    return new Entry(number, Instant.ofEpochSecond(1000 + number), "bench", fact);
  }

  private static List<Entry> merged(List<Entry> one, List<Entry> other) {
    List<Entry> all = new ArrayList<>(one);
    all.addAll(other);
    all.sort(
        Comparator.comparing(Entry::at)
            .thenComparing(Entry::device)
            .thenComparingInt(Entry::number));
    return all;
  }

  private static List<Entry> book(Random chance, String device, int entries, boolean strikes) {
    List<Entry> book = new ArrayList<>();
    book.add(new Entry(1, Instant.ofEpochSecond(0), device, new Fact.JobOpened("a", "r")));
    long second = 0;
    for (int number = 2; number <= entries; number++) {
      second += chance.nextInt(600);
      Fact fact =
          strikes && chance.nextInt(5) == 0
              ? new Fact.Struck(new EntryId(device, 1 + chance.nextInt(number - 1)), "undone")
              : anything(chance, new EntryId(device, number - 1));
      book.add(new Entry(number, Instant.ofEpochSecond(second), device, fact));
    }
    return book;
  }

  private static Fact anything(Random chance, EntryId last) {
    String stage = List.of("formed", "soldered", "checked", "joined").get(chance.nextInt(4));
    int count = 1 + chance.nextInt(3);
    return switch (chance.nextInt(16)) {
      case 0, 1 -> new Fact.WireCut(PieceKind.LINK, count, 38.5);
      case 2, 3 ->
          new Fact.PiecesThrough(
              Map.of(PieceKind.LINK, count), new Stage(stage), false, new StepId("step-" + stage));
      case 4 ->
          new Fact.PiecesSentBack(
              PieceKind.LINK, count, new Stage(stage), Stage.SOLDERED, false, "gap");
      case 5 -> new Fact.PiecesScrapped(PieceKind.LINK, count, new Stage(stage), false, "melted");
      case 6 -> new Fact.StepOpened(new StepId("step-" + stage));
      case 7 -> new Fact.SittingStarted("");
      case 8 -> new Fact.SteppedAway(true, true, true);
      case 9 -> new Fact.TimerStarted("pickle", 480);
      case 10 -> new Fact.TimerAnswered(last);
      case 11 -> new Fact.MetalWeighedOut(count, "wire");
      case 12 -> new Fact.CautionSeen("torch");
      case 13 -> new Fact.WireAdded(PieceKind.LINK, 0.9, 100 * count, "soft", "b");
      case 14 -> new Fact.SampleChosen(last, chance.nextBoolean());
      default ->
          new Fact.TestPieceTried(
              0.9,
              38,
              Map.of(),
              OptionalDouble.of(14),
              OptionalDouble.empty(),
              OptionalDouble.empty(),
              List.of("longer"),
              "");
    };
  }
}
