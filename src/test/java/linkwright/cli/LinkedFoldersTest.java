package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import linkwright.cli.console.Exit;
import linkwright.files.DraftStore;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * A folder of hers that is a link: followed where it stays in the home, told where it leads out.
 */
@DisabledOnOs(OS.WINDOWS)
class LinkedFoldersTest {
  private static final String LEADS_OUT = "is a link that leads out of your folder";

  @TempDir private Path folder;
  private Commandline line;
  private Path jobs;

  @BeforeEach
  void aHome() {
    line = new Commandline(folder);
    jobs = line.home().resolve("jobs");
  }

  private Path leadingOut(String sub) throws IOException {
    Path outside = Files.createDirectories(folder.resolve("outside-" + sub));
    Files.createDirectories(line.home());
    Files.createSymbolicLink(line.home().resolve(sub), outside);
    return outside;
  }

  @Test
  void jobs_that_a_link_keeps_elsewhere_in_the_home_are_followed() throws IOException {
    line.typing(List.of("quit"), "walk", "--plain", "--new", "Gate");
    Files.move(jobs, line.home().resolve("kept"));
    Files.createSymbolicLink(jobs, Path.of("kept"));

    assertThat(line.run("jobs")).isZero();
    assertThat(line.out()).contains("gate: Gate");
    assertThat(line.run("check")).as(line.out()).isZero();
    assertThat(line.typing(List.of("quit"), "walk", "--plain", "--new", "Fence")).isZero();
    assertThat(line.run("jobs")).isZero();
    assertThat(line.out()).contains("gate: Gate", "fence: Fence");
  }

  @Test
  void jobs_that_a_link_leads_out_are_told_and_nothing_is_written_there() throws IOException {
    Path outside = leadingOut("jobs");
    for (List<String> command :
        List.of(
            List.of("jobs"),
            List.of("check"),
            List.of("doctor"),
            List.of("walk", "--plain"),
            List.of("walk", "--plain", "gate"),
            List.of("walk", "--plain", "--new", "Gate"),
            List.of("plan", "gate"),
            List.of("again", "gate", "--new", "Other"))) {
      assertThat(line.typing(List.of("quit"), command.toArray(String[]::new)))
          .as("%s: %s", command, line.out())
          .isNotZero();
      assertThat(line.out() + line.err())
          .as("%s", command)
          .contains(jobs + " " + LEADS_OUT)
          .doesNotContain("The tray is empty", "No problem found");
    }
    try (Stream<Path> there = Files.list(outside)) {
      assertThat(there).isEmpty();
    }
  }

  @Test
  void data_that_a_link_leads_out_is_told() throws IOException {
    leadingOut("routines");
    assertThat(line.run("check")).isEqualTo(Exit.PROBLEMS);
    assertThat(line.out() + line.err()).contains(line.home().resolve("routines") + " " + LEADS_OUT);
  }

  @Test
  void what_is_typed_is_not_kept_out_of_the_home() throws IOException {
    Path outside = leadingOut("drafts");
    DraftStore drafts = new DraftStore(line.home().resolve("drafts"));
    assertThat(drafts.keep("gate", "plan", Map.of("metal", "silver")))
        .hasValueSatisfying(why -> assertThat(why).contains(LEADS_OUT));
    try (Stream<Path> there = Files.list(outside)) {
      assertThat(there).isEmpty();
    }
  }
}
