package linkwright.view;

import linkwright.text.Text;

/** The line that says which page of a thing is shown, and the key that turns on. */
final class PageLine {
  private PageLine() {}

  /** Draws it at the right of the lowest row; in fewer words where there is little room. */
  static void draw(Canvas area, int at, int all, String key) {
    draw(area, at, all, key, at + 1 == all ? "the first page" : "the next page");
  }

  /** The same, saying what the key leads to. */
  static void draw(Canvas area, int at, int all, String key, String next) {
    String page = "page " + (at + 1) + " of " + all + "  " + key + " " + next;
    boolean room = Text.width(page) <= area.width();
    area.right(area.height() - 1, room ? page : brief(at, all, key), Tone.FAINT);
  }

  /** The same in the fewest words. */
  static String brief(int at, int all, String key) {
    return "page " + (at + 1) + " of " + all + "  " + key;
  }
}
