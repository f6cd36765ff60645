package linkwright.coach;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.help.HelpHeld;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.Model;
import linkwright.coach.keys.Act;
import linkwright.coach.round.RoundHeld;
import linkwright.text.Text;

/** The keys of a screen in words. */
public final class KeyWords {
  private KeyWords() {}

  /** Columns between two words of the line. */
  public static final int GAP = 2;

  /**
   * One key of the line in words.
   *
   * @param text the key and what it does
   * @param act what a click on it does; empty where it is a key of the form
   */
  public record Word(String text, Optional<Act> act) {}

  /** The keys that matter here as one line of text. */
  public static String line(Model model, int columns) {
    return String.join(" ".repeat(GAP), words(model, columns).stream().map(Word::text).toList());
  }

  /** The keys that matter here, as many as fit, the last always how to see them all. */
  public static List<Word> words(Model model, int columns) {
    if (model.held().form().isPresent()) {
      return cutToFit(ofForm(model.held().form().get()), columns);
    }
    if (model.held() instanceof HelpHeld) {
      return List.of(new Word("any key goes back", Optional.of(Act.ROUND)));
    }
    List<Word> words = new ArrayList<>();
    for (Act act : worthTheLine(model)) {
      words.add(
          act == Act.UP
              ? new Word(upAndDown(model), Optional.empty())
              : new Word(shown(model, act), Optional.of(act)));
    }
    Word all = new Word(first(model, Act.HELP) + " " + Act.HELP.words(), Optional.of(Act.HELP));
    List<Word> fitting = new ArrayList<>(cutToFit(words, columns - all.text().length() - GAP));
    fitting.add(all);
    return fitting;
  }

  private static List<Word> cutToFit(List<Word> words, int columns) {
    List<Word> fitting = new ArrayList<>();
    int used = 0;
    for (Word word : words) {
      used += word.text().length() + (used == 0 ? 0 : GAP);
      if (used > columns) {
        break;
      }
      fitting.add(word);
    }
    return fitting;
  }

  /** What stands on the screen with its key already needs no room here. */
  private static List<Act> worthTheLine(Model model) {
    List<Act> acts = new ArrayList<>(offered(model));
    if (model.held() instanceof RoundHeld) {
      acts.retainAll(List.of(Act.TO_BENCH, Act.LEAVE));
    }
    if (acts.contains(Act.UP)) {
      acts.remove(Act.DOWN);
    }
    if (acts.contains(Act.REOPEN)) {
      boolean closed = model.job().map(job -> job.state().course().closed()).orElse(false);
      acts.remove(closed ? Act.CLOSE : Act.REOPEN);
    }
    return acts;
  }

  private static List<Word> ofForm(Form form) {
    List<Word> words = new ArrayList<>();
    words.add(new Word("enter next field", Optional.empty()));
    words.add(new Word("ctrl-k " + form.keepWords(), Optional.of(Act.KEEP)));
    if (form.at() < form.fields().size() && !form.fields().get(form.at()).choices().isEmpty()) {
      words.add(new Word("left right choose", Optional.empty()));
    }
    words.add(new Word("esc leave, what is typed stays", Optional.of(Act.ROUND)));
    return words;
  }

  private static String upAndDown(Model model) {
    return first(model, Act.UP) + " " + first(model, Act.DOWN) + " other row";
  }

  /** Every act of this screen with all its keys, then those that every screen has. */
  public static List<String> all(Model model, Held screen) {
    List<String> keys = new ArrayList<>();
    List<String> words = new ArrayList<>();
    List<Act> acts = new ArrayList<>(offered(model.with(screen)));
    Places.COMMON.stream().filter(act -> !acts.contains(act)).forEach(acts::add);
    for (Act act : acts) {
      keys.add(String.join(" or ", model.settings().keys().keysOf(act)));
      words.add(act.words());
    }
    if (acts.contains(Act.THROUGH) || acts.contains(Act.CUT_ONE) || acts.contains(Act.BEGIN_ONE)) {
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
