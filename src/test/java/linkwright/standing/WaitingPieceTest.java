package linkwright.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import linkwright.job.Again;
import linkwright.job.BenchFact;
import linkwright.job.Fact;
import linkwright.job.PileSpot;
import linkwright.plan.Wishes;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import org.junit.jupiter.api.Test;

/** The piles of a job, each with the step where it is taken up again. */
class WaitingPieceTest {
  private static final Stage ANNEALED = new Stage("annealed");
  private static final Stage FORMED = new Stage("formed");
  private static final Stage TRUED = new Stage("trued");
  private static final Stage FINISHED = new Stage("finished");
  private static final List<Stage> TO_TRUED =
      List.of(ANNEALED, FORMED, Stage.SOLDERED, Stage.PICKLED, Stage.CHECKED, TRUED);

  private final JobBook book = JobBook.scroll(Wishes.common().texts());
  private final int chain = book.standing().counted().plan().orElseThrow().links();

  private void cut(PieceKind piece, int count) {
    book.enter(new Fact.WireCut(piece, count, 38.1));
  }

  private void through(PieceKind piece, int count, Stage... stages) {
    for (Stage stage : stages) {
      book.enter(new Fact.PiecesThrough(Map.of(piece, count), stage, false, new StepId("a")));
    }
  }

  private void trued(int count) {
    TO_TRUED.forEach(stage -> through(PieceKind.LINK, count, stage));
  }

  private void back(int count, Stage stage) {
    book.enter(new Fact.PiecesSentBack(PieceKind.LINK, count, stage, stage, false, "gap"));
  }

  private List<WaitingPiece> piles(JobBook job) {
    return WaitingPiece.of(
        job.state(),
        JobBook.HANDBOOK.routine(job.state().course().routine()).orElseThrow(),
        job.standing().left());
  }

  private List<String> told() {
    return piles(book).stream()
        .map(
            pile ->
                pile.counted()
                    + pile.step().map(step -> " for " + step.id()).orElse("")
                    + " "
                    + pile.number())
        .toList();
  }

  @Test
  void where_nothing_is_cut_nothing_waits() {
    assertThat(piles(book)).isEmpty();
  }

  /** Ten cut, of which six are annealed, and one of these formed. Steps counted in the routine. */
  @Test
  void piles_are_told_in_the_order_of_the_routine_with_the_step_that_takes_them_up() {
    cut(PieceKind.LINK, 10);
    through(PieceKind.LINK, 6, ANNEALED);
    through(PieceKind.LINK, 1, FORMED);
    cut(PieceKind.RING, 1);
    assertThat(told())
        .containsExactly(
            "4 links for anneal-blanks 14",
            "5 links for form-links 15",
            "1 link for solder-links 16",
            "1 ring for join 21");
    assertThat(piles(book)).allMatch(WaitingPiece::waits).allMatch(WaitingPiece::wanted);
    assertThat(piles(book).get(1).spot())
        .isEqualTo(new PileSpot(PieceKind.LINK, ANNEALED, false, ""));
  }

  @Test
  void what_failed_lies_apart_at_the_step_that_does_it_again() {
    cut(PieceKind.LINK, 6);
    through(PieceKind.LINK, 6, ANNEALED, FORMED);
    back(2, Stage.SOLDERED);
    book.enter(new BenchFact.RedoPlanned(PieceKind.LINK, Stage.SOLDERED, Again.NEXT_HEAT));
    assertThat(told())
        .containsExactly("4 links for solder-links 16", "2 links to redo for solder-links 16");
    WaitingPiece fresh = piles(book).get(0);
    WaitingPiece again = piles(book).get(1);
    assertThat(again.spot()).isEqualTo(new PileSpot(PieceKind.LINK, Stage.SOLDERED, true, ""));
    assertThat(again.again()).isEqualTo(Again.NEXT_HEAT);
    assertThat(fresh.again()).isEqualTo(Again.NOT_SAID);
  }

