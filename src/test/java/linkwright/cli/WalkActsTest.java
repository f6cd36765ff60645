package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import linkwright.coach.keys.Act;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever the screen can do, a line can ask for, by its name; nothing of it is no word. */
class WalkActsTest {
  @TempDir private Path folder;
  private Commandline line;

  @BeforeEach
  void begin() {
    line = new Commandline(folder);
  }

  @Test
  void every_act_of_the_screen_can_be_typed() {
    List<String> typed = new ArrayList<>();
    for (Act act : Act.values()) {
      if (act != Act.LEAVE) {
        typed.addAll(List.of(act.id(), "esc"));
      }
    }
    typed.addAll(List.of("esc", "quit"));
    line.typing(typed, "walk", "--plain", "--new", "Window chain");
    assertThat(line.out()).doesNotContain("is no word here");
    assertThat(line.err()).doesNotContain("fault");
  }

  /** Which lot has some was told, and nothing of the other job. */
  @Test
  void another_job_that_lacks_the_same_wire_is_told_where_the_wire_is() {
    for (String job : List.of("Window chain", "Door chain")) {
      String plan =
          line.file(
                  "lack.yaml",
                  """
                  format: 1
                  metal: copper
                  wire: 0.8 mm
                  link: {pattern: scroll, length: 24 mm, width: 5.6 mm}
                  ring: {inside: 4 mm}
                  finished-length: 22 cm
                  clasp: {length: 15 mm, mass: 1.5 g}
                  stock: [100 mm]
                  """)
              .toString();
      line.typing(List.of("esc", "wire", "quit"), "walk", "--plain", "--new", job, "--plan", plan);
    }
    assertThat(line.out()).contains("Another open job lacks ", " of the same wire, this one ");
  }

  @Test
  void places_of_hers_open_and_speak() {
    line.typing(
        List.of(
            "esc", "to-tray", "to-hands", "to-tray", "to-drawer", "to-tray", "to-my-bench", "quit"),
        "walk",
        "--plain",
        "--new",
        "Window chain");
    assertThat(line.out()).doesNotContain("is no word here", "Not for now");
  }

  @Test
  void help_tells_of_words_and_things_and_places_of_the_job() {
    line.typing(
        List.of("esc", "help redo", "help pallion", "places", "repeat", "brief", "quit"),
        "walk",
        "--plain",
        "--new",
        "Window chain");
    assertThat(line.out())
        .contains("one fails and is redone")
        .containsIgnoringCase("pallion (word)")
        .contains("Places of the job");
  }

  /** It tells, and leads nowhere: the card that stands in front stands there still. */
  @Test
  void where_says_where_one_is_and_moves_nothing() {
    line.typing(
        List.of("esc", "bench", "where", "where", "quit"),
        "walk",
        "--plain",
        "--new",
        "Window chain");
    String[] told = line.out().split("(?m)^Here: ", -1);
    assertThat(told).as(line.out()).hasSize(3);
    assertThat(told[1])
        .startsWith("Window chain; step 1 of ")
        .contains("; in front stands: ")
        .doesNotContain("Places of the job");
    assertThat(told[2].lines().findFirst()).isEqualTo(told[1].lines().findFirst());
  }
}
