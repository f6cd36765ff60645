package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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
          .containsPattern("gate.yaml is gone; entry \\d+ was shown as done.");
    }

    Files.delete(line.home().resolve("jobs/gate.last"));
    assertThat(line.run("jobs")).isZero();
  }

  @Test
  void anEmptiedBookIsTold() throws IOException {
    Files.write(book, new byte[0]);

    assertThat(line.run("check", book.toString())).isEqualTo(1);
    assertThat(line.out())
        .containsPattern("This book was emptied; entry \\d+ was shown as done.")
        .doesNotContain("format: 1");
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
