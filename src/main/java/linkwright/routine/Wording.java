package linkwright.routine;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import linkwright.quantity.Degrees;
import linkwright.quantity.UnitStyle;

/**
 * Makes a routine's text readable: fills its placeholders and puts it in the user's units and trade
 * words.
 */
public final class Wording {
  private static final String OF = " of";

  private Wording() {}

  /**
   * The text as the user reads it.
   *
   * <p>A fixed length such as <code>{0.9 mm}</code> is written in the user's units, with {@code
   * wire} before it also with its gauge number. Any other placeholder gives its value, as it stands
   * in {@code values}; without a value it reads as plain words. No brace is ever left.
   *
   * @param text a text of a routine or caution
   * @param values name of a placeholder → what to show, already in the user's units
   * @param units the user's units, for fixed lengths
   * @param words the user's trade words
   */
  public static String fill(
      String text, Map<String, String> values, UnitStyle units, TradeWords words) {
    StringBuilder filled = new StringBuilder();
    Matcher braces = Placeholder.IN_TEXT.matcher(text);
    int from = 0;
    while (braces.find()) {
      filled.append(words.show(text.substring(from, braces.start())));
      String shown = one(braces.group(1).strip(), values, units, words);
      from = braces.end();
      // “the planned number of” goes before a noun; “3 of them” says its “of” itself.
      boolean noun = text.startsWith(" ", from) && !text.startsWith(OF + " ", from);
      if (shown.endsWith(OF) && !noun) {
        shown = shown.substring(0, shown.length() - OF.length());
      }
      filled.append(afterSentence(filled) ? capital(shown) : shown);
    }
    filled.append(words.show(text.substring(from)));
    return Degrees.inUnits(filled.toString().replace("{", "").replace("}", ""), units);
  }

  private static String one(
      String name, Map<String, String> values, UnitStyle units, TradeWords words) {
    String value = values.getOrDefault(name, "");
    if (!value.isBlank()) {
      String shown = words.show(value.strip());
      return name.equals(Placeholder.SENTENCE) && !ended(shown) ? shown + "." : shown;
    }
    return Placeholder.fixed(name, units).orElseGet(() -> words.show(Placeholder.plainWords(name)));
  }

  private static boolean afterSentence(CharSequence soFar) {
    String text = soFar.toString().stripTrailing();
    return text.isEmpty() || ended(text);
  }

  private static boolean ended(String text) {
    return text.endsWith(".") || text.endsWith("?") || text.endsWith("!");
  }

  private static String capital(String text) {
    if (text.isEmpty()) {
      return text;
    }
    int first = text.offsetByCodePoints(0, 1);
    return text.substring(0, first).toUpperCase(Locale.ROOT) + text.substring(first);
  }
}
