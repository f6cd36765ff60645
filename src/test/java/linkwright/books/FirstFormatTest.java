package linkwright.books;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.Pile;
import linkwright.job.StagesByKind;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Books as the first release wrote them: every kind of entry, and a job half done in each of the
 * routines it shipped. What they came to then ({@code standing.txt}, told by that release itself)
 * is what they come to now.
 */
class FirstFormatTest {
  private static final Path BOOKS = Path.of("src/test/resources/books/format-1");
  private static final Instant NOW = Instant.parse("2027-01-01T10:00:00Z");

  @TempDir Path folder;

  static List<String> books() throws IOException {
    try (Stream<Path> files = Files.list(BOOKS)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".yaml"))
          .map(name -> name.substring(0, name.length() - 5))
          .sorted()
          .toList();
    }
  }

  /** The stages as they were then, so that a routine may change since. */
  private static StagesByKind stages() throws IOException {
    Map<String, Map<PieceKind, List<Stage>>> stages = new LinkedHashMap<>();
    for (String line : Files.readAllLines(BOOKS.resolve("stages.txt"))) {
      String[] parts = line.split("[: ]+", -1);
      stages
          .computeIfAbsent(parts[0], any -> new LinkedHashMap<>())
          .put(new PieceKind(parts[1]), Stage.all(List.of(parts).subList(2, parts.length)));
    }
    return routine -> stages.getOrDefault(routine, Map.of());
  }

  /**
   * What the first release made of the entries. Since then the pieces of a trial length that is
   * followed count as made; it did not count them, so the choice is left out here.
   */
  private static List<String> standing(String name, List<Entry> entries) throws IOException {
    List<Entry> asThen =
        entries.stream().filter(entry -> !(entry.fact() instanceof Fact.TrialChosen)).toList();
    JobState state = JobState.replay(asThen, stages());
    List<String> told = new ArrayList<>();
    told.add(name + ": step " + state.course().step());
    state.piles().byPiece().forEach((kind, pile) -> told.add("  " + kind + ":" + words(pile)));
    return told;
  }

  private static String words(Pile pile) {
    StringBuilder words = new StringBuilder();
    for (Stage stage : pile.stages()) {
      int here = pile.standing().getOrDefault(stage, 0);
      words.append(here > 0 ? " " + here + " " + stage : "");
      words.append(pile.redoAt(stage) > 0 ? " " + pile.redoAt(stage) + " redo at " + stage : "");
    }
    return words + (pile.scrapped() > 0 ? " " + pile.scrapped() + " scrapped" : "");
  }

  private static List<String> expected(String name) throws IOException {
    List<String> all = Files.readAllLines(BOOKS.resolve("standing.txt"));
    int from = 0;
    while (!all.get(from).startsWith(name + ":")) {
      from++;
    }
    int to = from + 1;
    while (to < all.size() && all.get(to).startsWith("  ")) {
      to++;
    }
    return all.subList(from, to);
  }

  @ParameterizedTest
  @MethodSource("books")
  void aBookOpensUnchangedAndComesToWhatItCameToThen(String name) throws IOException {
    Path book = folder.resolve(name + ".yaml");
    Files.copy(BOOKS.resolve(name + ".yaml"), book);
    String before = Files.readString(book);
    try (BookFile opened = BookFile.open(book, "testbench-new", NOW).orThrow()) {
      assertThat(opened.problems()).isEmpty();
      assertThat(opened.whyReadOnly()).isEmpty();
      assertThat(standing(name, EntryLines.entries(opened.lines()))).isEqualTo(expected(name));
    }
    assertThat(book).hasContent(before);
  }

  @ParameterizedTest
  @MethodSource("books")
  void aBookGoesOnInTheSecondFormatFromItsFirstNewEntry(String name) throws IOException {
    Path book = folder.resolve(name + ".yaml");
    Files.copy(BOOKS.resolve(name + ".yaml"), book);
    String before = Files.readString(book);
    Fact first = new Fact.Noted("gone on with");
    Fact second = new Fact.Noted("and on");
    try (BookFile opened = BookFile.open(book, "testbench-new", NOW).orThrow()) {
      opened.append(List.of(EntryLines.line(new Entry(1, NOW, "testbench-new", first)))).orThrow();
      opened.append(List.of(EntryLines.line(new Entry(2, NOW, "testbench-new", second)))).orThrow();
    }
    String after = Files.readString(book);
    assertThat(after).startsWith(before + BookText.FROM_HERE + "\n- {n: 1, at: ");
    String since = after.substring(before.length());
    String check = since.lines().skip(1).findFirst().orElseThrow().split("crc32c:", -1)[1];
    assertThat(since.lines().skip(2).findFirst().orElseThrow())
        .contains("device: testbench-new, after: \"" + check + "\", kind: noted");
    BookFile again = BookFile.look(book).orThrow();
    assertThat(again.problems()).isEmpty();
    List<Entry> entries = EntryLines.entries(again.lines());
    assertThat(entries).extracting(Entry::fact).endsWith(first, second);
    assertThat(standing(name, entries)).isEqualTo(expected(name));
  }

  @Test
  void everyKindOfTheFirstFormatIsKnownButTheOneThatIsOfNone() throws IOException {
    BookFile book = BookFile.look(BOOKS.resolve("every-kind-of-entry.yaml")).orThrow();
    assertThat(EntryLines.entries(book.lines()))
        .filteredOn(entry -> entry.fact() instanceof Fact.Unread)
        .singleElement()
        .satisfies(entry -> assertThat(entry.number()).isEqualTo(41));
    assertThat(book.lines()).extracting(BookLine::kind).contains("wire-cut", "job-reopened");
  }
}
