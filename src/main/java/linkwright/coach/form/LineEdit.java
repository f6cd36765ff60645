package linkwright.coach.form;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import linkwright.coach.keys.Key;

/**
 * One line of text being typed.
 *
 * @param text what stands there
 * @param caret where the next character goes, counted in characters, 0 to the text's length
 * @param marked whether the next character takes the place of all of it
 */
public record LineEdit(String text, int caret, boolean marked) {
  /** What a reader takes for one character: an extended grapheme cluster (UAX #29). */
  private static final Pattern CHARACTER = Pattern.compile("\\X");

  private static final Pattern WORD = Pattern.compile("\\S+");

  /**
   * A text that somebody comes to: the first character typed replaces it; a sentence goes on where
   * it ends, for nobody writes one anew to add a word.
   */
  static LineEdit marked(String text) {
    return new LineEdit(text, text.length(), !text.isEmpty() && !text.strip().endsWith("."));
  }

  /** A text that goes on where it ends. */
  static LineEdit at(String text) {
    return new LineEdit(text, text.length(), false);
  }

  /** Nothing yet. */
  public static LineEdit empty() {
    return new LineEdit("", 0, false);
  }

  /** What a key makes of it. */
  public LineEdit key(Key key) {
    return switch (key.kind()) {
      case CHARACTER -> key.ctrl() ? control(key.text()) : typed(key.text());
      case BACKSPACE -> marked ? cut(0, text.length()) : cut(before(caret), caret);
      case DELETE -> marked ? cut(0, text.length()) : cut(caret, behind(caret));
      case LEFT -> moved(before(caret));
      case RIGHT -> moved(behind(caret));
      case WORD_LEFT -> moved(wordBefore());
      case WORD_RIGHT -> moved(wordBehind());
      case HOME -> moved(0);
      case END -> moved(text.length());
      default -> this;
    };
  }

  private LineEdit typed(String typed) {
    // A space is no text to put in the place of another.
    return marked && !typed.isBlank()
        ? new LineEdit(typed, typed.length(), false)
        : new LineEdit(
            text.substring(0, caret) + typed + text.substring(caret),
            caret + typed.length(),
            false);
  }

  private LineEdit control(String letter) {
    return switch (letter) {
      case "u" -> cut(0, text.length());
      case "w" -> cut(wordBefore(), caret);
      case "a" -> moved(0);
      case "e" -> moved(text.length());
      default -> this;
    };
  }

  private LineEdit moved(int place) {
    return new LineEdit(text, place, false);
  }

  private LineEdit cut(int from, int to) {
    return new LineEdit(text.substring(0, from) + text.substring(to), from, false);
  }

  /** Where the character before the caret begins, however many code points make it up. */
  private int before(int place) {
    Matcher characters = CHARACTER.matcher(text);
    int begins = 0;
    while (characters.find() && characters.end() < place) {
      begins = characters.end();
    }
    return begins;
  }

  /** Where the character behind the caret ends. */
  private int behind(int place) {
    Matcher characters = CHARACTER.matcher(text);
    while (characters.find()) {
      if (characters.end() > place) {
        return characters.end();
      }
    }
    return text.length();
  }

  private int wordBefore() {
    Matcher words = WORD.matcher(text);
    int begins = 0;
    while (words.find() && words.start() < caret) {
      begins = words.start();
    }
    return begins;
  }

  private int wordBehind() {
    Matcher words = WORD.matcher(text);
    while (words.find()) {
      if (words.end() > caret) {
        return words.end();
      }
    }
    return text.length();
  }
}
