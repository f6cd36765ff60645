package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.TrayJob;
import org.junit.jupiter.api.Test;

/** A tray that is longer than the window, and what was typed there of a new job. */
class LongTrayTest {
  private static Apprentice withJobs(int count) {
    List<TrayJob> jobs = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      jobs.add(new TrayJob("job" + i, "Job " + i, "open", List.of(), Apprentice.BEGIN, false));
    }
    return Apprentice.atTheTray()
        .take(new Message.TrayRead(jobs, 0, List.of(), Optional.empty(), Optional.empty()));
  }

  private static String chosen(Apprentice bench) {
    bench.press("enter");
    return bench.asked().toString();
  }

  @Test
  void a_page_further_and_to_either_end() {
    assertThat(chosen(withJobs(24).press("page-down"))).contains("job5");
    assertThat(chosen(withJobs(24).press("end"))).contains("job24");
    assertThat(chosen(withJobs(24).press("end", "home"))).contains("job1]");
    assertThat(chosen(withJobs(24).press("page-down", "page-up"))).contains("job1]");
  }

  @Test
  void what_was_typed_of_a_new_job_is_there_when_the_form_is_opened_again() {
    Apprentice bench = withJobs(2).press("n").type("Harbour").press("esc", "n");
    assertThat(bench.shown()).contains("Harbour");
  }

  @Test
  void a_key_that_does_nothing_says_why() {
    assertThat(withJobs(2).press("j").told()).contains("Only a job that is closed is made again");
    Apprentice tests = Apprentice.withAJob(Map.of()).press("t", "p");
    assertThat(tests.told()).doesNotContain("First what is asked here");
  }
}
