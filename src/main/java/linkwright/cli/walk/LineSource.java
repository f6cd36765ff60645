package linkwright.cli.walk;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/**
 * Lines of the user, read on a thread of its own so that timers can ring meanwhile. A line is read
 * only when one is waited for, so that nothing is taken that is not used. To be used by one thread.
 */
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
  private final Semaphore wanted = new Semaphore(0);
  private boolean waiting;

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
      wanted.acquire();
      for (Optional<String> line = next(in); line.isPresent(); line = next(in)) {
        came.add(new Came.Line(line.get()));
        wanted.acquire();
      }
    } catch (IOException gone) {
      // Whoever typed is gone; that is the end of the lines, told below.
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    } finally {
      // Whatever happened to the reading, whoever waits must hear of the end.
      came.add(new Came.Ended());
    }
  }

  private static Optional<String> next(BufferedReader in) throws IOException {
    return Optional.ofNullable(in.readLine());
  }

  /** Waits for a line, no longer than so many milliseconds. */
  Came await(long millis) {
    if (!waiting) {
      waiting = true;
      wanted.release();
    }
    try {
      Optional<Came> next = Optional.ofNullable(came.poll(millis, TimeUnit.MILLISECONDS));
      waiting = next.isEmpty();
      return next.orElseGet(Came.Nothing::new);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return new Came.Ended();
    }
  }
}
