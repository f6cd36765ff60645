package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import linkwright.cli.console.Exit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A bench that cannot be read is not one that nobody described, and nothing goes into it. */
class UnreadBenchTest {
  private static final String UNREAD = "What is known of your bench cannot be read.";

  @TempDir private Path folder;
  private Commandline line;
  private Path bench;

  @BeforeEach
  void begin() throws IOException {
    line = new Commandline(folder);
    bench = Files.createDirectories(line.home()).resolve("bench.yaml");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\0\0\0",
        "format: 1\npersons: [Ida, Berta\n",
        "format: 1\nkerf: [0.2 mm\n  x: : }\n",
        "format: 1\nkerf: [0.2 mm\npersons: [Ida]\n",
        "- a\n- b\n",
        "a: b: c\n"
      })
  void is_told_and_stays_as_it_is(String text) throws IOException {
    Files.writeString(bench, text.repeat(text.equals("\0\0\0") ? 1000 : 1));
    byte[] before = Files.readAllBytes(bench);
    assertThat(line.run("bench")).isEqualTo(Exit.PROBLEMS);
    assertThat(line.out().strip()).isEqualTo(UNREAD);
    assertThat(line.err()).contains("bench.yaml");
    assertThat(line.run("bench", "--set", "kerf=0.3 mm")).isEqualTo(Exit.PROBLEMS);
    assertThat(line.err()).contains("bench.yaml", "Nothing is changed in it.");
    assertThat(line.err().lines()).as(line.err()).hasSize(1);
    assertThat(line.out()).isEmpty();
    assertThat(bench).hasBinaryContent(before);
  }

  @Test
  void is_told_where_a_folder_lies_in_its_place() throws IOException {
    Files.createDirectory(bench);
    assertThat(line.run("bench")).isEqualTo(Exit.PROBLEMS);
    assertThat(line.out().strip()).isEqualTo(UNREAD);
    assertThat(line.err()).contains("is a folder");
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void is_told_where_its_link_leads_to_nothing() throws IOException {
    Path gone = folder.resolve("elsewhere/bench.yaml");
    Files.createSymbolicLink(bench, gone);
    assertThat(line.run("bench")).isEqualTo(Exit.PROBLEMS);
    assertThat(line.out().strip()).isEqualTo(UNREAD);
    assertThat(line.err()).contains(bench + " is a link to " + gone);
    assertThat(line.run("bench", "--set", "kerf=0.3 mm")).isEqualTo(Exit.PROBLEMS);
    assertThat(line.err())
        .contains(bench + " is a link to " + gone, "Nothing is changed in it.")
        .doesNotContain("There is no file");
    assertThat(Files.isSymbolicLink(bench)).isTrue();
    assertThat(Files.exists(gone, LinkOption.NOFOLLOW_LINKS)).isFalse();
  }

  @Test
  void of_which_part_can_be_read_is_told_and_changed() throws IOException {
    Files.writeString(bench, "format: 1\nkerf: 0.4 mm\npersons: {a: b}\n");
    assertThat(line.run("bench")).isEqualTo(Exit.PROBLEMS);
    assertThat(line.out()).contains("0.4 mm").doesNotContain(UNREAD);
    line.run("bench", "--set", "kerf=0.3 mm");
    assertThat(bench).content().contains("kerf: 0.3 mm");
  }

  @Test
  void that_holds_nothing_but_comments_takes_what_is_set() throws IOException {
    Files.writeString(bench, "# mine\n");
    line.run("bench", "--set", "kerf=0.3 mm");
    assertThat(bench).content().contains("# mine", "kerf: 0.3 mm");
  }
}
