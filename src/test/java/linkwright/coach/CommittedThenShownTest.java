package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linkwright.coach.content.Page;
import linkwright.job.Fact;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is shown is what is kept, whichever write fails and however long one takes. */
class CommittedThenShownTest {
  /** The bench at length, then every other place of the job. */
  private static final String AT_THE_BENCH =
      "space space 3 space right space space space space left space u z t r 1 space s esc f space y"
          + " space space";

  private static final String ROUND =
      "esc t n 4 2 space m m enter enter enter 1 5 space m m ctrl-k s esc w c ctrl-k u n ctrl-k esc"
          + " esc k n h i ctrl-k x w h y ctrl-k u esc m n a enter 8 space m i n ctrl-k enter esc i n"
          + " 9 space g ctrl-k ctrl-k u esc c enter enter esc r enter esc esc p esc b space";

  private static Bencher begun() {
    return Bencher.withTheDemo().press("b").goTo("cut-blanks");
  }

  private static FaultyDisk without(String script) {
    FaultyDisk disk = new FaultyDisk(begun(), -1, false);
    for (String key : script.split(" ", -1)) {
      disk.press(key);
    }
    return disk;
  }

  @ParameterizedTest
  @ValueSource(strings = {AT_THE_BENCH, ROUND})
  void each_single_write_that_fails_counts_nothing_and_is_tried_again_by_one_key(String script) {
    FaultyDisk whole = without(script);
    assertThat(whole.writes()).as("the script writes").isGreaterThan(5);
    for (int fails = 0; fails < whole.writes(); fails++) {
      FaultyDisk disk = new FaultyDisk(begun(), fails, false);
      int failures = 0;
      for (String key : script.split(" ", -1)) {
        Page before = disk.page();
        List<Fact> book = List.copyOf(disk.book());
        disk.press(key);
        if (disk.failed()) {
          failures++;
          assertThat(disk.book()).as("write %d", fails).isEqualTo(book);
          assertThat(disk.page().chain()).isEqualTo(before.chain());
          assertThat(disk.page().still()).isEqualTo(before.still());
          disk.press("r");
          assertThat(disk.failed()).as("another key answers nothing").isTrue();
          disk.press("space");
        }
      }
      assertThat(failures).as("write %d fails once", fails).isEqualTo(1);
      assertThat(disk.book()).as("write %d", fails).isEqualTo(whole.book());
      assertThat(disk.page()).as("write %d", fails).isEqualTo(whole.page());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {AT_THE_BENCH, ROUND})
  void keys_pressed_while_a_write_is_slow_wait_and_are_read_against_what_it_leads_to(
      String script) {
    FaultyDisk whole = without(script);
    FaultyDisk slow = new FaultyDisk(begun(), -1, true);
    int between = 0;
    for (String key : script.split(" ", -1)) {
      Page before = slow.page();
      boolean waited = slow.waits();
      slow.press(key);
      if (waited) {
        assertThat(slow.page().chain()).isEqualTo(before.chain());
        assertThat(slow.page().body()).isEqualTo(before.body());
      }
      if (slow.waits() && ++between % 3 == 0) {
        slow.answer();
      }
    }
    while (slow.waits()) {
      slow.answer();
    }
    assertThat(slow.book()).isEqualTo(whole.book());
    assertThat(slow.page()).isEqualTo(whole.page());
  }

  @Test
  void what_is_given_up_was_never_there() {
    FaultyDisk disk = new FaultyDisk(begun(), 0, false);
    Page before = disk.page();
    disk.press("space");
    assertThat(disk.failed()).isTrue();
    disk.press("esc");
    assertThat(disk.book()).isEmpty();
    assertThat(disk.page().body()).isEqualTo(before.body());
    assertThat(disk.page().told()).contains("not entered");
  }
}
