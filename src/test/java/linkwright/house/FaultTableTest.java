package linkwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The table of faults in DEVELOPERS.md names code and tests that there are. */
class FaultTableTest {
  private static final Pattern NAMED = Pattern.compile("`([A-Za-z/.]+)`");
  private static final int COLUMNS = 4;

  @Test
  void every_row_says_where_it_was_mended_and_which_test_shows_it() throws IOException {
    Map<String, String> sources = sources();
    List<String> wrong = new ArrayList<>();
    List<String> rows = rows();
    for (String row : rows) {
      String[] columns = row.substring(1, row.length() - 1).split(" \\| ");
      assertThat(columns).as(row).hasSize(COLUMNS);
      List<String> shown = named(columns[3]);
      boolean unproved = columns[3].strip().equals("–") && columns[0].contains("not proved");
      if (!unproved
          && (shown.isEmpty() || !shown.stream().allMatch(test -> sources.containsKey(test)))) {
        wrong.add("no such test: " + row);
      }
      named(columns[2]).stream()
          .filter(name -> !isThere(name, sources))
          .forEach(name -> wrong.add("no such code: " + name));
    }
    assertThat(rows).hasSizeGreaterThan(30);
    assertThat(wrong).isEmpty();
  }

  private static List<String> rows() throws IOException {
    String text = Files.readString(Path.of("DEVELOPERS.md"));
    String table = text.substring(text.indexOf("| fault | found how |"));
    return table
        .lines()
        .takeWhile(line -> line.startsWith("|"))
        .filter(line -> !line.startsWith("| ---") && !line.startsWith("| fault |"))
        .toList();
  }

  private static List<String> named(String column) {
    Matcher names = NAMED.matcher(column);
    return names.results().map(found -> found.group(1)).toList();
  }

  /** A class, a method of one, a package, a file, or a key. */
  private static boolean isThere(String name, Map<String, String> sources) {
    if (name.contains("/")) {
      return Files.exists(Path.of(name));
    }
    List<String> parts = List.of(name.split("\\."));
    String last = parts.get(parts.size() - 1);
    if (parts.size() > 1 && sources.containsKey(parts.get(parts.size() - 2))) {
      return sources.get(parts.get(parts.size() - 2)).matches("(?s).*\\b" + last + "\\b.*");
    }
    return sources.containsKey(last)
        || Files.isDirectory(Path.of("src/main/java/linkwright", name.replace('.', '/')));
  }

  private static Map<String, String> sources() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src"))) {
      return files
          .filter(file -> file.toString().endsWith(".java"))
          .filter(file -> !file.endsWith("package-info.java"))
          .collect(
              Collectors.toMap(
                  file -> file.getFileName().toString().replace(".java", ""),
                  FaultTableTest::text));
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException unreadable) {
      throw new java.io.UncheckedIOException(unreadable);
    }
  }
}
