package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import linkwright.coach.kernel.TrayJob;
import linkwright.coach.tray.TrayWords;
import linkwright.job.ClockMoves;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import org.junit.jupiter.api.Test;

class TrayWordsTest {
  private static TrayJob of(Bencher bench, Instant now) {
    return TrayWords.standing("job", bench.entries(), Bencher.SHELF).at(now, ClockMoves.NONE);
  }

  private static TrayJob of(Bencher bench) {
    return of(bench, bench.now());
  }

  @Test
  void a_job_that_was_planned_and_not_begun_says_so() {
    TrayJob demo = of(Bencher.withTheDemo());
    assertThat(demo.name()).startsWith("Lighthouse keeper's bracelet");
    assertThat(demo.stands()).endsWith("not begun").startsWith("0 of ");
    assertThat(demo.waits()).isEmpty();
    assertThat(demo.closed()).isFalse();
  }

  @Test
  void work_that_was_taken_in_without_a_step_is_not_called_not_begun() {
    Bencher bench = Bencher.withTheDemo();
    List<Entry> entries = new ArrayList<>(bench.entries());
    Fact cut = new Fact.PiecesThrough(Map.of(PieceKind.LINK, 5), Stage.CUT, false, StepId.NONE);
    entries.add(new Entry(entries.size() + 1, bench.now(), "bench", cut));
    TrayJob job = TrayWords.standing("job", entries, Bencher.SHELF).at(bench.now(), ClockMoves.NONE);
    assertThat(job.stands()).endsWith("no step open");
  }

  @Test
  void what_is_to_be_done_again_waits_one_or_many() {
    Bencher bench = Bencher.withTheDemo().press("enter").goTo("cut-blanks");
    bench.type("3").press("space").goTo("anneal-blanks").together();
    bench.goTo("form-links").press("r", "1");
    assertThat(of(bench).waits()).contains("1 link to redo");
    bench.press("r", "1");
    assertThat(of(bench).waits()).contains("2 links to redo");
  }

  @Test
  void a_timer_that_ran_out_is_due() {
    Bencher bench = Bencher.withTheDemo().press("enter").goTo("pickle-wire").press("w");
    assertThat(of(bench).waits()).isEmpty();
    assertThat(of(bench, bench.now().plus(Duration.ofMinutes(9))).waits())
        .isEqualTo(List.of("Pickle the wire is due"));
  }

  @Test
  void an_empty_book_is_no_exception() {
    TrayJob empty = TrayWords.standing("empty", List.of(), Bencher.SHELF).at(Bencher.MORNING, ClockMoves.NONE);
    assertThat(empty.name()).isEqualTo("empty");
    assertThat(empty.stands()).isEqualTo("no plan yet");
  }
}
