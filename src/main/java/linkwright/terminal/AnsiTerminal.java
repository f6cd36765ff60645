package linkwright.terminal;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.terminal.ansi.ANSITerminal;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/**
 * Lanterna's terminal for output only: it asks the terminal nothing, starts no process and reads no
 * key. Size and line settings are {@link TtyMode}'s, keys {@link KeyDecoder}'s.
 */
final class AnsiTerminal extends ANSITerminal {
  /** Text that is pasted comes marked as such. */
  private static final String MARK_PASTES = "\u001b[?2004";

  /** Clicks are told, in the form that knows no widest column (xterm, "SGR" coordinates). */
  private static final String TELL_CLICKS = "\u001b[?1000";

  private static final String WIDE_CLICKS = "\u001b[?1006";

  private TerminalSize size = new TerminalSize(80, 24);

  AnsiTerminal(OutputStream output, Charset charset) {
    super(InputStream.nullInputStream(), output, charset);
  }

  /** Takes a new size over and tells the screen. */
  void resize(Display.Size now) throws IOException {
    size = new TerminalSize(now.columns(), now.rows());
    getTerminalSize();
  }

  void tellPastesAndClicks(boolean clicks) throws IOException {
    write(MARK_PASTES + "h" + (clicks ? TELL_CLICKS + "h" + WIDE_CLICKS + "h" : ""));
  }

  void untellPastesAndClicks(boolean clicks) throws IOException {
    write((clicks ? WIDE_CLICKS + "l" + TELL_CLICKS + "l" : "") + MARK_PASTES + "l");
  }

  private void write(String sequence) throws IOException {
    writeToTerminal(sequence.getBytes(StandardCharsets.US_ASCII));
  }

  @Override
  protected TerminalSize findTerminalSize() {
    return size == null ? new TerminalSize(80, 24) : size;
  }
}
