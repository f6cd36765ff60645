package linkwright.standing.sizes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import linkwright.job.Fact;
import linkwright.plan.Wishes;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import linkwright.standing.JobBook;
import org.junit.jupiter.api.Test;

/** Which size is counted next of a chain of 18 long and 18 round links, one after the other. */
class SizeAtBenchTest {
  private static final Stage SORTED = new Stage("sorted");
  private static final StepId ANY = new StepId("any");

  private final JobBook job = JobBook.of("figaro").and(new Fact.PlanSet(Wishes.figaro().texts()));

  private String size(Stage stage) {
    return SizeAtBench.of(job.state(), job.standing(), PieceKind.LINK, stage);
  }

  private List<String> choices(Stage stage) {
    return SizeAtBench.choices(job.state(), job.standing(), PieceKind.LINK, stage);
  }

  private void cut(String size, int count) {
    job.enter(new Fact.WireCut(PieceKind.LINK, count, 20, size));
  }

  private void through(Stage stage, Map<String, Integer> sizes) {
    int count = sizes.values().stream().mapToInt(n -> n).sum();
    job.enter(new Fact.PiecesThrough(Map.of(PieceKind.LINK, count), stage, false, ANY, sizes));
  }

  private void back(String size, int count) {
    job.enter(
        new Fact.PiecesSentBack(
            PieceKind.LINK,
            count,
            Stage.SOLDERED,
            Stage.SOLDERED,
            false,
            "gap",
            linkwright.job.Again.NOT_SAID,
            size));
  }

  private Map<String, Integer> inOrder(int count) {
    return SizeAtBench.inOrder(job.state(), job.standing(), Stage.JOINED, count);
  }

  @Test
  void blanks_are_cut_of_the_first_size_until_it_has_enough() {
    assertThat(choices(Stage.CUT)).containsExactly("long", "round");
    assertThat(size(Stage.CUT)).isEqualTo("long");
    cut("long", 17);
    assertThat(size(Stage.CUT)).isEqualTo("long");
    cut("long", 1);
    assertThat(size(Stage.CUT)).isEqualTo("round");
    cut("round", 18);
    assertThat(size(Stage.CUT)).as("any more are of the last").isEqualTo("round");
  }

  @Test
  void the_size_cut_last_is_gone_on_with() {
    cut("round", 3);
    assertThat(size(Stage.CUT)).isEqualTo("round");
    cut("round", 15);
    assertThat(size(Stage.CUT)).isEqualTo("long");
  }

  @Test
  void the_size_in_hand_goes_before_all_others_where_it_was_taken() {
    cut("long", 4);
    cut("round", 4);
    job.enter(new Fact.PiecesTaken(Map.of(PieceKind.LINK, 2), Stage.SOLDERED, false, "round"));
    assertThat(size(Stage.SOLDERED)).isEqualTo("round");
    job.enter(new Fact.PiecesTaken(Map.of(PieceKind.LINK, 2), Stage.CUT, false, "long"));
    assertThat(size(Stage.CUT)).isEqualTo("long");
    assertThat(size(Stage.SOLDERED)).as("taken there last").isEqualTo("round");
  }

  @Test
  void after_the_cutting_those_that_wait_can_be_counted() {
    assertThat(choices(Stage.SOLDERED)).isEmpty();
    assertThat(size(Stage.SOLDERED)).isEmpty();
    cut("round", 2);
    assertThat(choices(Stage.SOLDERED)).containsExactly("round");
    cut("long", 3);
    assertThat(choices(Stage.SOLDERED)).containsExactly("long", "round");
    assertThat(choices(Stage.PICKLED)).isEmpty();
    assertThat(size(Stage.SOLDERED)).isEqualTo("long");
    through(Stage.SOLDERED, Map.of("round", 1));
    assertThat(size(Stage.SOLDERED)).as("the size counted there last").isEqualTo("round");
    through(Stage.SOLDERED, Map.of("round", 1));
    assertThat(size(Stage.SOLDERED)).isEqualTo("long");
    assertThat(choices(Stage.PICKLED)).containsExactly("round");
  }

