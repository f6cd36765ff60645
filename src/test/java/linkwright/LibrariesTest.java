package linkwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The libraries that the program and its tests run with are those that were looked at: their bytes
 * are written down. After a change of a version, {@code -Dlibraries=write} writes them anew; the
 * lines that changed are then to be those meant.
 */
class LibrariesTest {
  static final Path WRITTEN_DOWN = Path.of("src", "test", "resources", "libraries.sha256");

  private static List<Path> onTheClassPath() {
    return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator, -1))
        .map(Path::of)
        .filter(Files::isRegularFile)
        .toList();
  }

  @Test
  void areByteForByteThoseWrittenDown() throws IOException {
    List<String> found = Checksums.lines(onTheClassPath());
    if (System.getProperty("libraries", "").equals("write")) {
      Files.write(WRITTEN_DOWN, found);
    }
    assertThat(found).hasSizeGreaterThan(10);
    assertThat(found).isEqualTo(Files.readAllLines(WRITTEN_DOWN));
  }

  @Test
  void oneOtherByteIsSeen() throws IOException {
    Path jar = onTheClassPath().get(0);
    Path copy = Files.createTempDirectory(Path.of("target"), "jar").resolve(jar.getFileName());
    byte[] bytes = Files.readAllBytes(jar);
    bytes[bytes.length / 2] ^= 1;
    Files.write(copy, bytes);
    assertThat(Checksums.lines(List.of(copy))).isNotEqualTo(Checksums.lines(List.of(jar)));
  }
}
