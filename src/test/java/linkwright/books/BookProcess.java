package linkwright.books;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** A second program for the tests: writes entry after entry and says each number once kept. */
final class BookProcess {
  private BookProcess() {}

  public static void main(String[] arguments) throws IOException {
    Instant now = Instant.parse("2026-11-25T20:00:00Z");
    try (BookFile book = BookFile.open(Path.of(arguments[0]), "child", now).orThrow()) {
      System.out.println(book.whyReadOnly().isPresent() ? "looks" : "writes");
      if (arguments[1].equals("hold")) {
        System.in.read();
        return;
      }
      while (book.whyReadOnly().isEmpty()) {
        int next = book.nextNumber();
        book.append(List.of(new BookLine(next, now, "child", "note", Map.of("text", "é" + next))))
            .orThrow();
        System.out.println(next);
      }
    }
  }

  static Process start(Path book, String what) throws IOException {
    return new ProcessBuilder(
            ProcessHandle.current().info().command().orElse("java"),
            "-Xshare:auto",
            "-XX:TieredStopAtLevel=1",
            "-cp",
            System.getProperty("java.class.path"),
            BookProcess.class.getName(),
            book.toString(),
            what)
        .redirectErrorStream(true)
        .start();
  }

  static void kill(Process process) throws InterruptedException {
    // Through the handle: the process object's own method would close the output before it is read.
    process.toHandle().destroyForcibly();
    if (!process.waitFor(20, TimeUnit.SECONDS)) {
      throw new IllegalStateException("the child did not die");
    }
  }
}
