package linkwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The README shows the screens as they are: the same pictures that the golden tests hold. */
class ReadmeTest {
  private static final Path PICTURES = Path.of("src", "test", "resources", "golden", "80x24");

  @ParameterizedTest
  @ValueSource(strings = {"plan", "tests", "bench-count", "bench-remedy"})
  void theReadmeShowsTheScreenAsItIs(String name) throws IOException {
    String readme = Files.readString(Path.of("README.md"));

    assertThat(readme).contains(indented(Files.readString(PICTURES.resolve(name + ".txt"))));
  }

  /** As a block of code stands in Markdown: four spaces before each line, none after it. */
  private static String indented(String picture) {
    return Arrays.stream(picture.split("\n", -1))
        .map(line -> ("    " + line).stripTrailing())
        .collect(Collectors.joining("\n"))
        .stripTrailing();
  }
}
