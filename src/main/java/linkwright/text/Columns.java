package linkwright.text;

/**
 * How many columns a character takes on a terminal.
 *
 * <p>Two for the East Asian scripts that every terminal draws wide, none for what can't be shown in
 * a cell of its own (controls, marks that combine, directions, emoji, halves of a surrogate pair),
 * else one. Unicode lists more wide characters (Unicode Standard Annex 11); those on which
 * terminals disagree count as not showable here, for a column lost shifts the whole row.
 */
public final class Columns {
  /** First and last of each range drawn two columns wide. */
  private static final int[] WIDE = {
    0x3001, 0x3029, // CJK punctuation, without the tone marks after it
    0x3041, 0x3096, // Hiragana
    0x309B, 0x30FF, // its sound marks in a cell of their own, Katakana
    0x3131, 0x3163, // Hangul letters, without the invisible filler
    0x3165, 0x318E,
    0x3400, 0x4DBF, // unified ideographs
    0x4E00, 0x9FFF,
    0xAC00, 0xD7A3, // Hangul syllables
    0xF900, 0xFAFF, // compatibility ideographs
    0xFF01, 0xFF60, // full-width forms
  };

  /** First and last of each range on whose width terminals disagree, or that shows nothing. */
  private static final int[] UNSURE = {
    0x1100, 0x11FF, // Hangul parts that join
    0x231A, 0x231B, // emoji of the basic plane
    0x2329, 0x232A,
    0x23E9, 0x23F3,
    0x25FD, 0x25FE,
    0x2614, 0x2615,
    0x2630, 0x2637,
    0x2648, 0x2653,
    0x267F, 0x267F,
    0x268A, 0x268F,
    0x2693, 0x2693,
    0x26A1, 0x26A1,
    0x26AA, 0x26AB,
    0x26BD, 0x26BE,
    0x26C4, 0x26C5,
    0x26CE, 0x26CE,
    0x26D4, 0x26D4,
    0x26EA, 0x26EA,
    0x26F2, 0x26F3,
    0x26F5, 0x26F5,
    0x26FA, 0x26FA,
    0x26FD, 0x26FD,
    0x2705, 0x2705,
    0x270A, 0x270B,
    0x2728, 0x2728,
    0x274C, 0x274C,
    0x274E, 0x274E,
    0x2753, 0x2755,
    0x2757, 0x2757,
    0x2795, 0x2797,
    0x27B0, 0x27B0,
    0x27BF, 0x27BF,
    0x2B1B, 0x2B1C,
    0x2B50, 0x2B50,
    0x2B55, 0x2B55,
    0x2E80, 0x3000, // radicals and description signs, the wide space
    0x302A, 0x3040,
    0x3097, 0x309A,
    0x3100, 0x3130, // Bopomofo: Lanterna takes it for narrow
    0x3164, 0x3164,
    0x318F, 0x33FF,
    0x4DC0, 0x4DFF, // hexagrams: one column before Unicode 16, two since
    0xA000, 0xA4CF, // Yi
    0xA960, 0xA97F,
    0xD7B0, 0xD7FF,
    0xFE10, 0xFE1F,
    0xFE30, 0xFE6F,
    0xFFA0, 0xFFA0,
    0xFFE0, 0xFFE6, // wide currency signs: Lanterna takes them for narrow
    0xFFF0, 0xFFFF,
  };

  private Columns() {}

  /** Columns of a character: 2, 1, or 0 when it can't be shown in a cell of its own. */
  public static int of(char c) {
    if (c >= ' ' && c < 0x7F) {
      return 1;
    }
    if (within(WIDE, c)) {
      return Character.isDefined(c) ? 2 : 0;
    }
    if (within(UNSURE, c)) {
      return 0;
    }
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.PRIVATE_USE,
          Character.UNASSIGNED,
          Character.NON_SPACING_MARK,
          Character.ENCLOSING_MARK,
          Character.COMBINING_SPACING_MARK,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.SPACE_SEPARATOR ->
          0;
      default -> 1;
    };
  }

  private static boolean within(int[] ranges, char c) {
    for (int i = 0; i < ranges.length; i += 2) {
      if (c >= ranges[i] && c <= ranges[i + 1]) {
        return true;
      }
    }
    return false;
  }
}
