package linkwright.coach;

import java.util.ArrayList;
import java.util.List;

/** The keys of a screen in words. */
public final class KeyWords {
  private KeyWords() {}

  /** The keys that matter here, as many as fit, the last always how to see them all. */
  public static String line(Model model, int columns) {
    if (model.screen().form().isPresent()) {
      return cutToFit(
          List.of(
              "enter next field",
              "ctrl-k " + model.screen().form().get().keepWords(),
              "left right choose",
              "esc leave, what is typed stays"),
          columns);
    }
    List<String> words = new ArrayList<>();
    for (Act act : offered(model)) {
      words.add(shown(model, act));
    }
    return cutToFit(words, columns);
  }

  private static String cutToFit(List<String> words, int columns) {
    String gap = "  ";
    String all = "? all keys";
    StringBuilder line = new StringBuilder();
    for (String word : words) {
      if (line.length() + word.length() + 2 * gap.length() + all.length() > columns) {
        break;
      }
      line.append(word).append(gap);
    }
    return line.append(words.isEmpty() || !words.get(0).startsWith("enter next") ? all : "")
        .toString()
        .strip();
  }

  /** Every act of this screen with all its keys, then those that every screen has. */
  public static List<String> all(Model model, Screen screen) {
    List<String> lines = new ArrayList<>();
    List<Act> acts = new ArrayList<>(offered(model.with(screen)));
    Places.COMMON.stream().filter(act -> !acts.contains(act)).forEach(acts::add);
    for (Act act : acts) {
      String keys = String.join(" or ", model.settings().keys().keysOf(act));
      lines.add("%-22s %s".formatted(keys, act.words()));
    }
    return lines;
  }

  private static List<Act> offered(Model model) {
    return Places.of(model).acts(model);
  }

  private static String shown(Model model, Act act) {
    List<String> keys = model.settings().keys().keysOf(act);
    return (keys.isEmpty() ? "(no key)" : keys.get(0)) + " " + act.words();
  }
}
