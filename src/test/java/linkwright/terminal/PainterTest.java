package linkwright.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TerminalPosition;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.TerminalTextUtils;
import com.googlecode.lanterna.TextColor;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import linkwright.coach.keys.Key;
import linkwright.text.Text;
import linkwright.view.Canvas;
import linkwright.view.Glyphs;
import linkwright.view.Grid;
import linkwright.view.Tone;
import org.junit.jupiter.api.Test;

class PainterTest {
  private static Grid grid(int columns, int rows, String text) {
    Canvas canvas = new Canvas(columns, rows, Glyphs.FULL);
    canvas.wrapped(0, 0, columns, rows, text, Tone.PLAIN);
    return canvas.toGrid();
  }

  @Test
  void aGridIsShownAsItIs() {
    ScriptedDisplay display = new ScriptedDisplay(20, 2);
    display.show(grid(20, 2, "12 links, 銀 chain, 0.9 mm"));
    assertThat(display.text()).isEqualTo("12 links, 銀 chain,\n0.9 mm\n");
  }

  @Test
  void nothingIsPaintedWithoutAChange() {
    ScriptedDisplay display = new ScriptedDisplay(20, 2);
    display.show(grid(20, 2, "calm"));
    int before = display.repaints();
    display.show(grid(20, 2, "calm"));
    assertThat(display.repaints()).isEqualTo(before);
    display.show(grid(20, 2, "warm"));
    assertThat(display.repaints()).isGreaterThan(before);
  }

  @Test
  void whateverWasShownBeforeLeavesNoTrace() {
    long seed = 31;
    Random random = new Random(seed);
    ScriptedDisplay display = new ScriptedDisplay(12, 3);
    for (int run = 0; run < 300; run++) {
      StringBuilder text = new StringBuilder();
      for (int i = random.nextInt(40); i >= 0; i--) {
        text.append("a銀 鎖b⣿é□".charAt(random.nextInt(8)));
      }
      Grid grid = grid(12, 3, text.toString());
      display.show(grid);
      assertThat(display.text()).as("seed %d run %d", seed, run).isEqualTo(grid.text());
    }
  }

  @Test
  void aGridOfAnotherSizeIsShownAsFarAsItGoes() {
    ScriptedDisplay display = new ScriptedDisplay(6, 2);
    display.show(grid(10, 1, "abcdefghij"));
    assertThat(display.text()).isEqualTo("abcdef\n\n");
    display.resize(12, 2);
    assertThat(display.poll(0)).contains(new Input.Resized(12, 2));
    display.show(grid(12, 2, "abcdefghijkl"));
    assertThat(display.text()).isEqualTo("abcdefghijkl\n\n");
  }

  @Test
  void theCursorStandsInTheFieldAndGoesAgain() throws IOException {
    DefaultVirtualTerminal terminal = new DefaultVirtualTerminal(new TerminalSize(10, 2));
    Painter painter =
        new Painter(
            terminal, Theme.of(Look.DARK, ColourDepth.RGB), Glyphs.FULL, Painter.Blocks.LETTERS);
    Canvas canvas = new Canvas(10, 2, Glyphs.FULL);
    canvas.text(0, 1, "wire", Tone.FIELD);
    canvas.cursor(4, 1);
    painter.paint(canvas.toGrid(), new Display.GridSize(10, 2));
    assertThat(terminal.isCursorVisible()).isTrue();
    assertThat(terminal.getCursorPosition()).isEqualTo(new TerminalPosition(4, 1));
    painter.paint(grid(10, 2, "wire"), new Display.GridSize(10, 2));
    assertThat(terminal.isCursorVisible()).isFalse();
  }

  @Test
  void tonesBecomeColoursAndAttributes() throws IOException {
    DefaultVirtualTerminal terminal = new DefaultVirtualTerminal(new TerminalSize(10, 1));
    Painter painter =
        new Painter(
            terminal, Theme.of(Look.DARK, ColourDepth.RGB), Glyphs.FULL, Painter.Blocks.SOLID);
    Canvas canvas = new Canvas(10, 1, Glyphs.FULL);
    canvas.text(0, 0, "a", Tone.ACCENT);
    canvas.text(1, 0, "s", Tone.STRONG);
    canvas.text(2, 0, "p", Tone.PLAIN);
    canvas.text(3, 0, "█", Tone.ACCENT);
    painter.paint(canvas.toGrid(), new Display.GridSize(10, 1));
    TextColor copper = new TextColor.RGB(0xE0, 0x93, 0x5F);
    assertThat(terminal.getCharacter(0, 0).getForegroundColor()).isEqualTo(copper);
    assertThat(terminal.getCharacter(1, 0).getModifiers()).containsExactly(SGR.BOLD);
    assertThat(terminal.getCharacter(1, 0).getForegroundColor()).isEqualTo(TextColor.ANSI.DEFAULT);
    assertThat(terminal.getCharacter(2, 0).getModifiers()).isEmpty();
    assertThat(terminal.getCharacter(3, 0).getCharacterString()).isEqualTo(" ");
    assertThat(terminal.getCharacter(3, 0).getModifiers()).containsExactly(SGR.REVERSE);
  }

