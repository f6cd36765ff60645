package linkwright.terminal;

import java.io.IOException;
import java.io.OutputStream;

/**
 * Collects a whole repaint and writes it in one call; a write for each cell is what makes a screen
 * slow. Leaves NUL bytes out, which Lanterna puts after characters of two bytes.
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
    if ((b & 0xFF) == 0) {
      return;
    }
    if (used == ROOM) {
      flush();
    }
    buffer[used++] = (byte) b;
  }

  @Override
  public synchronized void write(byte[] bytes, int from, int length) throws IOException {
    for (int i = from; i < from + length; i++) {
      write(bytes[i]);
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
