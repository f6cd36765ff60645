package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What {@code walk FILE} does to a file that is no job book: nothing. */
@Timeout(30)
class ForeignFileWalkTest {
  @TempDir private Path folder;

  @Test
  void a_plan_is_not_taken_for_a_book() throws IOException {
    Commandline line = new Commandline(folder);
    String text = "format: 1\nmetal: sterling\nwire: 0.9 mm\nstock: [1 m]";
    Path plan = line.file("elsewhere/plan.yaml", text);
    assertThat(line.typing(List.of("bench", "", "", "quit"), "walk", plan.toString(), "--plain"))
        .isNotZero();
    assertThat(line.err()).contains(plan + " is no job book");
    assertThat(plan).hasContent(text);
    try (Stream<Path> beside = Files.list(plan.getParent())) {
      assertThat(beside).containsExactly(plan);
    }
  }

  @Test
  void a_link_among_the_jobs_is_not_followed_out_of_the_home() throws IOException {
    Commandline line = new Commandline(folder);
    line.typing(List.of("quit"), "walk", "--plain");
    Path jobs = line.home().resolve("jobs");
    Path book;
    try (Stream<Path> books = Files.list(jobs)) {
      book = books.filter(each -> each.toString().endsWith(".yaml")).findFirst().orElseThrow();
    }
    Path outside = Files.createDirectories(folder.resolve("outside")).resolve("theirs.yaml");
    Files.copy(book, outside);
    String before = Files.readString(outside);
    Path link = Files.createSymbolicLink(jobs.resolve("theirs.yaml"), outside);
    assertThat(line.typing(List.of("bench", "", "quit"), "walk", link.toString(), "--plain"))
        .isNotZero();
    assertThat(line.err()).contains("is a link that leads out of your folder");
    assertThat(line.run("check")).isNotZero();
    assertThat(outside).hasContent(before);
    assertThat(folder.resolve("outside/theirs.lock")).doesNotExist();
  }
}
