package linkwright.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import linkwright.bench.OwnBench;
import linkwright.drawer.Drawer;
import linkwright.hands.Hands;
import linkwright.hands.TaughtJob;
import linkwright.job.Fact;
import linkwright.job.LotFact;
import linkwright.plan.Wishes;
import linkwright.routine.PieceKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What can be looked up, and what of it bears on one job. */
class HandbookTest {
  private static final Handbook SHELF = JobBook.HANDBOOK;

  @ParameterizedTest
  @CsvSource({
    "scroll-and-ring/form-test, Cut and form a test piece",
    "scroll-and-ring/waits/form-test, Cut and form a test piece",
    "scroll-and-ring/no-such-step, scroll-and-ring/no-such-step",
    "no-such-routine/form-test, no-such-routine/form-test",
    "scroll-and-ring, scroll-and-ring",
  })
  void a_step_is_told_by_its_title_and_what_is_no_step_as_it_is(String path, String told) {
    assertThat(SHELF.stepTitle(path)).isEqualTo(told);
  }

  @Test
  void each_is_found_by_its_id_and_no_other() {
    assertThat(SHELF.caution("torch").orElseThrow().id()).isEqualTo("torch");
    assertThat(SHELF.caution("no such")).isEmpty();
    assertThat(SHELF.pattern("scroll").orElseThrow().id()).isEqualTo("scroll");
    assertThat(SHELF.pattern("no such")).isEmpty();
    assertThat(SHELF.routine("figaro").orElseThrow().id()).isEqualTo("figaro");
    assertThat(SHELF.routine("no such")).isEmpty();
    assertThat(SHELF.stages().of("figaro")).containsOnlyKeys(PieceKind.LINK, PieceKind.RING);
    assertThat(SHELF.stages().of("no such")).isEmpty();
  }

  private static TaughtJob taught(String slug, JobBook book) {
    return SHELF.taught(slug, book.entries(), book.state());
  }

  private static List<String> counting(JobBook own, JobBook... others) {
    List<TaughtJob> jobs = new ArrayList<>(List.of(taught("own", own)));
    for (JobBook other : others) {
      jobs.add(taught("other-" + jobs.size(), other));
    }
    return SHELF
        .with(Hands.of(jobs, Set.of()))
        .forJob("own", own.entries())
        .hands()
        .counting()
        .stream()
        .map(TaughtJob::slug)
        .toList();
  }

  private static JobBook job(int afterMinutes, String person) {
    JobBook book = JobBook.scroll(Wishes.common().texts()).after(afterMinutes);
    return book.and(new Fact.SittingStarted(person));
  }

  @Test
  void a_jobs_own_pieces_are_no_earlier_ones_and_only_her_own_work_counts() {
    assertThat(counting(job(10, "Mira"), job(20, "Mira"), job(30, "Jon")))
        .containsExactly("other-1");
    assertThat(counting(job(10, ""), job(20, "Mira"), job(30, "Jon")))
        .containsExactly("other-1", "other-2");
  }

  /** What was worked after a job was closed taught it nothing; once it is opened again it does. */
  @Test
  void of_a_closed_job_only_what_was_worked_before_counts() {
    JobBook closed = job(10, "").and(new Fact.JobClosed(""));
    assertThat(counting(closed, job(5, ""), job(60, ""))).containsExactly("other-1");
    closed.enter(new Fact.JobReopened(""));
    assertThat(counting(closed, job(5, ""), job(60, ""))).containsExactly("other-1", "other-2");
  }

  @Test
  void what_a_book_takes_is_gone_from_the_drawer() {
    OptionalDouble none = OptionalDouble.empty();
    JobBook arrivals = JobBook.of("any");
    arrivals.enter(
        new LotFact.LotArrived(
            "coil",
            "wire",
            "sterling",
            OptionalDouble.of(0.9),
            "",
            "",
            OptionalDouble.of(5000),
            none,
            ""));
    Drawer drawer = Drawer.of(arrivals.entries(), List.of(), List.of(), SHELF.reference());
    JobBook job = JobBook.scroll(Wishes.common().texts());
    job.enter(new LotFact.StockTaken("coil", PieceKind.LINK, OptionalDouble.of(1200), none, ""));
    assertThat(SHELF.with(drawer).drawer().lots().get(0).lengthMm()).hasValue(5000);
    assertThat(SHELF.with(drawer).drawing("job", job.entries()).drawer().lots().get(0).lengthMm())
        .hasValue(3800);
  }

  @Test
  void a_handbook_of_files_alone_knows_no_hands_and_no_drawer() {
    Handbook files =
        new Handbook(
            SHELF.reference(), List.of(), List.of(), List.of(), List.of("told"), OwnBench.NONE);
    assertThat(files.hands().jobs()).isEmpty();
    assertThat(files.drawer().lots()).isEmpty();
    assertThat(files.told()).containsExactly("told");
    assertThat(files.walked(JobBook.of("scroll-and-ring").state())).isEmpty();
    assertThat(PlanDefaults.usualLoss(files)).as("where no routine says").isEqualTo("5 %");
  }

  /** The byzantine loses 3 in a hundred, the double loop-in-loop 10, as their routines say. */
  @Test
  void the_usual_loss_is_told_from_the_least_to_the_most() {
    assertThat(PlanDefaults.usualLoss(SHELF)).isEqualTo("3 % to 10 %");
    Handbook hers = SHELF.with(OwnBench.NONE.with(Map.of("all", 0.08), Map.of(), Map.of()));
    assertThat(PlanDefaults.usualLoss(hers)).isEqualTo("8 %");
  }
}
