package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What is typed and not entered: it waits, is told of, comes back, or is thrown away. */
@Timeout(60)
class DraftWalkTest {
  private static final String BADGE = "typed, not entered: the plan";

  @TempDir private Path folder;
  private Commandline line;
  private Path draft;

  @BeforeEach
  void aPlanIsTypedAndLeft() {
    line = new Commandline(folder);
    line.typing(
        List.of("finished length: 45.5 cm", "esc", "quit"), "walk", "--plain", "--new", "Trace");
    draft = line.home().resolve("drafts/trace.yaml");
    assertThat(draft).as(line.out()).exists();
  }

  private String walk(String... lines) {
    line.typing(List.of(lines), "walk", "--plain", "trace");
    return line.out();
  }

  @Test
  void it_waits_at_the_tray_and_at_the_places_of_the_job() throws IOException {
    assertThat(Files.readString(draft)).contains("45.5 cm");
    line.run("jobs");
    assertThat(line.out()).contains("waits: " + BADGE);
    assertThat(walk("esc", "quit"))
        .contains("Plan, where the work is: not set yet; typed, not entered.")
        .contains(BADGE);
  }

  @Test
  void it_stands_in_the_form_again_and_one_word_throws_it_away() {
    assertThat(walk("?", "throw-away", "quit"))
        .contains("45.5 cm")
        .contains("Thrown away: the plan.");
    assertThat(draft).doesNotExist();
    line.run("jobs");
    assertThat(line.out()).doesNotContain(BADGE);
  }

  @Test
  void the_places_of_the_job_throw_it_away_too() {
    assertThat(walk("esc", "throw-away", "quit")).contains("Thrown away: the plan.");
    assertThat(draft).doesNotExist();
  }

  @Test
  void what_the_disk_does_not_take_is_told_at_once() throws IOException {
    Files.delete(draft);
    Files.delete(draft.getParent());
    Files.writeString(draft.getParent(), "in the way");
    assertThat(walk("finished length: 46 cm", "esc", "quit"))
        .contains("What is typed stays here, but not on the disk: ");
  }

  @Test
  void what_cannot_be_read_again_is_told_as_the_job_is_opened() throws IOException {
    Files.writeString(draft, "format: 1\nforms: {plan");
    assertThat(walk("esc", "quit")).contains("Not all that was typed and not entered can be read");
    assertThat(draft).hasContent("format: 1\nforms: {plan");
  }

  private String asked(String... answers) {
    List<String> lines =
        new ArrayList<>(
            List.of(
                "metal: sterling",
                "thickness: 0.9 mm",
                "link pattern: scroll",
                "link length: 14 mm",
                "link width: 5.6 mm",
                "ring inside: 3 mm",
                "usual loss: 60 %",
                "="));
    lines.addAll(List.of(answers));
    return walk(lines.toArray(String[]::new));
  }

  @Test
  void no_to_what_is_asked_keeps_nothing_and_says_how_to_go_on() {
    assertThat(asked("no", "?", "usual loss: 6 %", "=", "quit"))
        .contains("60 of a hundred links scrapped as a rule?", "Keep it once more if it is so.")
        .contains("Nothing is kept. Set it right", "60 %")
        .contains("The plan is kept.")
        .doesNotContain("“no”");
  }

  @Test
  void yes_to_what_is_asked_keeps_it() {
    assertThat(asked("yes", "quit")).contains("The plan is kept.").doesNotContain("“yes”");
  }
}
