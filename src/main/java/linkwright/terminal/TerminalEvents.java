package linkwright.terminal;

import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/** What the other threads have to tell to the one that polls the terminal. */
final class TerminalEvents {
  /** One thing told. */
  sealed interface Event {
    record Bytes(ByteBuffer bytes, long atNanos) implements Event {}

    record SizeMayHaveChanged() implements Event {}

    record GoesOnAfterStop() implements Event {}

    record Lost() implements Event {}
  }

  private final BlockingQueue<Event> told = new LinkedBlockingQueue<>();

  void tell(Event event) {
    told.add(event);
  }

  /** What is told first within a time; empty if nothing is. */
  Optional<Event> await(long nanos) {
    try {
      return Optional.ofNullable(told.poll(Math.max(0, nanos), TimeUnit.NANOSECONDS));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Optional.of(new Event.Lost());
    }
  }

  /** Tells what is typed from now on, on a thread of its own. */
  void readKeys() {
    Thread reader = new Thread(this::read, "reads keys");
    reader.setDaemon(true);
    reader.start();
  }

  private void read() {
    byte[] bytes = new byte[4096];
    // Not System.in: that one has a buffer and a lock that others may hold.
    try (InputStream in = new FileInputStream(FileDescriptor.in)) {
      int read = in.read(bytes);
      while (read >= 0) {
        tell(new Event.Bytes(ByteBuffer.wrap(Arrays.copyOf(bytes, read)), System.nanoTime()));
        read = in.read(bytes);
      }
    } catch (IOException e) {
      // The terminal is gone, as at the end of the input.
    }
    tell(new Event.Lost());
  }
}
