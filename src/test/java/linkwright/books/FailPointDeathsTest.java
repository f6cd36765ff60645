package linkwright.books;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import linkwright.files.DraftStore;
import linkwright.quantity.Problem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A program of its own that dies on the spot at each point of its way, and what it leaves. */
@Timeout(300)
class FailPointDeathsTest {
  private static final String TORN = "- {n: 2, at: 2026-11-25T20:00:00Z, dev";

  @TempDir Path folder;

  private Path path;

  @BeforeEach
  void aBookWithOneEntry() throws IOException {
    try (BookFile book = BookFile.create(folder, "Trace", "bench", DyingProgram.NOW).orThrow()) {
      path = book.path();
      book.append(List.of(BookFileTest.entry(1))).orThrow();
    }
  }

  private List<Integer> numbers() {
    return BookFile.look(path).orThrow().lines().stream().map(BookLine::number).toList();
  }

  /** Whoever comes next writes on and finds nothing wrong. */
  private void goesOn() throws IOException {
    try (BookFile book = BookFile.open(path, "bench", DyingProgram.NOW).orThrow()) {
      assertThat(book.whyReadOnly()).isEmpty();
      assertThat(book.append(List.of(BookFileTest.entry(book.nextNumber()))).isGood()).isTrue();
    }
    assertThat(BookFile.look(path).orThrow().problems()).isEmpty();
    assertThat(numbers()).doesNotHaveDuplicates().contains(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"lock-made", "lock-taken"})
  void beforeAnythingIsWritten(String point) throws IOException {
    assertThat(DyingProgram.run("append", point, path)).isEqualTo(DyingProgram.DEAD);
    assertThat(numbers()).containsExactly(1);
    goesOn();
  }

  @ParameterizedTest
  @ValueSource(strings = {"after-write", "after-sync", "before-show"})
  void whileAnEntryIsWritten(String point) throws IOException {
    assertThat(DyingProgram.run("append", point, path)).isEqualTo(DyingProgram.DEAD);
    assertThat(numbers()).as("written whole; only a power cut could still take it").hasSize(2);
    goesOn();
  }

  @ParameterizedTest
  @ValueSource(strings = {"lock-made", "lock-taken", "torn-set-aside"})
  void whileATornLineIsSetAside(String point) throws IOException {
    String before = Files.readString(path);
    Files.writeString(path, before + TORN);
    assertThat(DyingProgram.run("open", point, path)).isEqualTo(DyingProgram.DEAD);
    assertThat(path).hasContent(before + TORN);
    try (BookFile book = BookFile.open(path, "bench", DyingProgram.NOW).orThrow()) {
      assertThat(book.problems())
          .extracting(Problem::wrong)
          .singleElement()
          .satisfies(told -> assertThat(told).startsWith("The last line was cut short"));
    }
    assertThat(path).hasContent(before);
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files.filter(file -> file.toString().contains(".torn-")))
          .isNotEmpty()
          .allSatisfy(aside -> assertThat(aside).hasContent(TORN));
    }
    goesOn();
  }

  @Test
  void whileADraftIsKept() {
    DraftStore drafts = new DraftStore(folder.resolve("drafts"));
    Map<String, String> old = Map.of("wire", "1.0 mm");
    assertThat(drafts.keep("trace", "plan", old)).isEmpty();
    assertThat(deathOfADraft()).isEqualTo(DyingProgram.DEAD);
    assertThat(drafts.of("trace")).containsEntry("plan", old);
    assertThat(drafts.keep("trace", "plan", Map.of("wire", "1.1 mm"))).isEmpty();
    assertThat(drafts.of("trace")).containsEntry("plan", Map.of("wire", "1.1 mm"));
  }

  private int deathOfADraft() {
    try {
      return DyingProgram.run("draft", "replacement-written", folder.resolve("drafts/any"));
    } catch (IOException notStarted) {
      throw new AssertionError(notStarted);
    }
  }

  @Test
  void whileAMergeIsWritten() throws IOException {
    String before = Files.readString(path);
    Path together = folder.resolve("together.yaml");
    assertThat(DyingProgram.run("merge", "new-file-written", path)).isEqualTo(DyingProgram.DEAD);
    assertThat(together).doesNotExist();
    assertThat(path).hasContent(before);
    assertThat(BookMerge.of(List.of(path)).orThrow().write(together).isGood()).isTrue();
    assertThat(BookFile.look(together).orThrow().problems()).isEmpty();
  }
}
