package linkwright.books;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import linkwright.disk.FailPoint;
import linkwright.files.BenchFile;
import linkwright.files.DraftStore;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.job.LotFact;
import linkwright.shell.DrawerBook;

/** A second program for the tests: does one thing and dies at a fail point on the way, by name. */
final class DyingProgram {
  static final int DEAD = 137;
  static final Instant NOW = Instant.parse("2026-11-25T20:00:00Z");

  private DyingProgram() {}

  /** What, where it dies, and the files that it works on. */
  public static void main(String[] arguments) throws IOException {
    String what = arguments[0];
    String point = arguments[1];
    Path path = Path.of(arguments[2]);
    FailPoint.during(
        name -> {
          if (name.equals(point)) {
            Runtime.getRuntime().halt(DEAD);
          }
        },
        () -> perform(what, path));
  }

  private static void perform(String what, Path path) {
    switch (what) {
      case "append" -> append(path);
      case "open" -> BookFile.open(path, "bench", NOW).orThrow();
      case "drawer" ->
          DrawerBook.keep(
              new Home(path.getParent()),
              "bench",
              NOW,
              new LotFact.LotCounted("march", OptionalDouble.empty(), OptionalDouble.of(9), ""));
      case "bench" ->
          BenchFile.change(
                  new Home(path.getParent()),
                  Map.of("kerf", "0.7 mm"),
                  Library.load(new Home(path.getParent())).reference(),
                  List.of())
              .orThrow();
      case "draft" ->
          new DraftStore(path.getParent())
              .keep("trace", "plan", Map.of("wire", "1.1 mm", "link", "new"));
      case "merge" ->
          BookMerge.of(List.of(path))
              .orThrow()
              .write(path.resolveSibling("together.yaml"))
              .orThrow();
      default -> throw new IllegalArgumentException(what);
    }
  }

  private static void append(Path path) {
    BookFile book = BookFile.open(path, "bench", NOW).orThrow();
    book.append(List.of(BookFileTest.entry(book.nextNumber()))).orThrow();
  }

  /** Runs it to its death; answers with its exit code. */
  static int run(String what, String point, Path path) throws IOException {
    Process process =
        new ProcessBuilder(
                ProcessHandle.current().info().command().orElse("java"),
                "-XX:TieredStopAtLevel=1",
                "-Xmx256m",
                "-cp",
                System.getProperty("java.class.path"),
                DyingProgram.class.getName(),
                what,
                point,
                path.toString())
            .inheritIO()
            .start();
    try {
      if (!process.waitFor(60, TimeUnit.SECONDS)) {
        process.toHandle().destroyForcibly();
        throw new AssertionError("It neither did its work nor died: " + what + " " + point);
      }
      return process.exitValue();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new AssertionError("Interrupted", stopped);
    }
  }
}
