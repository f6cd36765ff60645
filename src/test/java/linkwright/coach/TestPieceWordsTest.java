package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import linkwright.job.Fact;
import linkwright.view.Glyphs;
import linkwright.view.Shown;
import org.junit.jupiter.api.Test;

/** What the place of the test pieces says where it can propose no blank. */
class TestPieceWordsTest {
  @Test
  void without_a_plan_it_says_that_there_is_none() {
    assertThat(shown(Bencher.with(new Fact.JobOpened("a", "scroll-and-ring")).press("esc", "t")))
        .contains("There is no plan yet")
        .doesNotContain("known by its measures");
  }

  @Test
  void lighter_wire_asked_for_leads_to_the_plan() {
    Bencher tests = Bencher.withTheDemo().press("t", "n").put("blank", "40 mm");
    tests.put("verdict", "lighter wire").press("ctrl-k");
    assertThat(shown(tests).replaceAll("\\s+", " "))
        .contains("The last piece asks for lighter wire")
        .contains("takes another wire");
  }

  private static String shown(Bencher bench) {
    return Shown.draw(bench.model(), Glyphs.FULL).text();
  }
}
