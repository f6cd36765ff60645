package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.stream.Collectors;
import linkwright.coach.kernel.BenchBook;
import linkwright.coach.kernel.Message;
import linkwright.plain.PlainLines;
import org.junit.jupiter.api.Test;

/**
 * What waits or burns in another job has its name at the bench, and none where a customer looks.
 */
class OtherJobsTest {
  private static final String OTHER = "Krauss order";

  private static BenchBook book(Bencher other) {
    BenchBook book = BenchBook.of("other", other.state(), Bencher.SHELF);
    return new BenchBook(
        "other", OTHER, false, book.timers(), book.flames(), book.sittings(), book.seenAt(), false);
  }

  private static String waits(Bencher bench) {
    return Pages.of(bench.model()).waits().stream()
        .flatMap(wait -> new PlainLines(act -> "").waiting(wait).stream())
        .collect(Collectors.joining(" "));
  }

  @Test
  void a_wait_has_its_jobs_name_at_the_bench_and_none_at_weigh_in_plan_and_what_goes_out() {
    Bencher other = Bencher.withTheDemo().press("enter").goTo("pickle-wire").press("space");
    Bencher bench = Bencher.withTheDemo().press("enter").seeCautions();
    bench.take(new Message.OthersRead("bench", List.of(book(other))));
    assertThat(waits(bench)).contains("(" + OTHER + ")");
    for (String key : List.of("p", "i")) {
      bench.press("esc", key);
      assertThat(waits(bench)).as(key).contains("(another job)").doesNotContain(OTHER);
    }
    bench.pass(Duration.between(bench.now(), other.now()).plusMinutes(30));
    assertThat(bench.notice()).startsWith("Over: ").contains("another job").doesNotContain(OTHER);
  }
}
