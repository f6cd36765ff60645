package linkwright.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import linkwright.job.Fact;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import org.junit.jupiter.api.Test;

/** 18 long and 18 round links, none of which is lost; links of no said size fill up in order. */
class SizeLeftTest {
  private final JobBook book =
      JobBook.of("figaro")
          .and(new Fact.PlanSet(Wishes.figaro().with(WishKeys.STOCK, "1 m").texts()));

  private void cut(String size, int count) {
    book.enter(new Fact.WireCut(PieceKind.LINK, count, 20, size));
  }

  private void checked(int count) {
    for (Stage stage : List.of(Stage.SOLDERED, Stage.PICKLED, Stage.CHECKED)) {
      book.enter(
          new Fact.PiecesThrough(Map.of(PieceKind.LINK, count), stage, false, new StepId("a")));
    }
  }

  private StillToDo links() {
    return book.standing().left().get(PieceKind.LINK);
  }

  /** Good, in work and still to cut, of long and of round. */
  private List<List<Integer>> counts() {
    return links().sizes().stream()
        .map(size -> List.of(size.good(), size.inWork(), size.toCutOrAsMany()))
        .toList();
  }

  @Test
  void links_of_no_said_size_are_those_named_first_as_far_as_these_lack() {
    cut("", 20);
    assertThat(counts()).containsExactly(List.of(0, 18, 0), List.of(0, 2, 16));
    checked(20);
    assertThat(counts()).containsExactly(List.of(18, 0, 0), List.of(2, 0, 16));
    assertThat(links().more()).isEqualTo(16);
    assertThat(links().goodForChain()).isEqualTo(20);
    assertThat(links().over()).isZero();
    assertThat(links().leastBySize()).containsExactly(0, 16);
  }

  /** 40 are more than both take: what is beyond is of the last. */
  @Test
  void what_is_beyond_all_sizes_is_of_the_last() {
    cut("", 40);
    assertThat(counts()).containsExactly(List.of(0, 18, 0), List.of(0, 22, 0));
    checked(40);
    assertThat(counts()).containsExactly(List.of(18, 0, 0), List.of(22, 0, 0));
    assertThat(links().more()).isZero();
    assertThat(links().over()).as("four more than the chain takes").isEqualTo(4);
  }

  @Test
  void beside_sizes_that_were_said_they_fill_what_these_lack() {
    cut("", 10);
    cut("long", 5);
    cut("round", 20);
    assertThat(counts()).containsExactly(List.of(0, 15, 3), List.of(0, 20, 0));
    assertThat(links().toCut()).hasValue(3);
    cut("heart", 4);
    assertThat(counts())
        .as("of a size that the plan has not")
        .containsExactly(List.of(0, 18, 0), List.of(0, 21, 0));
  }

  /** None makes up for another: 20 good round ones are 18 of the chain, and 18 long ones lack. */
  @Test
  void no_size_makes_up_for_another() {
    cut("round", 20);
    checked(20);
    assertThat(counts()).containsExactly(List.of(0, 0, 18), List.of(20, 0, 0));
    assertThat(links().more()).isEqualTo(18);
    assertThat(links().goodForChain()).isEqualTo(18);
    assertThat(links().over()).isEqualTo(2);
  }

  /** A metre gives 26 blanks of 38 mm or 79 of 12.6. */
  @Test
  void each_size_has_its_own_counts() {
    StillToDo round = links().of("round");
    assertThat(round.wanted()).isEqualTo(18);
    assertThat(round.toCut()).hasValue(18);
    assertThat(round.canCut()).isEqualTo(79);
    assertThat(links().of("long").canCut()).isEqualTo(26);
    assertThat(links().of("heart").wanted()).as("of no such size: all").isEqualTo(36);
    assertThat(links().toCut()).hasValue(36);
  }

  /** Of 18 long ones 4 are good and 3 in work, and no number of blanks is enough: 11 lack. */
  @Test
  void where_no_number_of_blanks_is_enough_as_many_are_cut_as_lack() {
    SizeLeft hopeless = new SizeLeft("long", 18, 4, 3, OptionalInt.empty(), 0);
    SizeLeft known = new SizeLeft("round", 18, 14, 0, OptionalInt.of(5), 0);
    StillToDo left = links().bySize(List.of(hopeless, known));
    assertThat(left.toCut()).isEmpty();
    assertThat(left.toCutBySize()).containsExactly(11, 5);
    assertThat(left.leastBySize()).containsExactly(11, 4);
    assertThat(left.toCutOrAsMany()).isEqualTo(15);
    StillToDo both = links().bySize(List.of(known, known));
    assertThat(both.toCut()).hasValue(10);
    assertThat(both.spares()).isEqualTo(2);
    assertThat(new SizeLeft("a", 18, 17, 3, OptionalInt.empty(), 0).least()).isZero();
    assertThat(new SizeLeft("a", 18, 20, 0, OptionalInt.empty(), 0).more()).isZero();
  }
}