  @Test
  void theFiguresOfARingingTimerStandOutFromTheirGround() throws IOException {
    for (Painter.Blocks blocks : Painter.Blocks.values()) {
      DefaultVirtualTerminal terminal = new DefaultVirtualTerminal(new TerminalSize(2, 1));
      Canvas canvas = new Canvas(2, 1, Glyphs.FULL);
      canvas.text(0, 0, "█ ", Tone.ALARM);
      new Painter(terminal, Theme.of(Look.DARK, ColourDepth.RGB), Glyphs.FULL, blocks)
          .paint(canvas.toGrid(), new Display.GridSize(2, 1));
      assertThat(terminal.getCharacter(1, 0).getModifiers()).contains(SGR.REVERSE);
      boolean reversed = terminal.getCharacter(0, 0).getModifiers().contains(SGR.REVERSE);
      boolean full = terminal.getCharacter(0, 0).getCharacterString().equals("█");
      assertThat(reversed).as("shows the ground's colour in %s", blocks).isEqualTo(full);
    }
  }

  @Test
  void aRepaintIsOneWriteAndLosesNothing() throws IOException {
    List<Integer> writes = new ArrayList<>();
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    OutputStream tty =
        new OutputStream() {
          @Override
          public void write(int b) {
            writes.add(1);
            all.write(b);
          }

          @Override
          public void write(byte[] bytes, int from, int length) {
            writes.add(length);
            all.write(bytes, from, length);
          }
        };
    BufferedTty buffered = new BufferedTty(tty);
    byte[] repaint = "⣿ copper ".repeat(4000).getBytes(StandardCharsets.UTF_8);
    buffered.write(repaint, 0, 20_000);
    buffered.flush();
    assertThat(writes).containsExactly(20_000);
    buffered.write(repaint, 20_000, repaint.length - 20_000);
    buffered.write(repaint);
    buffered.write('x');
    buffered.flush();
    byte[] twice = Arrays.copyOf(repaint, 2 * repaint.length + 1);
    System.arraycopy(repaint, 0, twice, repaint.length, repaint.length);
    twice[2 * repaint.length] = 'x';
    assertThat(all.toByteArray()).isEqualTo(twice);
  }

  @Test
  void withoutUnicodeOnlyAsciiIsWritten() {
    ScriptedDisplay display = new ScriptedDisplay(20, 1, Glyphs.ASCII, Look.DARK);
    display.show(grid(20, 1, "Ø 0.9 × 14 – 銀"));
    assertThat(display.text()).isEqualTo("O 0.9 x 14 - ??\n");
  }

  @Test
  void keysOfTheScriptComeInOrder() {
    ScriptedDisplay display = new ScriptedDisplay(20, 1);
    display.type("q").press(Key.of(Key.Kind.PAGE_DOWN)).press(Key.ctrl("s")).press(Key.ctrl("c"));
    assertThat(display.poll(0)).contains(new Input.Pressed(Key.of("q")));
    assertThat(display.poll(0)).contains(new Input.Pressed(Key.of(Key.Kind.PAGE_DOWN)));
    assertThat(display.poll(0)).contains(new Input.Pressed(Key.ctrl("s")));
    assertThat(display.poll(0)).contains(new Input.Ended());
    assertThat(display.poll(0)).isEmpty();
  }

  @Test
  void widthsAgreeWithLanternasOnEveryCharacter() {
    // Where they didn't, everything to the right of that character would stand in a wrong column.
    List<String> apart = new ArrayList<>();
    for (int c = 0x20; c < 0x10000; c++) {
      String text = String.valueOf((char) c);
      boolean shown = Text.safe(text).equals(text);
      if (shown && (Text.width(text) == 2) != TerminalTextUtils.isCharDoubleWidth((char) c)) {
        apart.add(String.format("U+%04X", c));
      }
    }
    assertThat(apart).isEmpty();
  }

  @Test
  void anAddressStandsBehindItsWordsAndNowhereElse() throws IOException {
    ByteArrayOutputStream written = new ByteArrayOutputStream();
    AnsiTerminal terminal = new AnsiTerminal(written, StandardCharsets.UTF_8);
    Painter painter =
        new Painter(
            terminal,
            Theme.of(Look.DARK, ColourDepth.RGB),
            Glyphs.FULL,
            Painter.Blocks.LETTERS,
            true);
    painter.paint(grid(40, 2, "from lfa-wire.com, data sheet"), new Display.GridSize(40, 2));
    assertThat(written.toString(StandardCharsets.UTF_8))
        .containsOnlyOnce("\u001b]8;;https://lfa-wire.com\u001b\\lfa-wire.com\u001b]8;;\u001b\\,");
    written.reset();
    new Painter(terminal, Theme.of(Look.DARK, ColourDepth.RGB), Glyphs.FULL, Painter.Blocks.LETTERS)
        .paint(grid(40, 2, "from lfa-wire.com"), new Display.GridSize(40, 2));
    assertThat(written.toString(StandardCharsets.UTF_8)).doesNotContain("]8;");
  }
}
