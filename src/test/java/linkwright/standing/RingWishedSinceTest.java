package linkwright.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** A ring that is wished after a trial length hung with another. */
class RingWishedSinceTest {
  private static final Map<String, String> WISH =
      Wishes.common().with(WishKeys.STOCK, "3 m").texts();
  private static final Map<String, String> OTHER =
      Wishes.common().with(WishKeys.STOCK, "3 m").with(WishKeys.RING_INSIDE, "4 mm").texts();

  private final JobBook book = JobBook.scroll(WISH);
  private final EntryId trial =
      book.enter(new Fact.TrialMeasured(3, 4, 2.5, OptionalDouble.empty(), 46, 0, ""));

  RingWishedSinceTest() {
    book.enter(new Fact.TrialChosen(trial));
  }

  private int good() {
    return rings(book.standing()).good();
  }

  private static StillToDo rings(Standing standing) {
    return standing.left().get(PieceKind.RING);
  }

  private double leftMm() {
    return WireStand.leftMm(book.standing().wire().orElseThrow().links());
  }

  @Test
  void makes_those_that_hung_no_part_of_the_chain() {
    assertThat(good()).isEqualTo(4);
    StillToDo typed = rings(Standing.ofTyped(OTHER, book.state(), JobBook.HANDBOOK));
    assertThat(typed.more()).as("before it is kept").isEqualTo(typed.wanted());
    book.enter(new Fact.PlanSet(OTHER));
    assertThat(good()).isZero();
    assertThat(rings(book.standing()).scrapped()).as("none was spoilt").isZero();
  }

  @Test
  void leaves_their_links_good_and_to_be_joined() {
    assertThat(waiting(Stage.JOINED)).isZero();
    book.enter(new Fact.PlanSet(OTHER));
    assertThat(waiting(Stage.JOINED)).isEqualTo(3);
    assertThat(book.state().piles().toOpen()).isEqualTo(3);
    assertThat(book.standing().left().get(PieceKind.LINK).good()).isEqualTo(3);
    book.enter(new Fact.PlanSet(WISH));
    assertThat(waiting(Stage.JOINED)).isZero();
    assertThat(book.state().piles().toOpen()).isZero();
  }

  @Test
  void leaves_what_the_trial_would_cut_to_as_it_was() {
    double lengthMm = row().plan().orElseThrow().lengthMm();
    book.enter(new Fact.PlanSet(OTHER));
    assertThat(book.standing().counted().plan().orElseThrow().lengthMm()).isNotEqualTo(lengthMm);
    assertThat(row().plan().orElseThrow().lengthMm()).isEqualTo(lengthMm);
    assertThat(row().followed()).isTrue();
  }

  private int waiting(Stage stage) {
    return book.state().piles().of(PieceKind.LINK).waitingFor(stage);
  }

  private TrialLength row() {
    return TrialLength.of(book.standing(), book.state(), JobBook.HANDBOOK).get(0);
  }

  @Test
  void counts_them_again_where_the_wish_goes_back_or_they_are_followed_after_all() {
    book.enter(new Fact.PlanSet(OTHER));
    book.enter(new Fact.PlanSet(WISH));
    assertThat(good()).isEqualTo(4);
    double left = leftMm();
    book.enter(new Fact.PlanSet(OTHER));
    book.enter(new Fact.TrialChosen(trial));
    assertThat(good()).isEqualTo(4);
    assertThat(leftMm()).as("made once").isCloseTo(left, Offset.offset(1e-9));
  }

  @Test
  void changes_nothing_where_the_same_ring_is_typed_otherwise() {
    book.enter(
        new Fact.PlanSet(
            Wishes.common()
                .with(WishKeys.STOCK, "3 m")
                .with(WishKeys.RING_INSIDE, "2.50 mm")
                .texts()));
    assertThat(good()).isEqualTo(4);
  }

  @Test
  void takes_no_wire_that_is_gone_already() {
    double before = leftMm();
    book.enter(new Fact.PlanSet(OTHER));
    assertThat(leftMm()).isCloseTo(before, Offset.offset(1e-9));
  }

  @Test
  void nor_does_another_link() {
    JobBook made = JobBook.scroll(WISH);
    OptionalDouble none = OptionalDouble.empty();
    EntryId piece =
        made.enter(
            new Fact.TestPieceTried(
                0.9, 38, Map.of(), OptionalDouble.of(14), none, none, List.of(), ""));
    made.enter(new Fact.SampleChosen(piece, false));
    EntryId hung = made.enter(new Fact.TrialMeasured(3, 4, 2.5, none, 46, 0, ""));
    made.enter(new Fact.TrialChosen(hung));
    double before = WireStand.leftMm(made.standing().wire().orElseThrow().links());
    made.enter(
        new Fact.PlanSet(
            Wishes.common()
                .with(WishKeys.STOCK, "3 m")
                .with(WishKeys.LINK_BLANK, "45 mm")
                .texts()));
    assertThat(WireStand.leftMm(made.standing().wire().orElseThrow().links()))
        .isCloseTo(before, Offset.offset(1e-9));
  }
}
