package linkwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What fuzzing by coverage found worth keeping is read again in every build. */
class CorpusTest {
  private static final Path CORPUS = Path.of("src/test/resources/corpus");

  static List<Path> targets() throws IOException {
    try (Stream<Path> folders = Files.list(CORPUS)) {
      return folders.filter(Files::isDirectory).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("targets")
  void isReadWithoutAFault(Path target) throws IOException {
    List<Path> inputs;
    try (Stream<Path> files = Files.list(target)) {
      inputs = files.sorted().toList();
    }
    assertThat(inputs).isNotEmpty();
    for (Path input : inputs) {
      byte[] bytes = Files.readAllBytes(input);
      try {
        Fuzz.read(target.getFileName().toString(), bytes);
      } catch (RuntimeException | AssertionError fault) {
        throw new AssertionError(input.toString(), fault);
      }
    }
  }
}
