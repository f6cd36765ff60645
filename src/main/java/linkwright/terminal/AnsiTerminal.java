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

  AnsiTerminal(OutputStream output, Charset charset) {
    super(InputStream.nullInputStream(), output, charset);
  }

  void tellPastesAndClicks(boolean clicks) throws IOException {
    write(MARK_PASTES + "h" + (clicks ? TELL_CLICKS + "h" + WIDE_CLICKS + "h" : ""));
  }

  void untellPastesAndClicks(boolean clicks) throws IOException {
    write((clicks ? WIDE_CLICKS + "l" + TELL_CLICKS + "l" : "") + MARK_PASTES + "l");
  }

  /** The title as it was is kept by the terminal, and given back at the end (xterm, XTWINOPS). */
  static final String KEEP_TITLE = "\u001b[22;2t";

  static final String TITLE_BACK = "\u001b[23;2t";

  /** The picture is held back until it is whole (private mode 2026). */
  static final String HOLD = "\u001b[?2026h";

  static final String LET_GO = "\u001b[?2026l";

  /** Writes a control string. */
  void write(String sequence) throws IOException {
    writeToTerminal(sequence.getBytes(StandardCharsets.US_ASCII));
  }

  /** Lanterna would encode each character by itself, with a NUL after some. */
  @Override
  public void putString(String text) throws IOException {
    writeToTerminal(text.getBytes(getCharset()));
  }

  /** Never asked for by Linkwright; Lanterna's way of finding it waits for an answer. */
  @Override
  protected TerminalSize findTerminalSize() {
    return new TerminalSize(80, 24);
  }
}
