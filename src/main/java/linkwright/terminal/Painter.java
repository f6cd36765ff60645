package linkwright.terminal;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TerminalPosition;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.TextColor;
import com.googlecode.lanterna.screen.Screen;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import linkwright.view.Ascii;
import linkwright.view.Cell;
import linkwright.view.Glyphs;
import linkwright.view.Grid;

/** Puts grids onto a Lanterna screen, changed cells only. */
final class Painter {
  private final Screen screen;
  private final Theme theme;
  private final Glyphs glyphs;

  /** Making one costs a pass of a break iterator, so each is made once. */
  private final Map<Cell, TextCharacter> characters = new HashMap<>();

  private Optional<Grid> shown = Optional.empty();

  Painter(Screen screen, Theme theme, Glyphs glyphs) {
    this.screen = screen;
    this.theme = theme;
    this.glyphs = glyphs;
  }

  /** Forgets what was shown: the next grid is painted whole. */
  void forget() {
    shown = Optional.empty();
  }

  void paint(Grid wanted) throws IOException {
    if (shown.isPresent() && shown.get().equals(wanted)) {
      return;
    }
    boolean whole = screen.doResizeIfNecessary() != null || shown.isEmpty();
    Grid grid = glyphs == Glyphs.ASCII ? Ascii.of(wanted) : wanted;
    fill(grid, screen.getTerminalSize());
    screen.setCursorPosition(
        grid.cursor().map(at -> new TerminalPosition(at.x(), at.y())).orElse(null));
    screen.refresh(whole ? Screen.RefreshType.COMPLETE : Screen.RefreshType.DELTA);
    shown = Optional.of(wanted);
  }

  private void fill(Grid grid, TerminalSize room) {
    for (int y = 0; y < room.getRows(); y++) {
      for (int x = 0; x < room.getColumns(); x++) {
        if (x >= grid.width() || y >= grid.height()) {
          screen.setCharacter(x, y, TextCharacter.DEFAULT_CHARACTER);
        } else if (grid.at(x, y).width() > 0) {
          // The right half of a wide character is Lanterna's own affair.
          screen.setCharacter(x, y, character(grid.at(x, y)));
        }
      }
    }
  }

  private TextCharacter character(Cell cell) {
    return characters.computeIfAbsent(cell, this::make);
  }

  private TextCharacter make(Cell cell) {
    Theme.Style style = theme.style(cell.tone());
    return TextCharacter.fromString(
        cell.glyph(),
        style.colour(),
        TextColor.ANSI.DEFAULT,
        style.attributes().toArray(SGR[]::new))[0];
  }
}
