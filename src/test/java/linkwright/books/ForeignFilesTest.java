package linkwright.books;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import linkwright.files.Checking;
import linkwright.files.Home;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nothing is opened for writing before it is known to be a book. */
class ForeignFilesTest {
  private static final String PLAN = "format: 1\nmetal: sterling\nwire: 0.9 mm\nstock: [1 m]";

  @TempDir Path folder;

  private Read<BookFile> open(Path path) {
    return BookFile.open(path, "bench", BookFileTest.NOW);
  }

  /** All files below the folder and what is in them. */
  private Map<String, String> everything() throws IOException {
    Map<String, String> all = new TreeMap<>();
    try (Stream<Path> paths = Files.walk(folder)) {
      for (Path path : paths.filter(Files::isRegularFile).toList()) {
        all.put(
            folder.relativize(path).toString(),
            Files.readString(path, StandardCharsets.ISO_8859_1));
      }
    }
    return all;
  }

  private void refused(Path path, String why) throws IOException {
    Map<String, String> before = everything();
    Read<BookFile> opened = open(path);
    assertThat(opened.problem().orElse("opened")).startsWith(path + " ").contains(why);
    assertThat(BookFile.look(path).problem()).isEqualTo(opened.problem());
    assertThat(everything()).as("every file, locks among them").isEqualTo(before);
  }

  private String bookText() throws IOException {
    try (BookFile book =
        BookFile.create(folder.resolve("jobs"), "Trace", "bench", BookFileTest.NOW).orThrow()) {
      book.append(List.of(BookFileTest.entry(1), BookFileTest.entry(2))).orThrow();
      return Files.readString(book.path());
    }
  }

  @Nested
  class A_file_that_is_no_book {
    @ParameterizedTest
    @ValueSource(
        strings = {
          PLAN,
          PLAN + "\n",
          "- {blank: 30 mm, length: 14.1 mm}",
          "format: 1\nroutine: mine",
          "# my shopping list\n- wire\n- solder",
          "# Linkwright is nice",
          "\0\0\0\0binary\n\0",
          "\n\n",
          "#",
          "- "
        })
    void is_refused_and_left_as_it_is(String text) throws IOException {
      refused(Files.writeString(folder.resolve("file.yaml"), text), "is no job book");
    }

    /** An empty file says nothing of itself: it becomes a book with its first entry. */
    @Test
    void is_left_empty_by_whoever_only_opens_it() throws IOException {
      Path path = Files.write(folder.resolve("empty.yaml"), new byte[0]);
      try (BookFile book = open(path).orThrow()) {
        assertThat(book.problems()).isEmpty();
        assertThat(path).isEmptyFile();
        book.append(List.of(BookFileTest.entry(1))).orThrow();
        book.append(List.of(BookFileTest.entry(2))).orThrow();
        assertThat(book.rows()).extracting(BookScan.ScannedLine::line).containsExactly(2, 3);
      }
      assertThat(Files.readString(path)).startsWith(BookText.HEADER + "\n- {n: 1");
      assertThat(BookFile.look(path).orThrow().problems()).isEmpty();
      assertThat(BookFile.look(path).orThrow().lines()).hasSize(2);
    }

    @Test
    void is_told_by_check_where_it_lies_among_the_jobs() throws IOException {
      Path jobs = Files.createDirectories(folder.resolve("jobs"));
      Path plan = Files.writeString(jobs.resolve("plan.yaml"), PLAN);
      assertThat(Checking.check(new Home(folder), List.of(), CheckedLate.BOOKS, Map.of()))
          .extracting(Problem::sentence)
          .anyMatch(told -> told.contains(plan + " is no job book"));
    }
  }

