package linkwright.books;

import static java.util.concurrent.TimeUnit.SECONDS;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import linkwright.files.Checking;
import linkwright.files.DraftStore;
import linkwright.files.Home;
import linkwright.files.UserSettings;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Disks, files and values such as nobody wishes for: each a sentence, and soon. */
@Timeout(20)
class OddDisksTest {
  @TempDir Path folder;

  private Path book() throws IOException {
    try (BookFile book =
        BookFile.create(folder.resolve("jobs"), "Trace", "bench", BookFileTest.NOW).orThrow()) {
      book.append(List.of(BookFileTest.entry(1))).orThrow();
      return book.path();
    }
  }

  private static Path fifo(Path path) throws IOException {
    try {
      Process made = new ProcessBuilder("mkfifo", path.toString()).start();
      assertThat(made.waitFor(5, SECONDS)).isTrue();
      return path;
    } catch (InterruptedException stopped) {
      throw new IOException(stopped);
    }
  }

  @Nested
  @EnabledOnOs(OS.LINUX)
  class A_file_that_is_no_ordinary_one {
    @ParameterizedTest
    @ValueSource(strings = {"/dev/full", "/dev/zero", "/dev/tty0", "/proc/self/mem"})
    @Timeout(5)
    void is_told_by_check_and_not_read(String device) {
      assertThat(
              Checking.check(
                  new Home(folder), List.of(Path.of(device)), CheckedLate.BOOKS, Map.of()))
          .isNotEmpty();
    }

    @Test
    @Timeout(5)
    void hangs_nobody_as_any_file_of_the_home() throws IOException {
      Files.createDirectories(folder.resolve("jobs"));
      Files.createDirectories(folder.resolve("drafts"));
      for (String name :
          List.of(
              "settings.yaml",
              "keys.yaml",
              "bench.yaml",
              "jobs/pipe.yaml",
              "jobs/trace.last",
              "drafts/trace.yaml")) {
        fifo(folder.resolve(name));
      }
      Path book = book();
      Home home = new Home(folder);
      assertThat(Checking.check(home, List.of(), CheckedLate.BOOKS, Map.of()))
          .extracting(Problem::sentence)
          .anyMatch(told -> told.contains("bench.yaml is not an ordinary file"))
          .anyMatch(told -> told.contains("settings.yaml is not an ordinary file"));
      assertThat(new DraftStore(home.drafts()).of("trace")).isEmpty();
      assertThat(BookFile.look(folder.resolve("jobs/pipe.yaml")).problem()).isPresent();
      assertThat(BookFile.look(book).isGood()).isTrue();
    }

    @Test
    @Timeout(5)
    void in_the_place_of_the_lock_lets_her_look_and_says_why() throws IOException {
      Path path = book();
      Path lock = folder.resolve("jobs/trace.lock");
      Files.delete(lock);
      fifo(lock);
      try (BookFile book = BookFile.open(path, "bench", BookFileTest.NOW).orThrow()) {
        assertThat(book.whyReadOnly())
            .contains(
                "There is a folder, or something else that is no file, where "
                    + lock
                    + " should be: move it away.");
        assertThat(book.lines()).hasSize(1);
      }
    }
  }

  @Test
  void aFolderInThePlaceOfTheLockIsToldAsSuch() throws IOException {
    Path path = book();
    Path lock = folder.resolve("jobs/trace.lock");
    Files.delete(lock);
    Files.createDirectory(lock);
    try (BookFile book = BookFile.open(path, "bench", BookFileTest.NOW).orThrow()) {
      assertThat(book.whyReadOnly())
          .hasValueSatisfying(why -> assertThat(why).contains("move it away"));
    }
  }

  @Test
  void aFolderOfJobsThatIsNoneIsTold() throws IOException {
    Files.writeString(folder.resolve("jobs"), "a file");
    List<Problem> problems = new ArrayList<>();
    assertThat(new Home(folder).books(problems)).isEmpty();
    assertThat(problems)
        .extracting(Problem::wrong)
        .containsExactly(folder.resolve("jobs") + " is not a folder: move it away.");
  }

