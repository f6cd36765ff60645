package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import linkwright.cli.console.Exit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What cannot be read is told, never taken for nothing; what cannot be read is not replaced. */
@Timeout(60)
class HiddenFilesTest {
  @TempDir private Path folder;
  private Commandline line;

  @BeforeEach
  void begin() {
    line = new Commandline(folder);
    line.typing(List.of("quit"), "walk", "--plain");
  }

  private Path book() throws IOException {
    try (Stream<Path> books = Files.list(line.home().resolve("jobs"))) {
      return books.filter(each -> each.toString().endsWith(".yaml")).findFirst().orElseThrow();
    }
  }

  @Test
  void jobs_that_cannot_be_looked_through_are_no_empty_tray() throws IOException {
    Files.move(line.home().resolve("jobs"), line.home().resolve("moved"));
    line.file("home/jobs", "a file");
    for (List<String> arguments :
        List.of(List.of("jobs"), List.of("walk", "--plain"), List.of("check"), List.of("doctor"))) {
      assertThat(line.run(arguments.toArray(String[]::new)))
          .as("%s", arguments)
          .isEqualTo(Exit.PROBLEMS);
      assertThat(line.out() + line.err())
          .as("%s", arguments)
          .contains("jobs is not a folder: move it away.")
          .doesNotContain("tray is empty", "No job is in the tray");
    }
    for (String command : List.of("plan gate", "export gate")) {
      assertThat(line.run(command.split(" ", -1))).as(command).isNotZero();
      assertThat(line.err()).as(command).contains("jobs is not a folder: move it away.");
    }
    assertThat(line.start(StartOptions.NONE)).isEqualTo(Exit.PROBLEMS);
    assertThat(line.out() + line.err()).contains("is not a folder").doesNotContain("Links:");
    assertThat(line.home().resolve("jobs")).hasContent("a file");
  }

  @Test
  void a_book_that_cannot_be_read_is_no_job_without_a_plan() throws IOException {
    Files.write(book(), Files.readString(book()).getBytes(StandardCharsets.UTF_16LE));
    assertThat(line.start(StartOptions.NONE)).isEqualTo(Exit.PROBLEMS);
    assertThat(line.out() + line.err())
        .contains("is not written in UTF-8")
        .doesNotContain("no plan yet");
  }

  @Test
  void what_a_book_that_cannot_be_read_taught_and_took_is_told_to_be_missing() throws IOException {
    Files.write(book(), Files.readString(book()).getBytes(StandardCharsets.UTF_16LE));
    for (String command : List.of("hands", "drawer")) {
      assertThat(line.run(command)).as(command).isEqualTo(Exit.PROBLEMS);
      assertThat(line.err()).as(command).contains("cannot be read", "is not written in UTF-8");
    }
  }

  @Test
  void whoever_leaves_with_something_unwritten_is_not_told_that_it_is_in_the_book()
      throws IOException {
    Path lock = Path.of(book().toString().replace(".yaml", ".lock"));
    Files.delete(lock);
    Files.createDirectory(lock);
    line.typing(List.of("note hello", "quit"), "walk", "--plain");
    assertThat(line.out())
        .contains("Not written, and not counted", "could not be written and is not counted")
        .doesNotContain("Left. Everything entered is in the book.");
  }

  @Test
  void files_that_must_be_mended_first_are_not_replaced() throws IOException {
    String hands = "format: 1\nleft-out: [a, b\n";
    Path file = line.file("home/hands.yaml", hands);
    String job = book().getFileName().toString().replace(".yaml", "");
    assertThat(line.run("hands", "--leave-out", job)).isEqualTo(Exit.PROBLEMS);
    assertThat(line.err()).contains("Mend it first");
    assertThat(file).hasContent(hands);
    Path bench = line.home().resolve("bench.yaml");
    byte[] latin = "format: 1\nbench: K\u00fcche\n".getBytes(StandardCharsets.ISO_8859_1);
    Files.write(bench, latin);
    assertThat(line.run("bench", "--set", "kerf=0.3 mm")).isEqualTo(Exit.PROBLEMS);
    assertThat(line.err()).contains("not written in UTF-8", "Nothing is changed in it.");
    assertThat(bench).hasBinaryContent(latin);
    Files.delete(bench);
    Files.createDirectory(bench);
    assertThat(line.run("bench", "--set", "kerf=0.3 mm")).isEqualTo(Exit.PROBLEMS);
    assertThat(line.err()).contains("is a folder");
  }

  @Test
  void what_commands_make_is_its_owners_alone() throws IOException {
    line.run("new-routine", "mine");
    line.run("new-pattern", "my-link");
    line.run("bench", "--set", "kerf=0.3 mm");
    line.run("drawer", "--came", "march", "--mass", "20 g");
    line.run("new-plan", folder.resolve("home/mine.yaml").toString());
    try (Stream<Path> made = Files.walk(line.home())) {
      for (Path each : made.filter(path -> !path.equals(line.home())).toList()) {
        assertThat(Files.getPosixFilePermissions(each))
            .as("%s", each)
            .allMatch(right -> right.name().startsWith("OWNER"));
      }
    }
    assertThat(line.home().resolve("drawer.yaml")).exists();
  }
}