  @Test
  void what_is_to_be_done_again_comes_after_what_was_never_done() {
    cut("long", 1);
    cut("round", 2);
    back("long", 1);
    assertThat(choices(Stage.SOLDERED)).containsExactly("long", "round");
    assertThat(size(Stage.SOLDERED)).isEqualTo("round");
    back("round", 2);
    assertThat(size(Stage.SOLDERED)).isEqualTo("long");
  }

  @Test
  void links_of_a_size_that_the_plan_has_no_more_are_still_counted() {
    cut("heart", 2);
    cut("long", 2);
    assertThat(choices(Stage.CUT)).containsExactly("long", "round");
    assertThat(choices(Stage.SOLDERED)).containsExactly("long", "heart");
  }

  @Test
  void where_links_are_alike_or_no_links_there_is_no_size() {
    JobBook scroll = JobBook.scroll(Wishes.common().texts());
    scroll.enter(new Fact.WireCut(PieceKind.LINK, 3, 38));
    assertThat(SizeAtBench.choices(scroll.state(), scroll.standing(), PieceKind.LINK, Stage.CUT))
        .isEmpty();
    assertThat(SizeAtBench.of(scroll.state(), scroll.standing(), PieceKind.LINK, Stage.CUT))
        .isEmpty();
    cut("long", 3);
    for (Stage stage : List.of(Stage.CUT, Stage.SOLDERED)) {
      assertThat(SizeAtBench.of(job.state(), job.standing(), PieceKind.RING, stage)).isEmpty();
      assertThat(SizeAtBench.choices(job.state(), job.standing(), PieceKind.RING, stage)).isEmpty();
    }
  }

  @Test
  void where_no_size_was_said_of_any_link_all_go_together() {
    cut("", 6);
    assertThat(choices(Stage.SOLDERED)).isEmpty();
    assertThat(size(Stage.SOLDERED)).isEmpty();
    assertThat(inOrder(4)).isEmpty();
  }

  /** Five long and three round ones lie sorted: they go on long, round, long, round. */
  @Test
  void from_the_joining_on_sizes_follow_each_other_as_in_the_chain() {
    cut("long", 5);
    cut("round", 3);
    for (Stage stage : List.of(Stage.SOLDERED, Stage.PICKLED, Stage.CHECKED, SORTED)) {
      assertThat(inOrder(1)).isEmpty();
      through(stage, Map.of("long", 5));
      through(stage, Map.of("round", 3));
    }
    assertThat(choices(Stage.JOINED)).containsExactly("long", "round");
    assertThat(size(Stage.JOINED)).as("all together").isEmpty();
    assertThat(inOrder(0)).isEmpty();
    assertThat(inOrder(1)).isEqualTo(Map.of("long", 1));
    assertThat(inOrder(5)).isEqualTo(Map.of("long", 3, "round", 2));
    assertThat(inOrder(20)).isEqualTo(Map.of("long", 5, "round", 3));
    through(Stage.JOINED, Map.of("long", 1));
    assertThat(inOrder(1)).as("one long one hangs already").isEqualTo(Map.of("round", 1));
    assertThat(inOrder(2)).isEqualTo(Map.of("long", 1, "round", 1));
  }

  /** Two long and one round to a repeat. */
  @Test
  void a_size_that_comes_twice_in_a_repeat_goes_twice_as_often() {
    JobBook twice =
        JobBook.of("oval-and-long")
            .and(
                new Fact.PlanSet(
                    Wishes.figaro()
                        .with(
                            linkwright.plan.WishKeys.LINK_REPEAT,
                            "2 long + 1 round ring=2.8 mm blank=12.6 mm inside=3 mm")
                        .texts()));
    twice.enter(new Fact.WireCut(PieceKind.LINK, 9, 38, "long"));
    twice.enter(new Fact.WireCut(PieceKind.LINK, 9, 12.6, "round"));
    assertThat(SizeAtBench.inOrder(twice.state(), twice.standing(), Stage.SOLDERED, 6))
        .isEqualTo(Map.of("long", 4, "round", 2));
  }
}
