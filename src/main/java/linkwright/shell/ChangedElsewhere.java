package linkwright.shell;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import linkwright.files.Home;

/** Tells whether her bench or her drawer is another file than it was when this was asked last. */
final class ChangedElsewhere {
  private final Path benchFile;
  private final Path drawerFile;
  private String bench;
  private String drawer;

  ChangedElsewhere(Home home) {
    benchFile = home.bench();
    drawerFile = home.drawer();
    bench = stamp(benchFile);
    drawer = stamp(drawerFile);
  }

  boolean bench() {
    String before = bench;
    bench = stamp(benchFile);
    return !bench.equals(before);
  }

  boolean drawer() {
    String before = drawer;
    drawer = stamp(drawerFile);
    return !drawer.equals(before);
  }

  private static String stamp(Path path) {
    try {
      BasicFileAttributes now = Files.readAttributes(path, BasicFileAttributes.class);
      return now.lastModifiedTime() + " " + now.size() + " " + now.fileKey();
    } catch (IOException gone) {
      return "";
    }
  }
}
