package linkwright.coach.content;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.KeyMap;
import linkwright.view.Glyphs;
import linkwright.view.Screens;
import org.junit.jupiter.api.Test;

/** Which waits stand in the head, where several run. */
class NextWaitsTest {
  private static WaitShown wait(String name, String job, String left) {
    return new WaitShown(job + left, name, job, left, left.isEmpty(), false, "", false);
  }

  private static Page page(WaitShown... waits) {
    return new Page(
        "gate chain",
        Content.of("bench"),
        0,
        Act.MORE,
        List.of(waits),
        "",
        Optional.empty(),
        "",
        "",
        false,
        List.of(),
        Set.of(),
        Optional.empty());
  }

  @Test
  void of_two_by_one_name_the_one_that_ends_sooner_stands_there_with_its_job() {
    WaitShown hers = wait("Pickle", "", "6:00");
    WaitShown others = wait("Pickle", "The anklet", "2:00");
    assertThat(page(others, hers).nextWaits()).containsExactly(others);
  }

  @Test
  void what_is_due_elsewhere_stands_before_one_that_runs() {
    WaitShown hers = wait("Pickle", "", "6:00");
    WaitShown due = wait("Pickle", "The anklet", "");
    assertThat(page(due, hers).nextWaits()).containsExactly(due);
  }

  @Test
  void another_wait_that_ends_sooner_stands_there() {
    WaitShown hers = wait("Tumble", "", "30:00");
    WaitShown others = wait("Pickle", "The anklet", "2:00");
    assertThat(page(others, hers).nextWaits()).containsExactly(others);
  }

  @Test
  void whose_it_is_is_told_before_what_it_is() {
    Page page = page(wait("Pickle the links", "The lighthouse anklet", "2:00"));
    String head =
        Screens.draw(page, 80, 24, Glyphs.FULL, KeyMap.USUAL, OptionalDouble.empty()).row(0);
    assertThat(head).contains("The lightho…: Pickle th… 2:00");
  }
}
