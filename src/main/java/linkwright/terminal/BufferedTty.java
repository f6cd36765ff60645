package linkwright.terminal;

import java.io.IOException;
import java.io.OutputStream;

/**
 * Collects a whole repaint and writes it in one call; a write for each cell is what makes a screen
 * slow.
 */
final class BufferedTty extends OutputStream {
  private static final int ROOM = 64 * 1024;

  private final OutputStream tty;
  private final byte[] buffer = new byte[ROOM];
  private int used;

  BufferedTty(OutputStream tty) {
    this.tty = tty;
  }

  @Override
  public synchronized void write(int b) throws IOException {
    if (used == ROOM) {
      flush();
    }
    buffer[used++] = (byte) b;
  }

  @Override
  public synchronized void write(byte[] bytes, int from, int length) throws IOException {
    int done = 0;
    while (done < length) {
      if (used == ROOM) {
        flush();
      }
      int part = Math.min(length - done, ROOM - used);
      System.arraycopy(bytes, from + done, buffer, used, part);
      used += part;
      done += part;
    }
  }

  @Override
  public synchronized void flush() throws IOException {
    int all = used;
    used = 0;
    tty.write(buffer, 0, all);
    tty.flush();
  }
}
