package linkwright.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Screens as they were once looked at and found right, kept as plain rows with the tones beside
 * them, apart. A normal run only compares; {@code -Dgolden=write} writes what is new or changed, to
 * be looked at before it is committed.
 */
public final class Golden {
  private static final Path FOLDER = Path.of("src", "test", "resources", "golden");

  private Golden() {}

  /** Checks that a grid looks as the golden screen of this name does. */
  public static void assertLooks(String name, Grid grid) {
    Path file = FOLDER.resolve(name + ".txt");
    String seen = asText(grid);
    try {
      if (System.getProperty("golden", "").equals("write")) {
        Files.createDirectories(file.getParent());
        Files.writeString(file, seen);
      }
      assertThat(file).as("golden screen, written with -Dgolden=write").exists();
      assertThat(seen).as(name).isEqualTo(Files.readString(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String asText(Grid grid) {
    StringBuilder text = new StringBuilder(grid.text());
    text.append("-- tones\n");
    for (int y = 0; y < grid.height(); y++) {
      text.append(grid.rowTones(y).stripTrailing()).append('\n');
    }
    return text.toString();
  }
}
