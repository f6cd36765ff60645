package linkwright.books;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import linkwright.files.Checking;
import linkwright.files.Home;
import linkwright.quantity.Problem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is missing from a book or was moved in it is known. */
class MissingLinesTest {
  private static final int ENTRIES = 8;

  @TempDir Path folder;
  private Path path;
  private List<String> lines;

  @BeforeEach
  void aBook() throws IOException {
    try (BookFile book = BookFile.create(folder, "Trace", "bench", BookFileTest.NOW).orThrow()) {
      path = book.path();
      for (int n = 1; n <= ENTRIES; n++) {
        book.append(List.of(BookFileTest.entry(n))).orThrow();
      }
    }
    lines = Files.readAllLines(path);
  }

  private List<String> told(List<String> changed) throws IOException {
    Files.write(path, changed);
    return BookFile.look(path).orThrow().problems().stream().map(Problem::wrong).toList();
  }

  @Test
  void aBookAsItWasWrittenTellsNothing() throws IOException {
    assertThat(told(lines)).isEmpty();
  }

  @Test
  void everyDeletedLineIsTold() throws IOException {
    for (int gone = 1; gone <= ENTRIES; gone++) {
      List<String> less = new ArrayList<>(lines);
      less.remove(gone);
      String which =
          gone == ENTRIES
              ? "Entry 8 of bench was shown as done and is not in the book: its end was cut off, or"
                  + " an older copy put in its place."
              : "Entry " + gone + " of bench is missing.";
      assertThat(told(less)).containsExactly(which);
    }
  }

  private List<String> checked(List<String> changed) throws IOException {
    Files.write(path, changed);
    return Checking.check(new Home(folder), List.of(path), CheckedLate.BOOKS, Map.of()).stream()
        .map(Problem::sentence)
        .toList();
  }

  @Test
  void theLineThatABookBeginsWithIsMissed() throws IOException {
    List<String> without = lines.subList(1, lines.size());
    assertThat(checked(without))
        .filteredOn(told -> told.contains("that a book begins with is missing"))
        .singleElement()
        .satisfies(told -> assertThat(told).contains("# Linkwright job book, format 2"));
    List<String> mended = new ArrayList<>(without);
    mended.add(0, "# Linkwright job book, format 2");
    assertThat(checked(mended)).noneMatch(told -> told.contains("that a book begins with"));
  }

  @Test
  void kindsThatMeanNothingHereAreTold() throws IOException {
    List<String> more = new ArrayList<>(lines.subList(0, 1));
    BookLine seen = new BookLine(1, BookFileTest.NOW, "desk", "link-dreamt", Map.of());
    String written = BookText.encode(seen, "");
    more.add(written);
    BookLine wrong = new BookLine(2, BookFileTest.NOW, "desk", "piece-through", Map.of());
    more.add(BookText.encode(wrong, written.substring(written.length() - 8)));
    assertThat(checked(more))
        .anySatisfy(told -> assertThat(told).contains("line 2", "\"link-dreamt\"", "newer"))
        .anySatisfy(told -> assertThat(told).contains("line 3", "or meant pieces-through"));
  }

  @Test
  void everyPairOfLinesThatChangedPlacesIsToldAndReadInItsOrder() throws IOException {
    for (int one = 1; one <= ENTRIES; one++) {
      for (int other = one + 1; other <= ENTRIES; other++) {
        List<String> swapped = new ArrayList<>(lines);
        java.util.Collections.swap(swapped, one, other);
        assertThat(told(swapped)).as("%d and %d", one, other).isNotEmpty();
        assertThat(BookFile.look(path).orThrow().lines())
            .extracting(BookLine::number)
            .containsExactly(1, 2, 3, 4, 5, 6, 7, 8);
      }
    }
  }

  @Test
  void anEntryThatWasWrittenAnewWithARightCheckIsTold() throws IOException {
    List<String> forged = new ArrayList<>(lines);
    forged.set(4, BookText.encode(BookFileTest.entry(4).madeBy("bench"), "00000000"));
    assertThat(told(forged))
        .contains(
            "The entry of bench before this one is not the one that was there when this was"
                + " written.");
  }

  @Test
  void gapsInTheNumbersAreToldInOldBooksToo() throws IOException {
    Path old = Path.of("src/test/resources/books/format-1/every-kind-of-entry.yaml");
    List<String> all = Files.readAllLines(old);
    List<String> less = new ArrayList<>(all);
    less.subList(10, 13).clear();
    Path copy = Files.write(folder.resolve("old.yaml"), less);
    assertThat(BookFile.look(copy).orThrow().problems())
        .extracting(Problem::wrong)
        .containsExactly("Entries 10 to 12 of bench are missing.");
  }

  @Test
  void whatIsGoneStaysKnownWhenTheBookGoesOn() throws IOException {
    Files.write(path, lines.subList(0, lines.size() - 2));
    try (BookFile book = BookFile.open(path, "bench", BookFileTest.NOW).orThrow()) {
      assertThat(book.problems()).hasSize(1);
      assertThat(book.nextNumber()).as("no number is given twice").isEqualTo(9);
      book.append(List.of(BookFileTest.entry(9))).orThrow();
    }
    assertThat(BookFile.look(path).orThrow().problems())
        .extracting(Problem::wrong)
        .containsExactly("Entries 7 to 8 of bench are missing.");
  }

  @Test
  void aLineTornBeforeItWasShownIsToldAsSuch() throws IOException {
    Files.writeString(path, String.join("\n", lines) + "\n- {n: 9, at: 2026-11");
    try (BookFile book = BookFile.open(path, "bench", BookFileTest.NOW).orThrow()) {
      assertThat(book.problems())
          .extracting(Problem::expected)
          .singleElement()
          .asString()
          .startsWith("Nothing shown as done is lost. What there was of it is kept in ");
    }
  }

  @Test
  void everyCutOfTheLastLineIsTold() throws IOException {
    byte[] whole = Files.readAllBytes(path);
    int start = whole.length - lines.get(ENTRIES).length() - 1;
    for (int cut = start; cut < whole.length - 1; cut++) {
      Files.write(path, java.util.Arrays.copyOf(whole, cut));
      BookFile book = BookFile.look(path).orThrow();
      assertThat(book.lines()).as("cut at %d", cut).hasSize(ENTRIES - 1);
      assertThat(book.problems())
          .as("cut at %d", cut)
          .extracting(Problem::wrong)
          .anyMatch(wrong -> wrong.startsWith("Entry 8 of bench was shown as done"));
    }
  }
}
