package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import linkwright.cli.console.Exit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Whatever is asked of a job whose book is not read tells why, and nothing is made up for it. */
class UnreadBookTest {
  private static final List<String> ASKING =
      List.of("plan gate", "again gate", "export gate", "jobs", "check gate");

  @TempDir private Path folder;
  private Commandline line;
  private Path book;

  @BeforeEach
  void aJob() {
    line = new Commandline(folder);
    assertThat(line.typing(List.of("quit"), "walk", "--plain", "--new", "Gate")).isZero();
    book = line.home().resolve("jobs/gate.yaml");
  }

  @Test
  void aBookThatCannotBeReadIsNoJobWithoutAPlan() throws IOException {
    Files.write(book, Files.readString(book).getBytes(StandardCharsets.UTF_16LE));
    for (String command : ASKING) {
      assertThat(line.run(command.split(" ", -1))).as(command).isEqualTo(Exit.PROBLEMS);
      assertThat(line.out() + line.err())
          .as(command)
          .contains("is not written in UTF-8")
          .doesNotContain("no plan");
    }
    assertThat(line.run("class", "--as", "text")).as("class").isEqualTo(Exit.PROBLEMS);
    assertThat(line.out()).contains("is not written in UTF-8");
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aBookThatALinkLeadsOutOfTheFolderIsFollowedByNobody() throws IOException {
    Path elsewhere = folder.resolve("elsewhere.yaml");
    Files.move(book, elsewhere);
    Files.createSymbolicLink(book, elsewhere);
    for (String command : ASKING) {
      assertThat(line.run(command.split(" ", -1))).as(command).isEqualTo(Exit.PROBLEMS);
      assertThat(line.out() + line.err()).as(command).contains("is a link that leads out");
    }
    assertThat(line.run("check", book.toString())).isEqualTo(Exit.PROBLEMS);
    assertThat(line.out()).contains("is a link that leads out");
  }
}
