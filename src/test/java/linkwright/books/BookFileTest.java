package linkwright.books;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BookFileTest {
  static final Instant NOW = Instant.parse("2026-11-25T20:00:00Z");

  @TempDir Path folder;

  static BookLine entry(int number) {
    return new BookLine(
        number, NOW.plusSeconds(number), "bench", "six-counted", Map.of("count", 1L));
  }

  private Path bookOf(int entries) throws IOException {
    try (BookFile book = BookFile.create(folder, "Anchor chain", "bench", NOW).orThrow()) {
      for (int n = 1; n <= entries; n++) {
        book.append(List.of(entry(n))).orThrow();
      }
      return book.path();
    }
  }

  private BookFile open(Path path) {
    return BookFile.open(path, "bench", NOW).orThrow();
  }

  @Nested
  class ANewBook {
    @Test
    void isNamedAfterTheJobAndSaysWhatItIs() throws IOException {
      Path path = bookOf(0);
      assertThat(path.getFileName()).hasToString("anchor-chain.yaml");
      assertThat(Files.readString(path)).isEqualTo(BookText.HEADER + "\n");
    }

    @Test
    void doesNotTakeTheNameOfAnother() throws IOException {
      bookOf(1);
      assertThat(bookOf(1).getFileName()).hasToString("anchor-chain-2.yaml");
    }

    @Test
    void keepsWhatIsAdded() throws IOException {
      Path path = bookOf(3);
      try (BookFile book = open(path)) {
        assertThat(book.lines()).containsExactly(entry(1), entry(2), entry(3));
        assertThat(book.problems()).isEmpty();
        assertThat(book.whyReadOnly()).isEmpty();
        assertThat(book.nextNumber()).isEqualTo(4);
      }
    }

    @Test
    void thatWasCutBeforeItsFirstLineIsBegunAgain() throws IOException {
      Path path = bookOf(0);
      Files.write(path, new byte[0]);
      try (BookFile book = open(path)) {
        book.append(List.of(entry(1))).orThrow();
      }
      assertThat(Files.readString(path)).startsWith(BookText.HEADER + "\n- {n: 1");
    }
  }

  @Nested
  class Appending {
    @Test
    void severalAtOnceGrowsTheBookByTheirLines() throws IOException {
      Path path = bookOf(1);
      byte[] before = Files.readAllBytes(path);
      try (BookFile book = open(path)) {
        assertThat(book.append(List.of(entry(2), entry(3))).orThrow()).hasSize(3);
      }
      byte[] after = Files.readAllBytes(path);
      assertThat(Arrays.copyOf(after, before.length)).isEqualTo(before);
      assertThat(Files.readAllLines(path)).hasSize(4);
    }

    @Test
    void aNumberTwiceIsTheProgrammersFault() throws IOException {
      try (BookFile book = open(bookOf(2))) {
        assertThatIllegalArgumentException()
            .isThrownBy(() -> book.append(List.of(entry(2))))
            .withMessageContaining("entry 2 of bench");
        assertThatIllegalArgumentException()
            .isThrownBy(() -> book.append(List.of(entry(3), entry(3))));
        assertThat(book.lines()).hasSize(2);
      }
    }

    @Test
    void anInterruptedThreadStillWritesAndStaysInterrupted() throws IOException {
      try (BookFile book = open(bookOf(1))) {
        Thread.currentThread().interrupt();
        Read<List<BookLine>> added = book.append(List.of(entry(2)));
        assertThat(Thread.interrupted()).isTrue();
        assertThat(added.isGood()).isTrue();
        assertThat(book.append(List.of(entry(3))).isGood()).isTrue();
      }
    }
  }

  @Nested
  class ALineCutShort {
    @Test
    void atAnyByteLeavesAllEarlierEntriesAndIsSetAside() throws IOException {
      Path path = bookOf(3);
      byte[] whole = Files.readAllBytes(path);
      byte[] remembered = Files.readAllBytes(folder.resolve("anchor-chain.last"));
      int lastLine = new String(whole, StandardCharsets.UTF_8).lastIndexOf("- {");
      for (int cut = lastLine; cut < whole.length; cut++) {
        Files.write(path, Arrays.copyOf(whole, cut));
        Files.write(folder.resolve("anchor-chain.last"), remembered);
        try (BookFile book = open(path)) {
          // Only the line end is missing: the check shows that the entry is whole.
          boolean entryIsWhole = cut == whole.length - 1;
          assertThat(book.lines())
              .as("cut at byte %d", cut)
              .containsExactlyElementsOf(
                  entryIsWhole
                      ? List.of(entry(1), entry(2), entry(3))
                      : List.of(entry(1), entry(2)));
          boolean torn = cut > lastLine && !entryIsWhole;
          // The entry was shown as done, and that is remembered beside the book.
          assertThat(book.problems()).hasSize((torn ? 1 : 0) + (entryIsWhole ? 0 : 1));
          book.append(List.of(new BookLine(9, NOW, "bench", "after", Map.of()))).orThrow();
        }
        try (BookFile again = open(path)) {
          assertThat(again.lines()).last().extracting(BookLine::number).isEqualTo(9);
        }
      }
    }

    @Test
    void isToldAndKeptInAFileBesideTheBook() throws IOException {
      Path path = bookOf(2);
      byte[] whole = Files.readAllBytes(path);
      Files.write(path, Arrays.copyOf(whole, whole.length - 20));
      try (BookFile book = open(path)) {
        assertThat(book.problems()).hasSize(2);
        Problem problem = book.problems().get(0);
        assertThat(problem.line()).isEqualTo(3);
        assertThat(problem.wrong())
            .startsWith("The last line was cut short while it was written: - {n: 2, at: 2026");
        assertThat(problem.expected())
            .startsWith("What there was of it is kept in ")
            .endsWith("anchor-chain.torn-20261125T200000Z.txt.");
      }
      Path aside = folder.resolve("anchor-chain.torn-20261125T200000Z.txt");
      assertThat(Files.readString(aside)).startsWith("- {n: 2, at: 2026");
      try (BookFile again = open(path)) {
        assertThat(again.problems())
            .singleElement()
            .satisfies(
                gone ->
                    assertThat(gone.wrong())
                        .startsWith("Entry 2 of bench was shown as done and is not in the book"));
      }
    }

    @Test
    void doesNotOverwriteOneSetAsideInTheSameSecond() throws IOException {
      Path path = bookOf(1);
      for (int i = 0; i < 2; i++) {
        Files.writeString(path, Files.readString(path) + "- {n: 2, half" + i);
        open(path).close();
      }
      try (Stream<Path> files = Files.list(folder)) {
        assertThat(files.map(file -> file.getFileName().toString()))
            .contains(
                "anchor-chain.torn-20261125T200000Z.txt",
                "anchor-chain.torn-20261125T200000Z-2.txt");
      }
    }

    @Test
    void isLeftAloneByWhoeverOnlyLooks() throws IOException {
      Path path = bookOf(1);
      String torn = Files.readString(path) + "- {n: 2, ha";
      Files.writeString(path, torn);
      try (BookFile book = BookFile.look(path).orThrow()) {
        assertThat(book.lines()).containsExactly(entry(1));
        assertThat(book.problems()).hasSize(1);
        assertThat(book.append(List.of(entry(2))).problem())
            .contains("This book is open to look, not to write.");
      }
      assertThat(Files.readString(path)).isEqualTo(torn);
    }
  }

  @Nested
  class ALineThatWasChanged {
    @Test
    void inAnyBitIsToldAndNoOtherEntryIsHarmed() throws IOException {
      Path path = bookOf(3);
      byte[] whole = Files.readAllBytes(path);
      String text = new String(whole, StandardCharsets.UTF_8);
      int from = text.indexOf("- {n: 2");
      int to = text.indexOf("- {n: 3");
      for (int at = from; at < to; at++) {
        for (int bit = 0; bit < 8; bit++) {
          byte[] bad = whole.clone();
          bad[at] ^= (byte) (1 << bit);
          Files.write(path, bad);
          try (BookFile book = BookFile.look(path).orThrow()) {
            assertThat(book.problems()).as("byte %d, bit %d", at, bit).isNotEmpty();
            // A changed line end leaves the entry before it good, and spoils the one after it.
            int kept = at == to - 1 ? 2 : 3;
            assertThat(book.lines()).containsExactly(entry(1), entry(kept));
            assertThat(book.suspects()).isNotEmpty();
          }
        }
      }
    }

    /** Every bit of a small book, its ends among them; the remark above the entries is no entry. */
    @Test
    void inAnyBitOfTheWholeBookIsToldOrHarmsNothing() throws IOException {
      Path path = bookOf(3);
      byte[] whole = Files.readAllBytes(path);
      int header = BookText.HEADER.length();
      for (int at = 0; at < whole.length; at++) {
        for (int bit = 0; bit < 8; bit++) {
          byte[] bad = whole.clone();
          bad[at] ^= (byte) (1 << bit);
          Files.write(path, bad);
          Read<BookFile> read = BookFile.look(path);
          boolean told = read.map(book -> !book.problems().isEmpty()).orElse(true);
          boolean all =
              read.map(BookFile::lines)
                  .orElse(List.of())
                  .equals(List.of(entry(1), entry(2), entry(3)));
          assertThat(told || (all && (at <= header || at == whole.length - 1)))
              .as("byte %d, bit %d", at, bit)
              .isTrue();
        }
      }
    }

    @Test
    void isToldWithItsNumberAndUsedOnceAccepted() throws IOException {
      Path path = bookOf(3);
      Files.writeString(path, Files.readString(path).replaceFirst("count: 1", "count: 7"));
      try (BookFile book = open(path)) {
        assertThat(book.lines()).containsExactly(entry(2), entry(3));
        Problem problem = book.problems().get(0);
        assertThat(problem.line()).isEqualTo(2);
        assertThat(problem.wrong())
            .startsWith("This entry was changed after it was written, its check does not fit: - {");
        assertThat(book.nextNumber()).isEqualTo(4);
        List<BookLine> now = book.accept(book.suspects().get(0), NOW).orThrow();
        assertThat(now.get(0).fields()).containsEntry("count", 7L);
      }
      try (BookFile again = open(path)) {
        assertThat(again.lines()).hasSize(4);
        assertThat(again.lines().get(0).fields()).containsEntry("count", 7L);
        assertThat(again.problems()).isEmpty();
      }
    }

    @Test
    void hasToBeAcceptedAgainIfItIsChangedAgain() throws IOException {
      Path path = bookOf(2);
      Files.writeString(path, Files.readString(path).replaceFirst("count: 1", "count: 7"));
      try (BookFile book = open(path)) {
        book.accept(book.suspects().get(0), NOW).orThrow();
      }
      Files.writeString(path, Files.readString(path).replaceFirst("count: 7", "count: 8"));
      try (BookFile book = open(path)) {
        assertThat(book.suspects()).hasSize(1);
      }
    }

    @Test
    void cannotBeAcceptedIfItIsNoEntry() throws IOException {
      Path path = bookOf(1);
      Files.writeString(path, Files.readString(path) + "six more today\n");
      try (BookFile book = open(path)) {
        assertThat(book.problems().get(0).wrong())
            .isEqualTo("This line cannot be read as an entry: six more today");
        assertThat(book.accept(book.suspects().get(0), NOW).problem().orElseThrow())
            .startsWith("Line 3 of ")
            .endsWith("so there is nothing to accept: mend it in an editor first.");
        assertThat(book.nextNumber()).isEqualTo(3);
      }
    }

    @Test
    void byHandCarriesNoCheckAndWaitsToo() throws IOException {
      Path path = bookOf(1);
      Files.writeString(
          path,
          Files.readString(path)
              + "- {n: 2, at: 2026-11-25T21:00:00Z, by: desk, kind: note, text: by hand}\n");
      try (BookFile book = open(path)) {
        assertThat(book.lines()).hasSize(1);
        assertThat(book.accept(book.suspects().get(0), NOW).orThrow())
            .extracting(BookLine::kind)
            .containsExactly("six-counted", "note", "line-accepted");
      }
    }
  }

  @Nested
  class OddButHarmlessFiles {
    @Test
    void lineEndsOfAnotherSystemCommentsAndBlankLinesArePassedBy() throws IOException {
      Path path = bookOf(2);
      Files.writeString(
          path, "\uFEFF---\r\n\r\n# mine\r\n" + Files.readString(path).replace("\n", "\r\n"));
      try (BookFile book = open(path)) {
        assertThat(book.lines()).containsExactly(entry(1), entry(2));
        assertThat(book.problems()).isEmpty();
      }
    }

    @Test
    void anEntryThatStandsTwiceIsCountedOnceAndTold() throws IOException {
      Path path = bookOf(2);
      String text = Files.readString(path);
      Files.writeString(path, text + text.lines().skip(1).findFirst().orElseThrow() + "\n");
      try (BookFile book = open(path)) {
        assertThat(book.lines()).hasSize(2);
        assertThat(book.problems().get(0).wrong())
            .isEqualTo("Entry 1 of bench stands here a second time, the same as on line 2.");
      }
    }

    @Test
    void aNumberGivenTwiceWithAnotherContentIsTold() throws IOException {
      Path path = bookOf(2);
      BookLine other = new BookLine(1, NOW, "bench", "other", Map.of());
      Files.writeString(path, Files.readString(path) + BookText.encode(other, "") + "\n");
      try (BookFile book = open(path)) {
        assertThat(book.lines()).hasSize(3).last().isEqualTo(other.madeBy("bench~2"));
        assertThat(book.problems().get(0).wrong())
            .isEqualTo("Entry 1 of bench says something else here than on line 2.");
      }
    }

    @Test
    void aBookOfANewerFormatOpensToLookAndSaysSo() throws IOException {
      Path path = bookOf(2);
      Files.writeString(path, Files.readString(path).replace("book, format 2", "book, format 3"));
      try (BookFile book = open(path)) {
        assertThat(book.lines()).hasSize(2);
        assertThat(book.whyReadOnly())
            .hasValueSatisfying(
                why -> assertThat(why).contains("A newer Linkwright wrote this book, in format 3"));
      }
    }

    @Test
    void entriesOfANewerProgramPassThrough() throws IOException {
      Path path = bookOf(1);
      String newer =
          "- {n: 2, at: 2026-11-25T21:00:00Z, by: bench, kind: hologram, 'deep': [{a: 1.5e3}]}";
      String check = BookText.check(newer.getBytes(StandardCharsets.UTF_8));
      Files.writeString(path, Files.readString(path) + newer + BookText.CHECK_MARK + check + "\n");
      try (BookFile book = open(path)) {
        assertThat(book.problems()).isEmpty();
        assertThat(book.lines().get(1).fields())
            .isEqualTo(Map.of("deep", List.of(Map.of("a", 1500.0))));
      }
    }
  }
}
