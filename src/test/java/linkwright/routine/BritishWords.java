package linkwright.routine;

import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Words that only British readers use, or spell so; from memory. */
public final class BritishWords {
  private static final Pattern WORDS =
      Pattern.compile(
          "(?i)\\b(joints?|jointed|pallions?|traces?|belchers?|bolt rings?|trigger clasps?"
              + "|formers?|lemel|hallmark(s|ed|ing)?|colours?|coloured|colouring|jewellers?"
              + "|jewellery|grey(ed|ing|s)?|vices?|fibres?|vapours?|neighbours?|mould(s|ed|ing)?"
              + "|smoulder(s|ed|ing)?|centres?|centred|(milli|centi|kilo)?metres?|litres?"
              + "|sulph\\w*|petrol|council|methylated|spirit|carats?|ct|practise[sd]?|practising"
              + "|burnt|towards|ovall(ed|ing)|labell(ed|ing)|bevell(ed|ing)|levell(ed|ing)"
              + "|(oxid|neutral|harmon|recogn|organ|minim)is(e|es|ed|ing)|trousers|aluminium"
              + "|residual-current|cling film)\\b");

  private BritishWords() {}

  /** A law, the name of an option, and where a word is told to be the British one. */
  private static final String NAMES =
      "“[^”]*”|Hallmarking Act|--[a-z-]+|In British words: [^.]*\\.";

  /** Each with what stands around it; what stands in quotation marks is a name, or was typed. */
  public static Set<String> in(String text) {
    Set<String> found = new TreeSet<>();
    String said = text.replaceAll("[\\s│]+", " ").replaceAll(NAMES, "");
    Matcher word = WORDS.matcher(said);
    while (word.find()) {
      int from = Math.max(0, word.start() - 30);
      found.add(said.substring(from, Math.min(said.length(), word.end() + 20)));
    }
    return found;
  }
}
