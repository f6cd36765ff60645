package linkwright.terminal;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.TextColor;
import com.googlecode.lanterna.terminal.swing.SwingTerminalFrame;
import com.googlecode.lanterna.terminal.swing.TerminalEmulatorColorConfiguration;
import com.googlecode.lanterna.terminal.swing.TerminalEmulatorDeviceConfiguration;
import com.googlecode.lanterna.terminal.swing.TerminalEmulatorDeviceConfiguration.CursorStyle;
import com.googlecode.lanterna.terminal.swing.TerminalEmulatorPalette;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.swing.WindowConstants;
import linkwright.view.Glyphs;
import linkwright.view.Grid;

/** A display in a window of its own, with letters as large as wished. */
public final class WindowDisplay implements Display {
  private static final int COLUMNS = 100;
  private static final int ROWS = 32;

  private final BlockingQueue<Input> inputs = new LinkedBlockingQueue<>();
  private final AtomicBoolean closed = new AtomicBoolean();
  private final SwingTerminalFrame frame;
  private final Painter painter;
  private final Glyphs glyphs;
  private final WindowLines lines;
  private final String screen;
  private volatile GridSize size;
  private boolean ended;

  private WindowDisplay(Look look, ColourDepth depth, int points) throws IOException {
    List<Font> fonts = WindowFont.choose(points);
    this.glyphs = WindowFont.glyphs(fonts);
    this.frame = frame(fonts, look);
    frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
    frame.addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowClosing(WindowEvent event) {
            inputs.add(new Input.Ended());
          }
        });
    frame.getContentPane().getComponent(0).addMouseListener(new Clicks());
    Theme theme = Theme.of(look, depth);
    var letters = frame.getFontConfiguration();
    this.lines =
        new WindowLines(
            letters.getFontWidth(),
            letters.getFontHeight(),
            tone -> theme.style(tone).colour(),
            new Color(Theme.plain(look)));
    Dimension whole = Toolkit.getDefaultToolkit().getScreenSize();
    this.screen = points + " points on " + whole.width + " x " + whole.height;
    frame.setGlassPane(lines);
    lines.setVisible(true);
    frame.setVisible(true);
    frame.enterPrivateMode();
    this.size = sizeOf(frame.getTerminalSize());
    frame.addResizeListener((terminal, now) -> measure(now));
    this.painter = new Painter(frame, theme, glyphs, Painter.Blocks.SOLID);
    Thread reader = new Thread(this::read, "reads the window's keys");
    reader.setDaemon(true);
    reader.start();
  }

  /**
   * Opens the window.
   *
   * @throws IOException if there is nowhere to open one
   */
  static WindowDisplay open(Look look, ColourDepth depth, int points) throws IOException {
    try {
      return new WindowDisplay(look, depth, points);
    } catch (java.awt.HeadlessException | java.awt.AWTError | LinkageError e) {
      // The last where Java came without its window libraries.
      throw new IOException("No window can be opened here", e);
    }
  }

  private static SwingTerminalFrame frame(List<Font> fonts, Look look) {
    var configuration = WindowFont.configuration(fonts);
    Dimension room = Toolkit.getDefaultToolkit().getScreenSize();
    int columns = Math.min(COLUMNS, (room.width - 40) / configuration.getFontWidth());
    int rows = Math.min(ROWS, (room.height - 100) / configuration.getFontHeight());
    return new SwingTerminalFrame(
        "Linkwright",
        new TerminalSize(Math.max(20, columns), Math.max(5, rows)),
        new TerminalEmulatorDeviceConfiguration(
            0, 500, CursorStyle.UNDER_BAR, new TextColor.RGB(0xE0, 0x93, 0x5F), false),
        configuration,
        TerminalEmulatorColorConfiguration.newInstance(palette(look)));
  }

  /** Lanterna's window tells keys only. */
  private final class Clicks extends MouseAdapter {
    @Override
    public void mousePressed(MouseEvent event) {
      if (event.getButton() == MouseEvent.BUTTON1) {
        int x = event.getX() / frame.getFontConfiguration().getFontWidth();
        int y = event.getY() / frame.getFontConfiguration().getFontHeight();
        inputs.add(new Input.Clicked(x, y));
      }
    }
  }

  /**
   * Only the two colours of plain text and background matter: the theme asks for no other by name.
   */
  private static TerminalEmulatorPalette palette(Look look) {
    Color plain = new Color(Theme.plain(look));
    Color background = new Color(Theme.background(look));
    Color[] named = new Color[19];
    Arrays.fill(named, plain);
    named[2] = background;
    return new TerminalEmulatorPalette(
        named[0], named[1], named[2], named[3], named[4], named[5], named[6], named[7], named[8],
        named[9], named[10], named[11], named[12], named[13], named[14], named[15], named[16],
        named[17], named[18]);
  }

  private void read() {
    while (!closed.get()) {
      KeyStrokes.read(frame.readInput()).ifPresent(inputs::add);
    }
  }

  private void measure(TerminalSize told) {
    GridSize now = sizeOf(told);
    if (!now.equals(size)) {
      size = now;
      inputs.add(new Input.Resized(now.columns(), now.rows()));
    }
  }

  private static GridSize sizeOf(TerminalSize told) {
    return new GridSize(Math.max(1, told.getColumns()), Math.max(1, told.getRows()));
  }

  @Override
  public GridSize size() {
    return size;
  }

  @Override
  public String screen() {
    return screen;
  }

  @Override
  public Glyphs glyphs() {
    return glyphs;
  }

  @Override
  public Optional<Input> poll(long millis) {
    if (ended || closed.get()) {
      return Optional.of(new Input.Ended());
    }
    try {
      Optional<Input> told =
          Optional.ofNullable(inputs.poll(Math.max(0, millis), TimeUnit.MILLISECONDS));
      ended = told.filter(Input.Ended.class::isInstance).isPresent();
      return told;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Optional.of(new Input.Ended());
    }
  }

  @Override
  public void show(Grid grid) {
    if (!closed.get()) {
      try {
        painter.paint(grid.withoutDots(), size);
        lines.show(grid.inks());
      } catch (IOException e) {
        inputs.add(new Input.Ended());
      }
    }
  }

  @Override
  public boolean copy(String text) {
    Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection(text), null);
    return true;
  }

  @Override
  public void bell() {
    if (!closed.get()) {
      frame.bell();
    }
  }

  @Override
  public void close() {
    if (!closed.getAndSet(true)) {
      frame.dispose();
    }
  }
}
