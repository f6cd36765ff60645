package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Pieces of a trial length that is followed: their wire is gone, though none was entered as cut.
 */
class UncutWireTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();
  private static final StagesByKind ORDER =
      routine ->
          Map.of(
              PieceKind.LINK, Stage.all(List.of("cut", "soldered", "joined", "finished")),
              PieceKind.RING, Stage.all(List.of("cut", "joined", "finished")));

  private final List<Entry> book = new ArrayList<>();

  @BeforeEach
  void open() {
    enter(new Fact.JobOpened("Anklet", "cable"));
  }

  private int enter(Fact fact) {
    int number = book.size() + 1;
    book.add(new Entry(number, Instant.ofEpochSecond(number), "bench", fact));
    return number;
  }

  private JobState state() {
    return JobState.replay(book, ORDER);
  }

  private int hung(int links, int rings) {
    return enter(new Fact.TrialMeasured(links, rings, 2.5, NONE, 52.3, 0, ""));
  }

  private void sample(boolean firstLink) {
    int piece =
        enter(new Fact.TestPieceTried(0.9, 38, Map.of(), NONE, NONE, NONE, List.of("right"), ""));
    enter(new Fact.SampleChosen(ShortBook.id(piece), firstLink));
  }

  private void follow(int trial) {
    enter(new Fact.TrialChosen(ShortBook.id(trial)));
  }

  private void wish(String... keysAndText) {
    Map<String, String> wish = new HashMap<>();
    for (int i = 0; i < keysAndText.length; i += 2) {
      wish.put(keysAndText[i], keysAndText[i + 1]);
    }
    enter(new Fact.PlanSet(wish));
  }

  @Test
  void they_took_the_samples_blank_and_a_coil_of_their_own() {
    wish("wire", "0.9 mm");
    sample(false);
    follow(hung(3, 4));
    assertThat(state().wire().uncut())
        .containsExactly(new UncutWire(OptionalDouble.of(38), 2.5, 4, 3));
    assertThat(state().wire().coils()).isEqualTo(1);
  }

  @Test
  void without_a_sample_their_blank_is_not_known() {
    follow(hung(3, 0));
    assertThat(state().wire().uncut()).containsExactly(new UncutWire(NONE, 2.5, 0, 3));
    assertThat(state().wire().coils()).as("no rings, no coil").isZero();
  }

  @Test
  void a_sample_of_another_wire_or_link_says_nothing_of_their_blank() {
    wish("wire", "0.9 mm", "link.length", "14 mm", "ring.inside", "2.5 mm");
    sample(false);
    wish("wire", "0.9 mm", "link.length", "16 mm", "ring.inside", "2.5 mm");
    follow(hung(3, 4));
    wish("wire", "1 mm", "link.length", "14 mm");
    follow(hung(5, 4));
    assertThat(state().wire().uncut()).extracting(UncutWire::blankMm).containsOnly(NONE);
  }

  @Test
  void another_ring_or_length_of_chain_leaves_it_the_samples_blank() {
    wish("wire", "0.9 mm", "link.length", "14 mm", "ring.inside", "2.5 mm");
    sample(false);
    wish("wire", "0.9 mm", "link.length", "14 mm", "ring.inside", "3 mm", "length", "200 mm");
    follow(hung(3, 4));
    assertThat(state().wire().uncut())
        .extracting(UncutWire::blankMm)
        .containsExactly(OptionalDouble.of(38));
  }

  @Test
  void those_that_were_cut_at_the_bench_are_not_gone_twice() {
    enter(new Fact.WireCut(PieceKind.LINK, 5, 38));
    enter(new Fact.WireCut(PieceKind.RING, 1, 11));
    follow(hung(3, 4));
    assertThat(state().wire().uncut()).containsExactly(new UncutWire(NONE, 2.5, 3, 0));
  }

  @Test
  void where_all_were_cut_nothing_is_gone_besides() {
    enter(new Fact.WireCut(PieceKind.LINK, 5, 38));
    follow(hung(3, 0));
    assertThat(state().wire().uncut()).isEmpty();
  }

  @Test
  void a_length_that_is_chosen_again_is_gone_once() {
    int trial = hung(3, 4);
    follow(trial);
    follow(trial);
    assertThat(state().wire().uncut()).hasSize(1);
    assertThat(state().wire().coils()).isEqualTo(1);
  }

  @Test
  void a_longer_length_adds_what_it_has_more_and_a_coil() {
    follow(hung(3, 4));
    follow(hung(5, 6));
    assertThat(state().wire().uncut())
        .containsExactly(new UncutWire(NONE, 2.5, 4, 3), new UncutWire(NONE, 2.5, 2, 2));
    assertThat(state().wire().coils()).isEqualTo(2);
  }

  @Test
  void a_sample_that_is_link_one_hangs_in_it() {
    sample(true);
    follow(hung(3, 0));
    assertThat(state().wire().uncut()).extracting(UncutWire::links).containsExactly(2);
    assertThat(state().piles().of(PieceKind.LINK).alive()).isEqualTo(3);
  }

  @Test
  void a_length_that_is_not_in_the_book_takes_nothing() {
    follow(99);
    assertThat(state().wire().uncut()).isEmpty();
    assertThat(state().piles().of(PieceKind.LINK).alive()).isZero();
  }

  /** 4 rings of 2.5 mm hung; then others are wished, so that none of the chain's is there. */
  @Test
  void the_same_length_chosen_again_brings_back_rings_that_other_rings_had_put_aside() {
    wish("ring.inside", "2.5 mm");
    int trial = hung(3, 4);
    follow(trial);
    wish("ring.inside", "3 mm");
    assertThat(state().piles().of(PieceKind.RING).alive()).isZero();
    assertThat(state().piles().ringsAside()).isEqualTo(4);
    follow(trial);
    assertThat(state().piles().of(PieceKind.RING).alive()).isEqualTo(4);
    assertThat(state().piles().ringsAside()).isZero();
    assertThat(state().wire().uncut()).hasSize(1);
  }

  @Test
  void another_length_leaves_them_out_of_the_chain() {
    wish("ring.inside", "2.5 mm");
    follow(hung(3, 4));
    wish("ring.inside", "3 mm");
    enter(new Fact.TrialMeasured(3, 2, 3, NONE, 54, 0, ""));
    follow(book.size());
    assertThat(state().piles().of(PieceKind.RING).alive()).isEqualTo(2);
    assertThat(state().piles().ringsAside()).isZero();
  }
}
