package linkwright.coach.content;

import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import linkwright.coach.keys.Act;

/**
 * Acts named inside a sentence: {@code {do:to-wire}} stands for whatever does it where the sentence
 * is shown, a key on the screen, a word in the plain walk. So no sentence knows a key.
 */
public final class ActMention {
  private static final Pattern MENTION = Pattern.compile("\\{do:([a-z-]+)\\}");

  private ActMention() {}

  /** How a sentence mentions the act. */
  public static String of(Act act) {
    return "{do:" + act.id() + "}";
  }

  /**
   * The sentence with each act that it mentions named by the output.
   *
   * @throws IllegalArgumentException if it mentions an act that there is not
   */
  public static String fill(String sentence, Function<Act, String> name) {
    Matcher mention = MENTION.matcher(sentence);
    StringBuilder filled = new StringBuilder();
    while (mention.find()) {
      String id = mention.group(1);
      Act act =
          Act.withId(id)
              .orElseThrow(() -> new IllegalArgumentException("There is no act “" + id + "”"));
      mention.appendReplacement(filled, Matcher.quoteReplacement(name.apply(act)));
    }
    return mention.appendTail(filled).toString();
  }
}