  @Nested
  class A_link {
    @Test
    void that_leads_out_of_the_home_is_neither_opened_nor_listed() throws IOException {
      String text = bookText();
      Path outside = Files.createDirectories(folder.resolve("outside"));
      Path target = Files.writeString(outside.resolve("theirs.yaml"), text + "- {n: 9, torn");
      Path link = folder.resolve("jobs/theirs.yaml");
      Files.createSymbolicLink(link, target);
      Map<String, String> before = everything();
      assertThat(new Home(folder).books()).extracting(Path::getFileName).hasSize(2);
      Home home = new Home(folder.resolve("home"));
      Files.createDirectories(home.jobs());
      Path out = home.jobs().resolve("theirs.yaml");
      Files.createSymbolicLink(out, target);
      assertThat(home.books()).isEmpty();
      assertThat(home.leadsOut(out))
          .hasValueSatisfying(why -> assertThat(why).contains("is a link that leads out of"));
      assertThat(target).hasContent(before.get("outside/theirs.yaml"));
    }

    @Test
    void in_the_place_of_the_lock_is_not_followed() throws IOException {
      bookText();
      Path victim = Files.writeString(folder.resolve("victim"), "mine");
      Path lock = folder.resolve("jobs/trace.lock");
      Files.delete(lock);
      Files.createSymbolicLink(lock, victim);
      try (BookFile book = open(folder.resolve("jobs/trace.yaml")).orThrow()) {
        assertThat(book.whyReadOnly()).hasValueSatisfying(why -> assertThat(why).contains("lock"));
      }
      assertThat(victim).hasContent("mine");
    }
  }

  @Nested
  class A_book_with_other_line_ends {
    @Test
    void of_old_machines_is_read_whole_and_gone_on_with() throws IOException {
      String text = bookText().replace('\n', '\r');
      Path path = folder.resolve("jobs/trace.yaml");
      Files.writeString(path, text);
      try (BookFile book = open(path).orThrow()) {
        assertThat(book.problems()).isEmpty();
        assertThat(book.lines()).hasSize(2);
        book.append(List.of(BookFileTest.entry(3))).orThrow();
      }
      assertThat(Files.readString(path)).startsWith(text);
      assertThat(BookFile.look(path).orThrow().lines()).hasSize(3);
      assertThat(BookFile.look(path).orThrow().problems()).isEmpty();
    }

    @Test
    void without_its_last_one_loses_nothing() throws IOException {
      String text = bookText().replace('\n', '\r');
      Path path = folder.resolve("jobs/trace.yaml");
      Files.writeString(path, text.substring(0, text.length() - 1));
      try (BookFile book = open(path).orThrow()) {
        assertThat(book.lines()).hasSize(2);
        assertThat(book.problems()).isEmpty();
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"UTF-16", "UTF-16LE", "UTF-16BE", "UTF-32"})
  void a_book_in_another_encoding_is_refused_whole_and_untouched(String encoding)
      throws IOException {
    Path path = folder.resolve("jobs/other.yaml");
    Files.write(path, bookText().getBytes(Charset.forName(encoding)));
    refused(path, "is not written in UTF-8");
  }

  @Nested
  class A_last_line_without_an_end {
    @ParameterizedTest
    @ValueSource(strings = {"# finished on Friday", "six more today", "note: by hand"})
    void that_is_no_torn_entry_stays_where_it_is(String byHand) throws IOException {
      String text = bookText() + byHand;
      Path path = folder.resolve("jobs/trace.yaml");
      Files.writeString(path, text);
      try (BookFile book = open(path).orThrow()) {
        assertThat(book.lines()).hasSize(2);
        book.append(List.of(BookFileTest.entry(3))).orThrow();
      }
      assertThat(Files.readString(path)).startsWith(text + "\n");
      assertThat(BookFile.look(path).orThrow().lines()).hasSize(3);
    }

    @Test
    void that_is_one_is_set_aside_without_a_claim_that_is_not_known() throws IOException {
      Path path = folder.resolve("jobs/trace.yaml");
      Files.writeString(path, bookText() + "- {n: 3, at: 2026");
      Files.delete(folder.resolve("jobs/trace.last"));
      try (BookFile book = open(path).orThrow()) {
        assertThat(book.problems())
            .singleElement()
            .satisfies(
                problem ->
                    assertThat(problem.expected())
                        .startsWith("What there was of it is kept in ")
                        .doesNotContain("lost"));
      }
    }
  }
}
