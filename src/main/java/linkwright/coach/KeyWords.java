package linkwright.coach;

import java.util.ArrayList;
import java.util.List;
import linkwright.text.Text;

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
    if (model.screen() instanceof Screen.Help) {
      return "any key goes back";
    }
    List<String> words = new ArrayList<>();
    for (Act act : worthTheLine(model)) {
      words.add(act == Act.UP ? upAndDown(model) : shown(model, act));
    }
    return cutToFit(words, columns);
  }

  /** What stands on the screen with its key already needs no room here. */
  private static List<Act> worthTheLine(Model model) {
    List<Act> acts = new ArrayList<>(offered(model));
    if (model.screen() instanceof Screen.Round) {
      acts.retainAll(List.of(Act.TO_BENCH, Act.LEAVE));
    }
    if (acts.contains(Act.UP)) {
      acts.remove(Act.DOWN);
    }
    return acts;
  }

  private static String upAndDown(Model model) {
    return first(model, Act.UP) + " " + first(model, Act.DOWN) + " other row";
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
    List<String> keys = new ArrayList<>();
    List<String> words = new ArrayList<>();
    List<Act> acts = new ArrayList<>(offered(model.with(screen)));
    Places.COMMON.stream().filter(act -> !acts.contains(act)).forEach(acts::add);
    for (Act act : acts) {
      keys.add(String.join(" or ", model.settings().keys().keysOf(act)));
      words.add(act.words());
    }
    if (acts.contains(Act.THROUGH) || acts.contains(Act.CUT_ONE)) {
      keys.add(1, "digits");
      words.add(1, "how many, then its key");
    }
    int wide = keys.stream().mapToInt(String::length).max().orElse(0);
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < keys.size(); i++) {
      lines.add(Text.pad(keys.get(i), wide) + "  " + words.get(i));
    }
    return lines;
  }

  private static List<Act> offered(Model model) {
    return Places.of(model).acts(model);
  }

  private static String shown(Model model, Act act) {
    return first(model, act) + " " + act.words();
  }

  private static String first(Model model, Act act) {
    List<String> keys = model.settings().keys().keysOf(act);
    return keys.isEmpty() ? "(no key)" : keys.get(0);
  }
}
