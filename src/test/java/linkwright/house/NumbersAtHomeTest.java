package linkwright.house;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Numbers are read and written in {@code quantity}, so that all of them read and look alike. */
class NumbersAtHomeTest {
  private static final Path MAIN = Path.of("src", "main", "java", "linkwright");

  private static final Pattern ELSEWHERE =
      Pattern.compile(
          "parse(Int|Long|Double|Float)\\b|(Double|Float)\\.(toString|valueOf)\\("
              + "|Integer\\.valueOf\\(|Long\\.valueOf\\(|BigDecimal\\.valueOf|new BigDecimal\\("
              + "|DecimalFormat|NumberFormat\\b|%[-+,0-9.]*[feg]\\b");

  @Test
  void whatever_reads_or_writes_a_number_elsewhere_is_listed_with_its_reason() throws IOException {
    try (Stream<Path> files = Files.walk(MAIN)) {
      List<String> found =
          files
              .filter(file -> file.toString().endsWith(".java"))
              .filter(file -> !file.startsWith(MAIN.resolve("quantity")))
              .filter(NumbersAtHomeTest::hasNumbers)
              .map(file -> MAIN.relativize(file).toString().replace('\\', '/'))
              .map(name -> name.replace(".java", "").replace('/', '.'))
              .toList();
      Exceptions.of("numbers-elsewhere").areAllThatIsFound(found);
    }
  }

  private static boolean hasNumbers(Path file) {
    try {
      return ELSEWHERE.matcher(Files.readString(file)).find();
    } catch (IOException unreadable) {
      throw new java.io.UncheckedIOException(unreadable);
    }
  }
}
