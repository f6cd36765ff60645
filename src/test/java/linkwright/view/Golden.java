package linkwright.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * Pictures kept beside the tests, for a person to look at: the rows as they are shown, and the
 * tones of the same rows in a file of their own. A test run compares and never writes, unless
 * {@code -Dgolden=write} is given; then look at what it wrote before it is kept.
 */
public final class Golden {
  private static final Path HOME = Path.of("src", "test", "resources", "golden");

  private Golden() {}

  /** Compares a grid with the pictures of that name; the name may hold folders. */
  public static void looks(String name, Grid grid) {
    same(HOME.resolve(name + ".txt"), grid.text());
    same(HOME.resolve(name + ".tones"), tones(grid));
  }

  /** Compares rows with the picture of that name; for what was read back from a terminal. */
  public static void looks(String name, String rows) {
    same(HOME.resolve(name + ".txt"), rows);
  }

  /** The names of all pictures kept, folder and ending included. */
  static List<String> kept() {
    try (Stream<Path> files = Files.walk(HOME)) {
      return files
          .filter(Files::isRegularFile)
          .map(file -> HOME.relativize(file).toString().replace('\\', '/'))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String tones(Grid grid) {
    StringBuilder tones = new StringBuilder();
    for (int y = 0; y < grid.height(); y++) {
      tones.append(grid.rowTones(y).stripTrailing()).append('\n');
    }
    grid.cursor()
        .ifPresent(
            at -> tones.append("cursor ").append(at.x()).append(' ').append(at.y()).append('\n'));
    return tones.toString();
  }

  private static void same(Path file, String now) {
    try {
      if ("write".equals(System.getProperty("golden"))) {
        Files.createDirectories(file.getParent());
        Files.writeString(file, now);
        return;
      }
      assertThat(file).as("the picture; -Dgolden=write makes it").exists();
      String kept = Files.readString(file, StandardCharsets.UTF_8).replace("\r\n", "\n");
      assertThat(now).as(file.toString()).isEqualTo(kept);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
