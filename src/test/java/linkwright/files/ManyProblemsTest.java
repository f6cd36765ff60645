package linkwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import linkwright.books.CheckedLate;
import linkwright.quantity.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Files of tens of thousands of wrong lines: the first are told and the rest counted, in about the
 * second that reading them takes. The bound is twice that, of processor time.
 */
class ManyProblemsTest {
  private static final String ROUTINE =
      "format: 1\nroutine: mine\ntitle: t\nsays: s\nmakes: chain\nends: rings\nsteps:\n";

  @TempDir Path folder;

  private List<Problem> check(String head, int lines, IntFunction<String> line) throws IOException {
    String text = IntStream.range(0, lines).mapToObj(line).collect(Collectors.joining("\n"));
    Path path = Files.writeString(folder.resolve("many.yaml"), head + text + "\n");
    long began = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    List<Problem> told =
        Checking.check(new Home(folder), List.of(path), CheckedLate.BOOKS, Map.of());
    long took = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - began;
    assertThat(took / 1_000_000).as("milliseconds of processor time").isLessThan(2000);
    return told;
  }

  @Test
  void of_a_plan() throws IOException {
    assertThat(check("metal: sterling\n", 40_000, i -> "k" + i + ": 1"))
        .hasSize(21)
        .last()
        .extracting(Problem::wrong)
        .isEqualTo("39984 problems more.");
  }

  @Test
  void of_a_book() throws IOException {
    assertThat(
            check("# Linkwright job book, format 2\n", 40_000, i -> "- {n: " + i + ", at: \"1\"}"))
        .hasSize(21)
        .last()
        .extracting(Problem::wrong)
        .isEqualTo("39980 problems more.");
  }

  @Test
  void of_a_book_in_another_shape_whose_checks_do_not_fit() throws IOException {
    String entry = "- {n: %d, at: 2026-13-45T20:00:00Z, device: d, kind: noted, text: 'x'} # c";
    assertThat(check("# Linkwright job book, format 2\n", 80_000, i -> entry.formatted(i + 1)))
        .hasSize(21)
        .last()
        .extracting(Problem::wrong)
        .isEqualTo("79980 problems more.");
  }

  @Test
  void of_a_routine_whose_steps_are_wrong() throws IOException {
    List<Problem> told = check(ROUTINE, 40_000, i -> "- stp: " + i);
    assertThat(told).hasSize(21);
    assertThat(told.get(0).wrong()).contains("A routine of 40000 steps is not read");
  }

  @Test
  void of_a_routine_whose_checks_find_something_at_each_step() throws IOException {
    List<Problem> told =
        check(ROUTINE, 500, i -> "- {step: a" + i + ", title: x, part: run, do: x, cautions: [n]}");
    assertThat(told).hasSize(21);
    assertThat(told)
        .anySatisfy(problem -> assertThat(problem.wrong()).contains("a0"))
        .anySatisfy(problem -> assertThat(problem.line()).isGreaterThan(7));
  }
}
