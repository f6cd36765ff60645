package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PilesTest {
  private static final List<Stage> STAGES =
      Stage.all(List.of("cut", "formed", "soldered", "pickled", "checked", "joined", "finished"));
  private static final StagesByKind ORDER = routine -> Map.of(PieceKind.LINK, STAGES);

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
    return piles().of(PieceKind.LINK);
  }

  private static Fact cut(int count) {
    return new Fact.WireCut(PieceKind.LINK, count, 38);
  }

  private static Fact through(int count, String stage) {
    return new Fact.PiecesThrough(
        Map.of(PieceKind.LINK, count), new Stage(stage), false, new StepId("step"));
  }

  private static Fact again(int count, String stage) {
    return new Fact.PiecesThrough(
        Map.of(PieceKind.LINK, count), new Stage(stage), true, new StepId("step"));
  }

  private static Fact back(int count, String from, String to, boolean redo) {
    return new Fact.PiecesSentBack(
        PieceKind.LINK, count, new Stage(from), new Stage(to), redo, "gap");
  }

  private static Fact scrapped(int count, String stage, boolean redo) {
    return new Fact.PiecesScrapped(PieceKind.LINK, count, new Stage(stage), redo, "melted");
  }

  @Test
  void blanks_that_are_cut_wait_for_the_next_stage() {
    enter(cut(5), through(2, "formed"));
    assertThat(links().waitingFor(new Stage("formed"))).isEqualTo(3);
    assertThat(links().waitingFor(Stage.SOLDERED)).isEqualTo(2);
    assertThat(links().waitingFor(Stage.CUT)).isZero();
  }

  @Test
  void a_piece_that_fails_goes_to_the_redo_pile_of_its_stage_and_comes_back_through_it() {
    enter(cut(3), through(3, "formed"), through(3, "soldered"), through(3, "pickled"));
    enter(back(2, "checked", "soldered", false));
    assertThat(links().redoAt(Stage.SOLDERED)).isEqualTo(2);
    assertThat(links().waitingFor(Stage.CHECKED)).isEqualTo(1);

    enter(again(1, "soldered"));
    assertThat(links().redoAt(Stage.SOLDERED)).isEqualTo(1);
    assertThat(links().waitingFor(Stage.PICKLED)).isEqualTo(1);
    assertThat(links().alive()).isEqualTo(3);
  }

  @Test
  void a_piece_that_fails_again_stays_one_piece() {
    enter(cut(1), through(1, "formed"), back(1, "soldered", "soldered", false));
    enter(back(1, "soldered", "soldered", true), back(1, "soldered", "soldered", true));
    assertThat(links().redoAt(Stage.SOLDERED)).isEqualTo(1);
    assertThat(links().alive()).isEqualTo(1);
    assertThat(links().sentBack()).isEqualTo(3);
  }

  @Test
  void the_first_link_of_the_chain_is_the_sample_and_there_is_one_however_often_it_is_chosen() {
    Fact.SampleChosen right = new Fact.SampleChosen(new EntryId("bench", 2), true);
    enter(right);
    assertThat(links().waitingFor(Stage.JOINED)).isEqualTo(1);
    enter(right, new Fact.SampleChosen(new EntryId("bench", 3), true));
    assertThat(links().alive()).isEqualTo(1);
    enter(new Fact.SampleChosen(new EntryId("bench", 4), false));
    assertThat(links().alive()).isZero();
  }

  @Test
  void where_nothing_is_joined_the_sample_waits_for_the_last_stage() {
    Piles rings = Piles.of(Map.of(PieceKind.LINK, Stage.all(List.of("cut", "formed", "finished"))));
    assertThat(rings.sampled(false, true, "").of(PieceKind.LINK).waitingFor(new Stage("finished")))
        .isEqualTo(1);
    Piles oneStage = Piles.of(Map.of(PieceKind.LINK, Stage.all(List.of("cut"))));
    assertThat(oneStage.sampled(false, true, "").of(PieceKind.LINK).finished()).isEqualTo(1);
    assertThat(Piles.NONE.sampled(false, true, "").of(PieceKind.LINK).alive()).isZero();
    Piles joinedAtOnce =
        Piles.of(Map.of(PieceKind.LINK, Stage.all(List.of("joined", "checked", "finished"))));
    assertThat(
            joinedAtOnce
                .sampled(false, true, "")
                .of(PieceKind.LINK)
                .waitingFor(new Stage("finished")))
        .isEqualTo(1);
  }

  @Test
  void a_sample_that_has_gone_on_is_not_taken_from_where_it_stood() {
    Piles piles = Piles.of(Map.of(PieceKind.LINK, STAGES)).sampled(false, true, "");
    Piles joined = piles.after(through(1, "joined"));
    assertThat(joined.sampled(true, false, "").of(PieceKind.LINK).alive()).isEqualTo(1);
  }

  @Test
  void pieces_that_come_through_the_first_stage_are_begun_but_not_out_of_the_redo_pile() {
    enter(through(2, "cut"));
    assertThat(links().waitingFor(new Stage("formed"))).isEqualTo(2);
    enter(again(2, "cut"));
    assertThat(links().alive()).isEqualTo(2);
  }

  @Test
  void a_kind_that_the_job_has_not_has_an_empty_pile() {
    assertThat(piles().of(new PieceKind("clasp")).stages()).isEmpty();
    assertThat(piles().of(new PieceKind("clasp")).alive()).isZero();
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
      enter(cut(5), new Fact.PiecesTaken(Map.of(PieceKind.LINK, 3), new Stage("formed"), false));
      enter(through(1, "formed"));
      assertThat(piles().hand().holds(PieceKind.LINK, new Stage("formed"))).isEqualTo(2);
      enter(through(2, "formed"));
      assertThat(piles().hand()).isEqualTo(linkwright.job.InHand.EMPTY);
    }

    @Test
    void what_was_taken_to_be_done_again_stays_known_as_that() {
      enter(cut(3), through(3, "formed"), back(3, "soldered", "soldered", false));
      enter(
          new Fact.PiecesTaken(Map.of(PieceKind.LINK, 2), Stage.SOLDERED, true),
          again(1, "soldered"));
      assertThat(piles().hand().redo()).isTrue();
      assertThat(piles().hand().holds(PieceKind.LINK, Stage.SOLDERED)).isEqualTo(1);
      assertThat(piles().hand().holds(PieceKind.LINK, new Stage("formed"))).isZero();
      assertThat(piles().hand().holds(PieceKind.RING, Stage.SOLDERED)).isZero();
    }

    @Test
    void what_fails_or_is_scrapped_leaves_the_hand() {
      enter(cut(5), new Fact.PiecesTaken(Map.of(PieceKind.LINK, 2), new Stage("formed"), false));
      enter(back(1, "formed", "formed", false), scrapped(1, "formed", false));
      assertThat(piles().hand()).isEqualTo(linkwright.job.InHand.EMPTY);
    }

    @Test
    void what_comes_through_elsewhere_is_not_taken_from_the_hand() {
      enter(
          cut(5),
          through(2, "formed"),
          new Fact.PiecesTaken(Map.of(PieceKind.LINK, 2), new Stage("formed"), false));
      enter(through(1, "soldered"));
      assertThat(piles().hand().holds(PieceKind.LINK, new Stage("formed"))).isEqualTo(2);
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
    int at = 1 + chance.nextInt(STAGES.size() - 1);
    String stage = STAGES.get(at).id();
    String earlier = STAGES.get(1 + chance.nextInt(at)).id();
    int count = 1 + chance.nextInt(4);
    boolean redo = chance.nextInt(3) == 0;
    return switch (chance.nextInt(8)) {
      case 0, 1 -> cut(count);
      case 2 -> back(count, stage, earlier, redo);
      case 3 -> scrapped(count, stage, redo);
      case 4 -> new Fact.PiecesTaken(Map.of(PieceKind.LINK, count), new Stage(stage), redo);
      default -> redo ? again(count, stage) : through(count, stage);
    };
  }
}
