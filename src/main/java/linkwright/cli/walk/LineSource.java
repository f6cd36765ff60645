package linkwright.cli.walk;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/** Lines of the user, read on a thread of its own so that timers can ring meanwhile. */
final class LineSource {
  /** What came of waiting. */
  sealed interface Came {
    /** A line. */
    record Line(String text) implements Came {}

    /** Nothing yet. */
    record Nothing() implements Came {}

    /** There will be no more lines. */
    record Ended() implements Came {}
  }

  private final BlockingQueue<Came> came = new LinkedBlockingQueue<>();

  private LineSource() {}

  static LineSource of(BufferedReader in) {
    LineSource source = new LineSource();
    Thread thread = new Thread(() -> source.readAll(in), "lines");
    // A line that never comes must not keep the program from ending.
    thread.setDaemon(true);
    thread.start();
    return source;
  }

  private void readAll(BufferedReader in) {
    try {
      for (Optional<String> line = next(in); line.isPresent(); line = next(in)) {
        came.add(new Came.Line(line.get()));
      }
    } catch (IOException gone) {
      // Whoever typed is gone; that is the end of the lines, told below.
    }
    came.add(new Came.Ended());
  }

  private static Optional<String> next(BufferedReader in) throws IOException {
    return Optional.ofNullable(in.readLine());
  }

  /** Waits for a line, no longer than so many milliseconds. */
  Came await(long millis) {
    try {
      return Optional.ofNullable(came.poll(millis, TimeUnit.MILLISECONDS))
          .orElseGet(Came.Nothing::new);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return new Came.Ended();
    }
  }
}
