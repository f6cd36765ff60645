package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.TrayJob;
import linkwright.coach.keys.Act;
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

  /** Nothing in the tray said that a new job had been begun to be typed. */
  @Test
  void what_was_typed_of_a_new_job_stands_in_the_tray_and_can_be_thrown_away() {
    Apprentice bench = withJobs(2);
    assertThat(bench.shown()).doesNotContain("not begun");
    bench.press("n").type("Harbour").press("esc");
    assertThat(bench.shown()).contains("typed, not begun: a new job, “Harbour”");
    bench.press("ctrl-x");
    assertThat(bench.told()).isEqualTo("Thrown away: what was typed of a new job.");
    assertThat(bench.shown()).doesNotContain("Harbour");
    assertThat(bench.press("n").shown()).doesNotContain("Harbour");
    assertThat(bench.type("Quay").press("ctrl-x").shown()).doesNotContain("Quay");
  }

  /** In a name that has begun the key line offered a key that was typed. */
  @Test
  void the_key_of_help_is_told_only_where_it_is_help() {
    Apprentice tray = Apprentice.atTheTray().press("n");
    assertThat(helps(tray)).isTrue();
    tray.type("Harbour");
    assertThat(helps(tray)).isFalse();
    assertThat(tray.press("?").model().held().form().orElseThrow().text("name"))
        .isEqualTo("Harbour?");
    assertThat(helps(tray.press("down"))).isTrue();
  }

  private static boolean helps(Apprentice bench) {
    return Pages.of(bench.model()).open().stream()
        .filter(open -> open.act().filter(Act.HELP::equals).isPresent())
        .anyMatch(open -> open.says().equals("what is it"));
  }

  @Test
  void a_key_that_does_nothing_says_why() {
    assertThat(withJobs(2).press("j").told()).contains("Only a job that is closed is made again");
    Apprentice tests = Apprentice.withAJob(Map.of()).press("t", "p");
    assertThat(tests.told()).doesNotContain("First what is asked here");
  }
}
