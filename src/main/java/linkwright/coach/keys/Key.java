package linkwright.coach.keys;

/**
 * One press of a key, whatever device it came from.
 *
 * @param kind what sort of key
 * @param text the character typed, one grapheme, for {@link Kind#CHARACTER}; empty otherwise
 * @param ctrl whether Ctrl was held; the text is then the plain lower-case letter
 */
public record Key(Kind kind, String text, boolean ctrl) {
  /** The sorts of key that Linkwright tells apart. */
  public enum Kind {
    CHARACTER,
    ENTER,
    ESCAPE,
    BACKSPACE,
    DELETE,
    TAB,
    BACK_TAB,
    UP,
    DOWN,
    LEFT,
    RIGHT,
    PAGE_UP,
    PAGE_DOWN,
    HOME,
    END,
    WORD_LEFT,
    WORD_RIGHT
  }

  /** A typed character; a space too. */
  public static Key of(String text) {
    return new Key(Kind.CHARACTER, text, false);
  }

  /** A key that types nothing. */
  public static Key of(Kind kind) {
    return new Key(kind, "", false);
  }

  /** Ctrl held with a letter. */
  public static Key ctrl(String letter) {
    return new Key(Kind.CHARACTER, letter, true);
  }

  /** Whether this is that character, typed without Ctrl. */
  public boolean is(String character) {
    return kind == Kind.CHARACTER && !ctrl && text.equals(character);
  }

  /** Whether this is a key of that kind. */
  public boolean is(Kind wanted) {
    return kind == wanted;
  }
}
