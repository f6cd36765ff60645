package linkwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class PackagesTest {
  private static final int MOST_LINES = 4000;
  private static final int MOST_OF_A_FILE = 400;

  @Test
  void no_packages_know_each_other_in_a_circle() throws IOException {
    assertThat(Program.known().get("linkwright.view")).contains("linkwright.coach.kernel");
    Exceptions.of("circles").areAllThatIsFound(circles(Program.known()));
  }

  @Test
  void a_circle_of_any_length_is_found() {
    assertThat(
            circles(
                Map.of(
                    "linkwright.a", Set.of("linkwright.a.b"),
                    "linkwright.a.b", Set.of("linkwright.c", "linkwright.d"),
                    "linkwright.c", Set.of("linkwright.a"),
                    "linkwright.d", Set.of())))
        .containsExactly("a, a.b, c");
  }

  /** Each group of packages that all reach each other, by their names. */
  private static Collection<String> circles(Map<String, Set<String>> known) {
    Set<String> circles = new TreeSet<>();
    for (String one : known.keySet()) {
      TreeSet<String> group = new TreeSet<>();
      for (String other : reached(one, known)) {
        if (reached(other, known).contains(one)) {
          group.add(other.substring("linkwright.".length()));
        }
      }
      if (!group.isEmpty()) {
        circles.add(String.join(", ", group));
      }
    }
    return circles;
  }

  private static Set<String> reached(String from, Map<String, Set<String>> known) {
    Set<String> reached = new TreeSet<>();
    TreeSet<String> open = new TreeSet<>(known.get(from));
    while (!open.isEmpty()) {
      String next = open.pollFirst();
      if (reached.add(next)) {
        open.addAll(known.get(next));
      }
    }
    return reached;
  }

  @Test
  void no_package_is_larger_than_one_can_know() throws IOException {
    Map<String, Integer> lines = lines();
    assertThat(lines).containsKey("coach");
    Exceptions listed = Exceptions.of("large-packages");
    lines.values().removeIf(count -> count <= MOST_LINES);
    listed.areAllThatIsFound(lines.keySet());
    lines.forEach(
        (name, count) ->
            assertThat(count)
                .as("lines of %s, which is too large and may not grow", name)
                .isLessThanOrEqualTo(Integer.parseInt(listed.listed().get(name).split(" ", 2)[0])));
  }

  @Test
  void no_file_is_longer_than_one_can_read() throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.walk(Path.of("src"))) {
      files = all.filter(file -> file.toString().endsWith(".java")).toList();
    }
    assertThat(files).hasSizeGreaterThan(1000);
    for (Path file : files) {
      assertThat(Files.readAllLines(file)).as("%s", file).hasSizeLessThanOrEqualTo(MOST_OF_A_FILE);
    }
  }

  /** Package → lines of its files. */
  private static Map<String, Integer> lines() throws IOException {
    Path top = Path.of("src", "main", "java", "linkwright");
    Map<String, Integer> lines = new TreeMap<>();
    List<Path> files;
    try (Stream<Path> all = Files.walk(top)) {
      files = all.filter(file -> file.toString().endsWith(".java")).toList();
    }
    for (Path file : files) {
      String name =
          top.relativize(file.getParent()).toString().replace('\\', '.').replace('/', '.');
      lines.merge(name, Files.readAllLines(file).size(), Integer::sum);
    }
    return lines;
  }
}
