package linkwright.coach.form;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import linkwright.coach.keys.Key;
import linkwright.routine.TradeWords;

/**
 * One line of a form that is being filled in.
 *
 * @param id the name of what it holds
 * @param label what it asks for
 * @param text what is typed so far; never lost, right or wrong
 * @param caret where the next character goes, counted in characters, 0 to the text's length
 * @param hint an example of what would be right
 * @param choices what the left and right keys go through; empty for a free text
 * @param trouble what is wrong with the text, if anything
 */
public record Field(
    String id,
    String label,
    String text,
    int caret,
    String hint,
    List<String> choices,
    Optional<String> trouble) {
  /** What a reader takes for one character: an extended grapheme cluster (UAX #29). */
  private static final Pattern CHARACTER = Pattern.compile("\\X");

  /** A field for free text. */
  public static Field of(String id, String label, String text, String hint) {
    return new Field(id, label, text, text.length(), hint, List.of(), Optional.empty());
  }

  /** A field for which the left and right keys go through choices. */
  public static Field choice(
      String id, String label, String text, String hint, List<String> choices) {
    return new Field(id, label, text, text.length(), hint, List.copyOf(choices), Optional.empty());
  }

  /** The same field with that trouble told beside it, or with none. */
  public Field with(Optional<String> told) {
    return new Field(id, label, text, caret, hint, choices, told);
  }

  /** The same field with what it asks for in the user's trade words. */
  public Field inWords(TradeWords words) {
    return new Field(id, words.show(label), text, caret, words.show(hint), choices, trouble);
  }

  /** The same field with another text, the caret behind it. */
  public Field withText(String other) {
    return new Field(id, label, other, other.length(), hint, choices, trouble);
  }

  Field key(Key key) {
    return switch (key.kind()) {
      case CHARACTER ->
          key.ctrl()
              ? this
              : edited(
                  text.substring(0, caret) + key.text() + text.substring(caret),
                  caret + key.text().length());
      case BACKSPACE -> {
        int from = before(caret);
        yield edited(text.substring(0, from) + text.substring(caret), from);
      }
      case DELETE -> {
        int to = behind(caret);
        yield edited(text.substring(0, caret) + text.substring(to), caret);
      }
      case LEFT -> choices.isEmpty() ? edited(text, before(caret)) : stepped(-1);
      case RIGHT -> choices.isEmpty() ? edited(text, behind(caret)) : stepped(1);
      case HOME -> edited(text, 0);
      case END -> edited(text, text.length());
      default -> this;
    };
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

  private Field stepped(int by) {
    int at = choices.indexOf(text);
    int next = at < 0 ? (by > 0 ? 0 : choices.size() - 1) : Math.floorMod(at + by, choices.size());
    return withText(choices.get(next));
  }

  private Field edited(String newText, int newCaret) {
    return new Field(id, label, newText, newCaret, hint, choices, trouble);
  }
}
