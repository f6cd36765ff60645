package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import linkwright.books.BookFile;
import linkwright.books.EntryLines;
import linkwright.cli.console.Exit;
import linkwright.job.Entry;
import linkwright.job.Fact;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(60)
class DoctorCommandTest {
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
  void says_of_each_thing_that_it_is_well_and_leaves_nothing_behind() throws IOException {
    assertThat(line.run("doctor")).as(line.out()).isZero();
    assertThat(line.out())
        .contains("good:  Your folder is " + line.home())
        .contains("good:  The disk has room: ")
        .contains("good:  The lock keeps a second program out.")
        .contains("good:  An entry is written and synced in ")
        .contains("good:  Your other files: nothing is wrong in them.")
        .contains("good:  1 book, 2 entries: nothing is missing, moved or changed.")
        .contains("good:  The clock is not behind the last entry.")
        .contains("It writes job books of format 2")
        .doesNotContain("wrong:");
    try (Stream<Path> left = Files.list(line.home())) {
      assertThat(left.map(each -> each.getFileName().toString())).containsExactly("jobs");
    }
  }

  @Test
  void tells_a_missing_line_and_a_clock_that_was_set_back() throws IOException {
    List<String> lines = Files.readAllLines(book());
    Files.write(book(), lines.subList(0, lines.size() - 1));
    Files.writeString(
        book(),
        Files.readString(book())
            + "- {n: 1, at: 2030-01-01T00:00:00Z, by: other, kind: noted, text: \"x\"}\n");
    assertThat(line.run("doctor")).isEqualTo(Exit.PROBLEMS);
    assertThat(line.out()).contains("wrong: ").contains("was shown as done and is not in the book");
  }

  @Test
  void looks_at_the_drawer_the_locks_and_all_other_files_too() throws IOException {
    line.run("drawer", "--came", "march", "--mass", "20 g");
    assertThat(line.run("doctor")).as(line.out()).isZero();
    assertThat(line.out()).contains("1 book and the drawer's, 3 entries");
    Path drawer = line.home().resolve("drawer.yaml");
    Files.writeString(drawer, Files.readString(drawer).replace("20.0", "21.0"));
    Path lock = Path.of(book().toString().replace(".yaml", ".lock"));
    Files.delete(lock);
    Files.createDirectory(lock);
    line.file("home/bench.yaml", "format: 1\nkerfs: 0.3 mm\n");
    assertThat(line.run("doctor")).isEqualTo(Exit.PROBLEMS);
    assertThat(line.out())
        .contains("drawer.yaml", lock + " should be: move it away")
        .contains("2 problems:", "linkwright check tells what is wrong, in 1 place.");
  }

  @Test
  void says_that_a_folder_cannot_be_made() {
    assertThat(line.run("--home", "/dev/null/there", "doctor")).isEqualTo(Exit.PROBLEMS);
    assertThat(line.out())
        .contains(
            "wrong: Your folder /dev/null/there is not there and cannot be made: /dev/null is");
  }

  @Test
  void a_clock_that_is_years_behind_is_told_in_years() throws IOException {
    Instant far = Instant.parse("2999-01-01T00:00:00Z");
    try (BookFile book =
        BookFile.create(line.home().resolve("jobs"), "Far", "there", far).orThrow()) {
      Entry entry = new Entry(1, far, "there", new Fact.Noted("x"));
      assertThat(book.append(List.of(EntryLines.line(entry))).isGood()).isTrue();
    }
    assertThat(line.run("doctor")).isEqualTo(1);
    assertThat(line.out()).containsPattern("The clock is \\d+ years behind the last entry");
  }
}
