package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PilesTest {
  private static final List<String> STAGES =
      List.of("cut", "formed", "soldered", "pickled", "checked", "joined", "finished");
  private static final StagesByKind ORDER = routine -> Map.of("link", STAGES);

  private final List<Entry> book = new ArrayList<>(List.of(entry(1, new Fact.JobOpened("a", "r"))));

  private static Entry entry(int number, Fact fact) {
    return new Entry(number, Instant.ofEpochSecond(number), "bench", fact);
  }

  private PilesTest enter(Fact... facts) {
    for (Fact fact : facts) {
      book.add(entry(book.size() + 1, fact));
    }
    return this;
  }

  private Piles piles() {
    return JobState.replay(book, ORDER).piles();
  }

  private Pile links() {
    return piles().of("link");
  }

  private static Fact cut(int count) {
    return new Fact.WireCut("link", count, 38);
  }

  private static Fact through(int count, String stage) {
    return new Fact.PiecesThrough(Map.of("link", count), stage, false, "step");
  }

  private static Fact again(int count, String stage) {
    return new Fact.PiecesThrough(Map.of("link", count), stage, true, "step");
  }

  private static Fact back(int count, String from, String to, boolean redo) {
    return new Fact.PiecesSentBack("link", count, from, to, redo, "gap");
  }

  private static Fact scrapped(int count, String stage, boolean redo) {
    return new Fact.PiecesScrapped("link", count, stage, redo, "melted");
  }

  @Test
  void blanks_that_are_cut_wait_for_the_next_stage() {
    enter(cut(5), through(2, "formed"));
    assertThat(links().waitingFor("formed")).isEqualTo(3);
    assertThat(links().waitingFor("soldered")).isEqualTo(2);
    assertThat(links().waitingFor("cut")).isZero();
  }

  @Test
  void a_piece_that_fails_goes_to_the_redo_pile_of_its_stage_and_comes_back_through_it() {
    enter(cut(3), through(3, "formed"), through(3, "soldered"), through(3, "pickled"));
    enter(back(2, "checked", "soldered", false));
    assertThat(links().redoAt("soldered")).isEqualTo(2);
    assertThat(links().waitingFor("checked")).isEqualTo(1);

    enter(again(1, "soldered"));
    assertThat(links().redoAt("soldered")).isEqualTo(1);
    assertThat(links().waitingFor("pickled")).isEqualTo(1);
    assertThat(links().alive()).isEqualTo(3);
  }

  @Test
  void a_piece_that_fails_again_stays_one_piece() {
    enter(cut(1), through(1, "formed"), back(1, "soldered", "soldered", false));
    enter(back(1, "soldered", "soldered", true), back(1, "soldered", "soldered", true));
    assertThat(links().redoAt("soldered")).isEqualTo(1);
    assertThat(links().alive()).isEqualTo(1);
    assertThat(links().sentBack()).isEqualTo(3);
  }

  @Test
  void the_first_link_of_the_chain_is_the_sample_and_there_is_one_however_often_it_is_chosen() {
    Fact.SampleChosen right = new Fact.SampleChosen(new EntryId("bench", 2), true);
    enter(right);
    assertThat(links().waitingFor("joined")).isEqualTo(1);
    enter(right, new Fact.SampleChosen(new EntryId("bench", 3), true));
    assertThat(links().alive()).isEqualTo(1);
    enter(new Fact.SampleChosen(new EntryId("bench", 4), false));
    assertThat(links().alive()).isZero();
  }

  @Test
  void more_pieces_than_there_are_cannot_come_through_even_when_an_earlier_entry_is_struck() {
    enter(cut(5), through(5, "formed"), new Fact.Struck(new EntryId("bench", 2), "mistake"));
    assertThat(links().alive()).isZero();
    assertThat(links().through()).isEmpty();
  }

  @Nested
  class InHand {
    @Test
    void what_was_taken_stays_in_hand_until_it_comes_through() {
      enter(cut(5), new Fact.PiecesTaken(Map.of("link", 3), "formed", false));
      enter(through(1, "formed"));
      assertThat(piles().hand().holds("link", "formed")).isEqualTo(2);
      enter(through(2, "formed"));
      assertThat(piles().hand()).isEqualTo(linkwright.job.InHand.EMPTY);
    }

    @Test
    void what_fails_or_is_scrapped_leaves_the_hand() {
      enter(cut(5), new Fact.PiecesTaken(Map.of("link", 2), "formed", false));
      enter(back(1, "formed", "formed", false), scrapped(1, "formed", false));
      assertThat(piles().hand()).isEqualTo(linkwright.job.InHand.EMPTY);
    }

    @Test
    void what_comes_through_elsewhere_is_not_taken_from_the_hand() {
      enter(cut(5), through(2, "formed"), new Fact.PiecesTaken(Map.of("link", 2), "formed", false));
      enter(through(1, "soldered"));
      assertThat(piles().hand().holds("link", "formed")).isEqualTo(2);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void what_was_cut_is_standing_or_to_be_redone_or_scrapped_whatever_is_done(long seed) {
    Random chance = new Random(seed);
    int cut = 0;
    for (int i = 0; i < 400; i++) {
      Fact fact = anything(chance);
      if (fact instanceof Fact.WireCut wire) {
        cut += wire.count();
      }
      enter(fact);
      Pile pile = links();
      assertThat(pile.alive() + pile.scrapped())
          .as("seed %d, entry %d: %s", seed, book.size(), fact)
          .isEqualTo(cut);
      assertThat(pile.standing().values()).as("seed %d", seed).allMatch(count -> count > 0);
      assertThat(pile.redo().values()).as("seed %d", seed).allMatch(count -> count > 0);
    }
  }

  /** Legal or not: a book from two machines may hold acts that did not know of each other. */
  private static Fact anything(Random chance) {
    String stage = STAGES.get(1 + chance.nextInt(STAGES.size() - 1));
    String earlier = STAGES.get(1 + chance.nextInt(STAGES.indexOf(stage)));
    int count = 1 + chance.nextInt(4);
    boolean redo = chance.nextInt(3) == 0;
    return switch (chance.nextInt(8)) {
      case 0, 1 -> cut(count);
      case 2 -> back(count, stage, earlier, redo);
      case 3 -> scrapped(count, stage, redo);
      case 4 -> new Fact.PiecesTaken(Map.of("link", count), stage, redo);
      default -> redo ? again(count, stage) : through(count, stage);
    };
  }
}
