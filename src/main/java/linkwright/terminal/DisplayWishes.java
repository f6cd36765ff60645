package linkwright.terminal;

import java.util.Optional;

/**
 * What the user asked for.
 *
 * @param window whether a window is wanted though there is a terminal
 * @param look the theme; empty to go by the terminal
 * @param fontSize of the window's letters, in points
 * @param mouse whether clicks are wanted; without them the terminal's own marking of text works
 */
public record DisplayWishes(boolean window, Optional<Look> look, int fontSize, boolean mouse) {
  /** Nothing in particular. */
  public static final DisplayWishes NONE = new DisplayWishes(false, Optional.empty(), 18, true);

  /** Checks the size. */
  public DisplayWishes {
    if (fontSize < 6 || fontSize > 144) {
      throw new IllegalArgumentException("Letters can't be " + fontSize + " points high");
    }
  }
}
