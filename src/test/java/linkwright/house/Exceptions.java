package linkwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * What a check of the house finds and is allowed for the time being: a file of lines {@code what:
 * why}. Whatever is found and not listed fails, and so does a line whose fault is mended: it must
 * go, so that the fault cannot come back unseen. {@code -Dhouse=strike} takes such lines out; none
 * is ever put in by a program.
 */
final class Exceptions {
  private final Path file;
  private final List<String> lines;

  private Exceptions(Path file, List<String> lines) {
    this.file = file;
    this.lines = lines;
  }

  static Exceptions of(String name) throws IOException {
    Path file = Path.of("src", "test", "resources", "house", name + ".txt");
    return new Exceptions(file, Files.readAllLines(file));
  }

  /** What is listed, with its reason; a listing without one fails. */
  Map<String, String> listed() {
    Map<String, String> listed = new LinkedHashMap<>();
    for (String line : lines) {
      if (isListing(line)) {
        int colon = line.indexOf(": ");
        assertThat(colon).as("%s: \"%s\" needs a reason after \": \"", file, line).isPositive();
        String before = listed.put(line.substring(0, colon), line.substring(colon + 2).strip());
        assertThat(before).as("%s: \"%s\" stands twice", file, line).isNull();
      }
    }
    return listed;
  }

  private static boolean isListing(String line) {
    return !line.isBlank() && !line.startsWith("#");
  }

  /** Fails unless exactly what is listed was found. */
  void areAllThatIsFound(Collection<String> found) throws IOException {
    Map<String, String> listed = listed();
    TreeSet<String> unlisted = new TreeSet<>(found);
    unlisted.removeAll(listed.keySet());
    assertThat(unlisted).as("mend it, or list it with its reason in %s", file).isEmpty();
    TreeSet<String> mended = new TreeSet<>(listed.keySet());
    mended.removeAll(found);
    if (System.getProperty("house", "").equals("strike")) {
      strike(mended);
    } else {
      assertThat(mended).as("mended: strike it from %s (-Dhouse=strike)", file).isEmpty();
    }
  }

  private void strike(Collection<String> mended) throws IOException {
    List<String> kept = new ArrayList<>(lines);
    kept.removeIf(line -> isListing(line) && mended.contains(line.split(": ", 2)[0]));
    Files.write(file, kept);
  }
}
