package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import linkwright.coach.kernel.BenchBook;
import linkwright.coach.kernel.Message;
import org.junit.jupiter.api.Test;

/** Where the clock was set, the tray tells to look at what waits in its jobs. */
class ClockToldTest {
  private static BenchBook pickling(Bencher other) {
    return BenchBook.of("rings", other.state(), Bencher.SHELF);
  }

  private static Bencher other() {
    return Bencher.withTheDemo().press("enter").goTo("pickle-wire").press("space");
  }

  @Test
  void a_clock_that_went_back_before_the_start_is_told_in_the_tray_once() {
    Bencher tray = Bencher.atTheTray().setClock(Duration.ofHours(-2));
    Message read = new Message.OthersRead("bench", List.of(pickling(other())));
    tray.take(read);
    assertThat(tray.notice())
        .startsWith("The computer's clock went back since a timer was set in “")
        .endsWith("It begins anew: look at the pieces.");
    tray.press("down").take(read);
    assertThat(tray.notice()).isEmpty();
  }

  @Test
  void one_that_moves_while_the_tray_is_open_is_told_there() {
    Bencher tray = Bencher.atTheTray();
    Bencher other = other();
    tray.pass(Duration.between(tray.now(), other.now()).plusMinutes(1));
    tray.take(new Message.OthersRead("bench", List.of(pickling(other))));
    assertThat(tray.notice()).isEmpty();
    tray.setClock(Duration.ofHours(-2));
    assertThat(tray.notice()).endsWith("Timers go on from where they were: look at the pieces.");
  }
}
