package linkwright.view;

/** Which characters the place that shows a grid can draw. */
public enum Glyphs {
  /** Unicode: Braille dots, blocks, accents. */
  FULL("…"),
  /** The same, but half blocks do not meet whole ones: letters of a window leave a gap there. */
  WHOLE_BLOCKS("…"),
  /** The 95 printable characters of ASCII only. */
  ASCII("~");

  private final String cutMark;

  Glyphs(String cutMark) {
    this.cutMark = cutMark;
  }

  /** The sign, one column wide, that says that text was cut here. */
  public String cutMark() {
    return cutMark;
  }

  /** Whether blocks may be half a row high. */
  boolean halfBlocks() {
    return this == FULL;
  }

  /**
   * The text with signs spelt that have no like in ASCII: give or take is {@code +/-}, a degree
   * {@code deg}.
   */
  public String spelt(String text) {
    return this == ASCII
        ? text.replace("±", "+/-").replaceAll("°(?=[CF]\\b)", "").replaceAll(" ?°", " deg")
        : text;
  }

  /** One of two signs: the first when Unicode can be drawn. */
  public String pick(String full, String ascii) {
    return this == ASCII ? ascii : full;
  }
}
