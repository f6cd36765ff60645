package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import linkwright.books.BookFile;
import linkwright.books.BookLine;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A book that is gone, emptied or led away: what is said is why, and what was shown of it. */
class GoneBookTest {
  @TempDir private Path folder;
  private Commandline line;
  private Path book;

  @BeforeEach
  void aJob() {
    line = new Commandline(folder);
    assertThat(line.typing(List.of("note the first", "quit"), "walk", "--plain", "--new", "Gate"))
        .isZero();
    book = line.home().resolve("jobs/gate.yaml");
    assertThat(book).exists();
  }

  @Test
  void aBookThatVanishedIsTold() throws IOException {
    Files.delete(book);

    for (String command : List.of("jobs", "check", "walk --plain gate")) {
      assertThat(line.run(command.split(" ", -1))).as(command).isNotZero();
      assertThat(line.out() + line.err())
          .as(command)
          .containsPattern("gate.yaml: This book is gone; entry \\d+ was shown as done.");
    }

    Files.delete(line.home().resolve("jobs/gate.last"));
    assertThat(line.run("jobs")).isZero();
  }

  /** A script that enters what came has to know that it is in the drawer, whatever else is told. */
  @Test
  void whatIsEnteredMeanwhileIsEnteredAndSaysSo() throws IOException {
    Files.delete(book);

    assertThat(line.run("drawer", "--came", "wire-9", "--wire", "0.9 mm", "--length", "3 m"))
        .isZero();
    assertThat(line.out()).contains("wire-9");
    assertThat(line.err()).contains("This book is gone");
    assertThat(line.run("drawer")).isNotZero();
  }

  @Test
  void anEntryInTheFutureIsToldByCheckAndCountsOn() throws IOException {
    BookLine ahead =
        new BookLine(
            99,
            Instant.parse("2222-02-02T02:02:02Z"),
            "bench-a2b3c4d5",
            "noted",
            Map.of("text", "late"));
    try (BookFile open = BookFile.open(book, "bench-a2b3c4d5", Instant.now()).orThrow()) {
      open.append(List.of(ahead)).orThrow();
    }

    assertThat(line.run("check", book.toString())).isEqualTo(1);
    assertThat(line.out())
        .contains("Entry 99 of bench lies in the future, at 2222-02-02T02:02:02Z")
        .contains("It is kept and used.");
  }

  @Test
  void anEmptiedBookIsTold() throws IOException {
    Files.write(book, new byte[0]);

    assertThat(line.run("check", book.toString())).isEqualTo(1);
    assertThat(line.out())
        .containsPattern("This book was emptied; entry \\d+ was shown as done.")
        .doesNotContain("format: 1");
  }

  /** What was done may come back from a copy: no new job is begun over it without a word. */
  @Test
  void anEmptiedBookIsLookedAtOnlyUntilItIsBroughtBackOrGivenUp() throws IOException {
    String whole = Files.readString(book);
    for (String left : List.of("", whole.substring(0, whole.indexOf("- {n:")))) {
      Files.writeString(book, left);

      line.typing(List.of("note the second", "quit"), "walk", "--plain", "gate");

      assertThat(line.out() + line.err())
          .contains("This book was emptied", "brought back from a copy", "take gate.last away")
          .contains("Job: gate, looked at only.");
      assertThat(book).hasContent(left);
    }

    Files.writeString(book, whole);
    assertThat(isWritten()).isTrue();

    Files.writeString(book, "");
    Files.delete(line.home().resolve("jobs/gate.last"));
    assertThat(isWritten()).isTrue();
  }

  private boolean isWritten() throws IOException {
    try (BookFile open = BookFile.open(book, "bench-a2b3c4d5", Instant.now()).orThrow()) {
      return open.whyReadOnly().isEmpty();
    }
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aBookThatALinkLeadsOutOfTheFolderIsTold() throws IOException {
    Path elsewhere = folder.resolve("elsewhere.yaml");
    Files.move(book, elsewhere);
    Files.createSymbolicLink(book, elsewhere);

    assertThat(line.run("walk", "--plain", "gate")).isNotZero();
    assertThat(line.err()).contains("is a link that leads out").doesNotContain("--new");
  }
}
