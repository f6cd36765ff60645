package linkwright.terminal;

import linkwright.coach.keys.Key;

/** What a display has to tell. */
public sealed interface Input {
  /** A key was pressed. */
  record Pressed(Key key) implements Input {}

  /**
   * Text was pasted, all at once. Apart from keys, for only a field may take it: on a screen where
   * one key counts a piece, pasted letters would count what nobody made.
   */
  record Pasted(String text) implements Input {}

  /** The end of what was pasted never came: it is not waited for, and keys are keys again. */
  record PasteDropped() implements Input {}

  /** A place was clicked; column and row from 0. */
  record Clicked(int x, int y) implements Input {}

  /** The room changed, or what it showed was lost: show a grid of this size. */
  record Resized(int columns, int rows) implements Input {}

  /** The user or the system wants the program to end: Ctrl-C, a closed window, a lost terminal. */
  record Ended() implements Input {}
}