  @Test
  void where_a_pile_lies_is_told_as_she_said_it() {
    cut(PieceKind.LINK, 6);
    through(PieceKind.LINK, 2, ANNEALED);
    book.enter(new BenchFact.PilePlaced(PieceKind.LINK, Stage.CUT, false, "blue tin", ""));
    assertThat(piles(book)).extracting(WaitingPiece::lies).containsExactly("blue tin", "");
  }

  /** Two links more than the chain takes, all but three joined: one is wanted, two are spare. */
  @Test
  void what_is_beyond_the_chain_is_over_once_the_chain_has_all() {
    cut(PieceKind.LINK, chain + 2);
    trued(chain + 2);
    through(PieceKind.LINK, chain - 1, Stage.JOINED);
    assertThat(told()).contains("3 links for join 21");
    through(PieceKind.LINK, 1, Stage.JOINED);
    assertThat(told()).contains("2 links over for join 21");
  }

  @Test
  void what_failed_is_spare_once_enough_are_good() {
    cut(PieceKind.LINK, chain + 1);
    back(1, ANNEALED);
    trued(chain - 1);
    assertThat(told()).contains("1 link to redo for anneal-blanks 14");
    trued(1);
    assertThat(told()).contains("1 link to redo, spare for anneal-blanks 14");
  }

  /** A joint that fails after the joining is spare where the chain hangs complete without it. */
  @Test
  void what_failed_in_the_chain_is_wanted_until_the_chain_hangs_complete() {
    cut(PieceKind.LINK, chain);
    trued(chain);
    book.enter(
        new Fact.PiecesSentBack(
            PieceKind.LINK, 1, Stage.JOINED, Stage.JOINED, false, "pulled open"));
    through(PieceKind.LINK, chain - 1, Stage.JOINED);
    assertThat(told()).contains("1 link to redo for join 21");
  }

  @Test
  void what_is_finished_waits_for_nothing_and_comes_last() {
    cut(PieceKind.LINK, 3);
    trued(2);
    through(PieceKind.LINK, 2, Stage.JOINED, FINISHED);
    assertThat(told()).containsExactly("1 link for anneal-blanks 14", "2 links 0");
    WaitingPiece finished = piles(book).get(1);
    assertThat(finished.waits()).isFalse();
    assertThat(finished.wanted()).isFalse();
    assertThat(finished.spot()).isEqualTo(new PileSpot(PieceKind.LINK, FINISHED, false, ""));
  }

  /** Each size is a pile of its own, counted by itself. */
  @Test
  void links_of_several_sizes_are_told_size_by_size() {
    JobBook figaro = JobBook.of("figaro").and(new Fact.PlanSet(Wishes.figaro().texts()));
    figaro.enter(new Fact.WireCut(PieceKind.LINK, 3, 38, "long"));
    figaro.enter(new Fact.WireCut(PieceKind.LINK, 2, 12.6, "round"));
    figaro.enter(
        new Fact.PiecesThrough(
            Map.of(PieceKind.LINK, 1), Stage.SOLDERED, false, new StepId("a"), Map.of("round", 1)));
    assertThat(piles(figaro))
        .extracting(WaitingPiece::counted)
        .containsExactly("3 long links", "1 round link", "1 round link");
    assertThat(piles(figaro)).allMatch(WaitingPiece::wanted);
    assertThat(piles(figaro).get(0).what()).isEqualTo("long links");
  }

  /** Eighteen long ones soldered are all that the chain takes, though no round one is there yet. */
  @Test
  void a_size_is_over_by_its_own_count() {
    JobBook figaro = JobBook.of("figaro").and(new Fact.PlanSet(Wishes.figaro().texts()));
    figaro.enter(new Fact.WireCut(PieceKind.LINK, 19, 38, "long"));
    figaro.enter(new Fact.WireCut(PieceKind.LINK, 1, 12.6, "round"));
    figaro.enter(
        new Fact.PiecesThrough(
            Map.of(PieceKind.LINK, 18),
            Stage.SOLDERED,
            false,
            new StepId("a"),
            Map.of("long", 18)));
    assertThat(piles(figaro))
        .extracting(WaitingPiece::counted)
        .containsExactly("1 long link over", "1 round link", "18 long links");
  }
}
