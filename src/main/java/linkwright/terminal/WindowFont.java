package linkwright.terminal;

import com.googlecode.lanterna.terminal.swing.AWTTerminalFontConfiguration.BoldMode;
import com.googlecode.lanterna.terminal.swing.SwingTerminalFontConfiguration;
import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import linkwright.view.Glyphs;

/** The letters of the window: of one width, and where possible with Braille dots and blocks. */
final class WindowFont {
  /** Common on Linux, Windows and macOS; the last is Java's own choice of several fonts. */
  private static final List<String> FAMILIES =
      List.of(
          "DejaVu Sans Mono",
          "Cascadia Mono",
          "FreeMono",
          "Menlo",
          "Consolas",
          "Liberation Mono",
          "Noto Sans Mono",
          Font.MONOSPACED);

  private static final String NEEDED = "⣿█▁∘…×";

  private WindowFont() {}

  /** Fonts to draw from, in order; a character is taken from the first that has it. */
  static List<Font> choose(int points) {
    List<Font> whole = new ArrayList<>();
    List<Font> others = new ArrayList<>();
    for (String family : FAMILIES) {
      Font font = new Font(family, Font.PLAIN, points);
      boolean found = font.getFamily().equalsIgnoreCase(family);
      if (found && font.canDisplayUpTo(NEEDED) < 0) {
        whole.add(font);
      } else if (found) {
        others.add(font);
      }
    }
    whole.addAll(others);
    return whole;
  }

  /** What these fonts can draw between them. */
  static Glyphs glyphs(List<Font> fonts) {
    boolean all =
        NEEDED.chars().allMatch(c -> fonts.stream().anyMatch(font -> font.canDisplay((char) c)));
    return all ? Glyphs.WHOLE_BLOCKS : Glyphs.ASCII;
  }

  static SwingTerminalFontConfiguration configuration(List<Font> fonts) {
    Font[] sameWidth = SwingTerminalFontConfiguration.filterMonospaced(fonts.toArray(Font[]::new));
    Font[] usable =
        sameWidth.length > 0 ? sameWidth : new Font[] {new Font(Font.MONOSPACED, Font.PLAIN, 18)};
    return new SwingTerminalFontConfiguration(true, BoldMode.EVERYTHING_BUT_SYMBOLS, usable);
  }
}
