package linkwright.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import linkwright.coach.Bencher;
import linkwright.coach.kernel.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The first line tells of the fire watch and of the other wait that ends first. */
class HeadTest {
  /** The flame is out after the links were soldered; they are in the pickle. */
  private static Bencher watchAndPickle() {
    Bencher bench = Bencher.withTheDemo().press("enter").goTo("solder-links");
    bench.goTo("cut-blanks").type("4").press("space").goTo("anneal-blanks");
    for (int i = 0; i < 9 && bench.at().waiting() > 0; i++) {
      bench.press("space").pass(Duration.ofMinutes(15));
    }
    bench.goTo("form-links").type("4").press("space").goTo("solder-links");
    bench.press("space").type("4").press("space");
    bench.press("!").pass(Duration.ofSeconds(3)).press("space");
    return bench.goTo("pickle-links").press("space");
  }

  private static String head(Bencher bench) {
    return Shown.draw(bench.model(), Glyphs.FULL).row(0);
  }

  @ParameterizedTest
  @CsvSource({"80, 24", "60, 20", "40, 12", "140, 45"})
  void watch_and_pickle_are_told_beside_each_other_the_watch_first(int width, int height) {
    Bencher bench = watchAndPickle();
    bench.take(new Message.Resized(width, height));
    assertThat(head(bench))
        .contains("step 17 of 28")
        .containsPattern("watch 59:[0-9]{2} .*[78]:[0-9]{2}");
    if (width >= 60) {
      assertThat(head(bench)).contains("Pickle");
    }
  }

  @Test
  void what_is_due_is_told_beside_the_watch() {
    Bencher bench = watchAndPickle().pass(Duration.ofMinutes(9));
    bench.take(new Message.Resized(40, 12));
    assertThat(head(bench)).containsPattern("watch 5[0-9]:[0-9]{2} +due");
    bench.take(new Message.Resized(80, 24));
    assertThat(head(bench)).containsPattern("Fire watch 5[0-9]:[0-9]{2} +Pickle.* is due");
  }

  /** In a low window a sentence took the row of what is still to do, and help said no word. */
  @Test
  void a_short_sentence_leaves_what_is_still_to_do_its_row_in_a_low_window() {
    Bencher bench = Bencher.withTheDemo().press("enter").goTo("cut-blanks");
    bench.take(new Message.Resized(40, 12));
    bench.press("r");
    String shown = Shown.draw(bench.model(), Glyphs.FULL).text();
    assertThat(bench.notice()).hasSizeBetween(40, 76);
    assertThat(shown).contains(bench.notice().substring(0, 20)).contains("9 links, 11 to cut");
  }
}
