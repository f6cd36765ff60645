package linkwright.terminal;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import com.googlecode.lanterna.terminal.Terminal;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import com.googlecode.lanterna.terminal.virtual.VirtualTerminalListener;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.Optional;
import java.util.Queue;
import linkwright.coach.keys.Key;
import linkwright.view.Glyphs;
import linkwright.view.Grid;

/**
 * A display without a terminal, for tests: keys come from a script, and what a real one would show
 * can be read back. When the script is at its end, {@link #poll} answers with nothing at once.
 */
public final class ScriptedDisplay implements Display {
  private final DefaultVirtualTerminal terminal;
  private final Painter painter;
  private final Glyphs glyphs;
  private final Queue<Input> others = new ArrayDeque<>();
  private final long made = System.nanoTime();
  private boolean early;
  private int bells;
  private int repaints;
  private boolean closed;

  /** A display of this size that draws all of Unicode. */
  public ScriptedDisplay(int columns, int rows) {
    this(columns, rows, Glyphs.FULL, Look.DARK);
  }

  /** A display of this size, with these characters and this look. */
  public ScriptedDisplay(int columns, int rows, Glyphs glyphs, Look look) {
    this.glyphs = glyphs;
    this.terminal = new DefaultVirtualTerminal(new TerminalSize(columns, rows));
    terminal.addVirtualTerminalListener(
        new VirtualTerminalListener() {
          @Override
          public void onFlush() {
            repaints++;
          }

          @Override
          public void onBell() {
            bells++;
          }

          @Override
          public void onClose() {}

          @Override
          public void onResized(Terminal resized, TerminalSize size) {}
        });
    terminal.enterPrivateMode();
    this.painter =
        new Painter(terminal, Theme.of(look, ColourDepth.RGB), glyphs, Painter.Blocks.LETTERS);
  }

  /** Adds typed letters to the script. */
  public ScriptedDisplay type(String text) {
    text.codePoints().forEach(c -> terminal.addInput(new KeyStroke((char) c, false, false)));
    return this;
  }

  /** Adds a key to the script. */
  public ScriptedDisplay press(Key key) {
    terminal.addInput(
        key.is(Key.Kind.CHARACTER)
            ? new KeyStroke(key.text().charAt(0), key.ctrl(), false)
            : new KeyStroke(type(key.kind())));
    return this;
  }

  /** All that it tells came before the first page was drawn. */
  public ScriptedDisplay early() {
    early = true;
    return this;
  }

  @Override
  public long cameAtNanos() {
    return early ? made : System.nanoTime();
  }

  /** Adds a click; it comes after the keys. */
  public ScriptedDisplay click(int x, int y) {
    others.add(new Input.Clicked(x, y));
    return this;
  }

  /** Ends the program; it comes after keys and clicks. */
  public ScriptedDisplay end() {
    others.add(new Input.Ended());
    return this;
  }

  /** Changes the size. */
  public ScriptedDisplay resize(int columns, int rows) {
    terminal.setTerminalSize(new TerminalSize(columns, rows));
    others.add(new Input.Resized(columns, rows));
    return this;
  }

  private static KeyType type(Key.Kind kind) {
    return switch (kind) {
      case CHARACTER -> KeyType.Character;
      case ENTER -> KeyType.Enter;
      case ESCAPE -> KeyType.Escape;
      case BACKSPACE -> KeyType.Backspace;
      case DELETE -> KeyType.Delete;
      case TAB -> KeyType.Tab;
      case BACK_TAB -> KeyType.ReverseTab;
      case UP -> KeyType.ArrowUp;
      case DOWN -> KeyType.ArrowDown;
      case LEFT, WORD_LEFT -> KeyType.ArrowLeft;
      case RIGHT, WORD_RIGHT -> KeyType.ArrowRight;
      case PAGE_UP -> KeyType.PageUp;
      case PAGE_DOWN -> KeyType.PageDown;
      case HOME -> KeyType.Home;
      case END -> KeyType.End;
    };
  }

  /** What the terminal shows, row by row, spaces at the ends of rows left off. */
  public String text() {
    StringBuilder text = new StringBuilder();
    TerminalSize size = terminal.getTerminalSize();
    for (int y = 0; y < size.getRows(); y++) {
      StringBuilder row = new StringBuilder();
      for (int x = 0; x < size.getColumns(); x++) {
        var character = terminal.getCharacter(x, y);
        row.append(character.getCharacterString());
        if (character.isDoubleWidth()) {
          x++;
        }
      }
      text.append(row.toString().stripTrailing()).append('\n');
    }
    return text.toString();
  }

  /** How often the bell rang. */
  public int bells() {
    return bells;
  }

  /** How often something was painted. */
  public int repaints() {
    return repaints;
  }

  /** Whether it was closed. */
  public boolean isClosed() {
    return closed;
  }

  @Override
  public GridSize size() {
    TerminalSize size = terminal.getTerminalSize();
    return new GridSize(size.getColumns(), size.getRows());
  }

  @Override
  public Glyphs glyphs() {
    return glyphs;
  }

  @Override
  public Optional<Input> poll(long millis) {
    KeyStroke stroke = terminal.pollInput();
    while (stroke != null) {
      Optional<Input> read = KeyStrokes.read(stroke);
      if (read.isPresent()) {
        return read;
      }
      stroke = terminal.pollInput();
    }
    return Optional.ofNullable(others.poll());
  }

  @Override
  public void show(Grid grid) {
    try {
      painter.paint(grid, size());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void bell() {
    terminal.bell();
  }

  @Override
  public void close() {
    closed = true;
  }
}