  @Test
  void whatIsOverwrittenWithTheSameLengthIsNoticed() throws IOException {
    Path path = book();
    try (BookFile book = BookFile.open(path, "bench", BookFileTest.NOW).orThrow()) {
      String text = Files.readString(path);
      Files.writeString(path, text.replace("count: 1", "count: 2"));
      later(path);
      Read<List<BookLine>> added = book.append(List.of(BookFileTest.entry(2)));
      assertThat(added.problem())
          .hasValueSatisfying(why -> assertThat(why).contains("was changed by another program"));
    }
  }

  @Test
  void aFileThatWasOnlyTouchedIsWrittenOn() throws IOException {
    Path path = book();
    try (BookFile book = BookFile.open(path, "bench", BookFileTest.NOW).orThrow()) {
      later(path);
      assertThat(book.append(List.of(BookFileTest.entry(2))).isGood()).isTrue();
    }
  }

  private static void later(Path path) throws IOException {
    long now = Files.getLastModifiedTime(path).toMillis();
    Files.setLastModifiedTime(path, java.nio.file.attribute.FileTime.fromMillis(now + 5000));
  }

  @Test
  @EnabledOnOs({OS.LINUX, OS.MAC})
  void filesAreTheirOwnersAlone() throws IOException {
    Path path = book();
    Home home = new Home(folder);
    new DraftStore(home.drafts()).keep("trace", "plan", Map.of("wire", "1 mm"));
    UserSettings.USUAL.save(home);
    for (String file :
        List.of(
            "jobs/trace.yaml",
            "jobs/trace.lock",
            "jobs/trace.last",
            "drafts/trace.yaml",
            "settings.yaml")) {
      assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve(file))))
          .as(file)
          .isEqualTo("rw-------");
    }
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(path.getParent())))
        .isEqualTo("rwx------");
  }

  @Nested
  class Absurd_values {
    @Test
    @Timeout(5)
    void a_value_of_half_a_megabyte_is_told_in_a_sentence() throws IOException {
      Path plan =
          Files.writeString(
              folder.resolve("plan.yaml"),
              "metal: " + "x".repeat(400_000) + "\nfinished-length: 45 cm\n");
      assertThat(Checking.check(new Home(folder), List.of(plan), CheckedLate.BOOKS, Map.of()))
          .isNotEmpty()
          .noneMatch(problem -> problem.sentence().contains("x".repeat(81)));
    }

    @Test
    @Timeout(10)
    void eighty_thousand_problems_are_told_by_the_first_twenty() throws IOException {
      StringBuilder text = new StringBuilder("format: 1\nrutine: x\n");
      for (int i = 0; i < 80_000; i++) {
        text.append('k').append(i).append(": 1\n");
      }
      Files.writeString(folder.resolve("settings.yaml"), text.toString());
      List<Problem> problems = UserSettings.load(new Home(folder)).problems();
      assertThat(problems).hasSize(21);
      assertThat(problems.get(20).wrong()).endsWith(" problems more.");
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "{n: 2147483647, at: 2026-11-25T20:00:00Z, device: bench, kind: noted, text: \"x\"}",
          "{n: 2, at: +1000000000-01-01T00:00:00Z, device: bench, kind: noted, text: \"x\"}",
          "{n: 2, at: -1000000000-01-01T00:00:00Z, device: bench, kind: noted, text: \"x\"}",
          "{n: 99999999999, at: 2026-11-25T20:00:00Z, device: bench, kind: noted, text: \"x\"}"
        })
    void in_an_entry_are_told_and_the_book_goes_on(String entry) throws IOException {
      Path path = book();
      String line = "- " + entry;
      String check = BookText.check(line.getBytes(StandardCharsets.UTF_8));
      Files.writeString(path, Files.readString(path) + line + BookText.CHECK_MARK + check + "\n");
      try (BookFile book = BookFile.open(path, "bench", BookFileTest.NOW).orThrow()) {
        assertThat(book.problems()).hasSize(1);
        int next = book.nextNumber();
        assertThat(next).isBetween(2, 9);
        assertThat(book.append(List.of(BookFileTest.entry(next))).isGood()).isTrue();
      }
    }
  }
}
