package linkwright.books;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Two real programs on one book. */
@Timeout(120)
class BookCrashTest {
  @TempDir Path folder;

  private Path newBook() throws IOException {
    try (BookFile book = BookFile.create(folder, "Trace", "bench", BookFileTest.NOW).orThrow()) {
      return book.path();
    }
  }

  @Test
  void aProgramKilledWhileItWritesLosesNothingThatItSaidWasKept() throws Exception {
    Path path = newBook();
    int least = 0;
    for (int round = 0; round < 3; round++) {
      Process child = BookProcess.start(path, "write");
      int said = 0;
      try (BufferedReader out = child.inputReader(StandardCharsets.UTF_8)) {
        assertThat(out.readLine()).isEqualTo("writes");
        while (said < least + 40 + 7 * round) {
          said = Integer.parseInt(out.readLine());
        }
        BookProcess.kill(child);
        List<String> rest = out.lines().toList();
        said = rest.isEmpty() ? said : lastWhole(rest, said);
      }
      try (BookFile book = BookFile.open(path, "bench", BookFileTest.NOW).orThrow()) {
        assertThat(book.whyReadOnly()).as("a killed program's lock blocks nobody").isEmpty();
        assertThat(book.suspects()).isEmpty();
        List<Integer> numbers = book.lines().stream().map(BookLine::number).toList();
        assertThat(numbers).hasSizeGreaterThanOrEqualTo(said);
        assertThat(numbers).isEqualTo(upTo(numbers.size()));
        least = numbers.size();
      }
    }
  }

  /** The last number of a killed program's output may itself be cut short: then the one before. */
  private static int lastWhole(List<String> lines, int before) {
    int last = before;
    for (String line : lines) {
      int number = Integer.parseInt(line);
      last = number == last + 1 ? number : last;
    }
    return last;
  }

  private static List<Integer> upTo(int last) {
    List<Integer> numbers = new ArrayList<>();
    for (int n = 1; n <= last; n++) {
      numbers.add(n);
    }
    return numbers;
  }

  @Test
  void aSecondProgramMayLookButNotWrite() throws Exception {
    Path path = newBook();
    Process child = BookProcess.start(path, "hold");
    try (BufferedReader out = child.inputReader(StandardCharsets.UTF_8)) {
      assertThat(out.readLine()).isEqualTo("writes");
      try (BookFile book = BookFile.open(path, "bench", BookFileTest.NOW).orThrow()) {
        assertThat(book.whyReadOnly()).isPresent();
      }
    } finally {
      BookProcess.kill(child);
    }
    try (BookFile book = BookFile.open(path, "bench", BookFileTest.NOW).orThrow()) {
      assertThat(book.whyReadOnly()).isEmpty();
      Process second = BookProcess.start(path, "hold");
      try (BufferedReader out = second.inputReader(StandardCharsets.UTF_8)) {
        assertThat(out.readLine()).isEqualTo("looks");
      } finally {
        BookProcess.kill(second);
      }
      assertThat(book.append(List.of(new BookLine(1, BookFileTest.NOW, "bench", "x", Map.of()))))
          .satisfies(read -> assertThat(read.isGood()).isTrue());
    }
  }
}
