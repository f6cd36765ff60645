package linkwright.books;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import linkwright.files.BenchFile;
import linkwright.files.DraftStore;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.job.LotFact;
import linkwright.quantity.Problem;
import linkwright.shell.DrawerBook;
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

  @ParameterizedTest
  @ValueSource(
      strings = {
        "lock-made",
        "lock-taken",
        "before-write",
        "after-write",
        "after-sync",
        "before-show"
      })
  void whileTheDrawersFirstEntryIsWritten(String point) throws IOException {
    Home home = new Home(folder);
    assertThat(DyingProgram.run("drawer", point, home.drawer())).isEqualTo(DyingProgram.DEAD);
    LotFact.LotCounted next =
        new LotFact.LotCounted("april", OptionalDouble.empty(), OptionalDouble.of(4), "");
    assertThat(DrawerBook.keep(home, "bench", DyingProgram.NOW, next)).isEmpty();
    BookFile drawer = BookFile.look(home.drawer()).orThrow();
    assertThat(drawer.problems()).isEmpty();
    boolean written = point.startsWith("after") || point.equals("before-show");
    assertThat(drawer.lines()).hasSize(written ? 2 : 1);
  }

  @Test
  void whileTheBenchIsChanged() throws IOException {
    Path bench = folder.resolve("bench.yaml");
    String before = "format: 1\n# mine\nkerf: 0.2 mm\n";
    Files.writeString(bench, before);
    assertThat(DyingProgram.run("bench", "replacement-written", bench))
        .isEqualTo(DyingProgram.DEAD);
    assertThat(bench).hasContent(before);
    assertThat(
            BenchFile.change(
                    new Home(folder),
                    Map.of("kerf", "0.7 mm"),
                    Library.load(new Home(folder)).reference(),
                    List.of())
                .isGood())
        .isTrue();
    assertThat(bench).hasContent("format: 1\n# mine\nkerf: 0.7 mm\n");
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
