package linkwright.terminal;

import java.util.Optional;
import linkwright.view.Glyphs;
import linkwright.view.Grid;

/**
 * A place that shows grids and gives keys. To be used by one thread; only {@link #close} may come
 * from any.
 *
 * <p>None of these methods throws when the terminal is lost: {@link #poll} then tells {@link
 * Input.Ended}, and showing does nothing.
 */
public interface Display extends AutoCloseable {
  /**
   * Room on a display.
   *
   * @param columns across, 1 or more
   * @param rows down, 1 or more
   */
  record GridSize(int columns, int rows) {
    /** Checks that there is room at all. */
    public GridSize {
      if (columns < 1 || rows < 1) {
        throw new IllegalArgumentException("A display can't be " + columns + " x " + rows);
      }
    }
  }

  /** The room there is now. */
  GridSize size();

  /** Which characters can be drawn. */
  Glyphs glyphs();

  /** Its letters and its screen, by which a measure taken here is known again; empty for none. */
  default String screen() {
    return "";
  }

  /** What is to be told of this display, a sentence; empty where all is as usual. */
  default Optional<String> told() {
    return Optional.empty();
  }

  /** Waits for something to happen, for no longer than this; empty when nothing did. */
  Optional<Input> poll(long millis);

  /** When what {@link #poll} told last came, as a count of {@link System#nanoTime()}. */
  default long cameAtNanos() {
    return System.nanoTime();
  }

  /** Shows a grid; only cells that changed since the last one are painted. */
  void show(Grid grid);

  /** Names the window after what is worked on; where that cannot be done nothing happens. */
  default void title(String words) {}

  /** Tells something on the desktop, where the place can; the bell rings all the same. */
  default void notice(String sentence) {}

  /** Hands a text on for pasting elsewhere; false where the place takes none. */
  default boolean copy(String text) {
    return false;
  }

  /** Rings the bell once. */
  void bell();

  /** Gives the terminal back as it was found, or closes the window. A second call does nothing. */
  @Override
  void close();
}
