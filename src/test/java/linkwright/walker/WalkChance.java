package linkwright.walker;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import linkwright.cli.walk.PlainHand;
import linkwright.coach.Pages;
import linkwright.coach.content.Acts;
import linkwright.coach.content.Page;
import linkwright.coach.content.Part;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Model;
import linkwright.coach.keys.Act;

/** What happens next, by chance: keys of all kinds, clicks, words, time, windows, restarts. */
final class WalkChance {
  private static final List<String> KEYS =
      List.of(
          "esc",
          "enter",
          "tab",
          "shift-tab",
          "up",
          "down",
          "left",
          "right",
          "page-up",
          "page-down",
          "home",
          "end",
          "backspace",
          "delete",
          "ctrl-z",
          "ctrl-k",
          "?",
          ".",
          "/");
  private static final List<String> TEXTS =
      List.of(
          "38 mm",
          "14.2 mm",
          "5.9 mm",
          "3",
          "2 m",
          "12 g",
          "right",
          "longer",
          "taken over",
          "the blue tin",
          "x",
          "-1",
          "9999999999",
          "8 min",
          "ßtrange ✂ text",
          "0",
          "1 1/2 in");

  /**
   * Lines of the plain walk that say more than their word; what follows a stroke answers a form.
   */
  private static final List<String> LINES =
      List.of(
          "",
          "",
          "",
          "3",
          "12",
          "redo 2",
          "scrap 1",
          "undo wire",
          "restore note",
          "piles 1",
          "timer kettle 2 min",
          "who Ana",
          "stop 2",
          "stop / begun by mistake / it waits again",
          "log blank 38 mm; length 14.2 mm; width 5.9 mm; make the next right",
          "log / 38 mm / = ",
          "wire came 300 mm",
          "wire cut 2",
          "weigh chain 3 g",
          "close / = ",
          "note the blue tin",
          "strike 12 miscounted",
          "find pickle",
          "joints failed 1",
          "lies 1 / the blue tin",
          "sample 1",
          "shut",
          "looked",
          "all",
          "lit");

  private static final String LETTERS = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ";
  static final List<String> SIZES = List.of("40x12", "60x20", "80x24", "140x45");

  private final Random random;

  /** Half of all walks go through the work: they press the common key most of the time. */
  private final boolean diligent;

  WalkChance(Random random) {
    this.random = random;
    this.diligent = random.nextBoolean();
  }

  /** The next events: time goes on, then one thing is done. */
  List<WalkEvent> next(Model model) {
    List<WalkEvent> events = new ArrayList<>();
    events.add(WalkEvent.of("pass", pause()));
    events.add(deed(model));
    return events;
  }

  private long pause() {
    int kind = random.nextInt(1000);
    if (kind < 120) {
      return 30L + random.nextInt(200);
    }
    if (kind < 930) {
      return 300L + random.nextInt(4000);
    }
    if (kind < 990) {
      return 60_000L * (1 + random.nextInt(15));
    }
    return kind < 998 ? 3_600_000L * (1 + random.nextInt(5)) : 86_400_000L * random.nextInt(40);
  }

  private WalkEvent deed(Model model) {
    int kind = random.nextInt(1000);
    if (kind < 5) {
      return WalkEvent.of("size", pick(SIZES));
    }
    if (kind < 8) {
      return WalkEvent.of("restart", "");
    }
    if (kind < 10) {
      return WalkEvent.of("set", random.nextInt(14_400) - 7200);
    }
    if (kind < 20) {
      return WalkEvent.of(random.nextBoolean() ? "row" : "field", random.nextInt(12));
    }
    if (kind < 60 && model.held().form().isEmpty()) {
      return WalkEvent.of("word", pick(random.nextInt(3) == 0 ? PlainHand.words() : LINES));
    }
    Optional<Form> form = model.held().form();
    if (form.isPresent()) {
      return inForm();
    }
    if (kind < (diligent ? 640 : 420)) {
      return WalkEvent.of("key", "space");
    }
    if (kind < 700) {
      return open(model);
    }
    if (kind < 760) {
      return WalkEvent.of("key", Integer.toString(random.nextInt(10)));
    }
    if (kind < 800) {
      return WalkEvent.of("act", pick(List.of(Act.values())).id());
    }
    if (kind < 900) {
      return WalkEvent.of("key", letter());
    }
    return WalkEvent.of("key", pick(KEYS));
  }

  private WalkEvent inForm() {
    int kind = random.nextInt(100);
    if (kind < 40) {
      return WalkEvent.of("paste", pick(TEXTS));
    }
    if (kind < 60) {
      return WalkEvent.of("key", "enter");
    }
    if (kind < 75) {
      return WalkEvent.of("key", "ctrl-k");
    }
    if (kind < 85) {
      return WalkEvent.of("key", "esc");
    }
    return WalkEvent.of("key", kind < 92 ? pick(KEYS) : letter());
  }

  /** One of the acts that the page offers, by its key or as a word of the plain walk. */
  private WalkEvent open(Model model) {
    List<Act> acts = new ArrayList<>();
    Page page = Pages.of(model);
    page.open().forEach(open -> open.act().ifPresent(acts::add));
    for (Part part : page.body().parts()) {
      if (part instanceof Acts list) {
        list.choices().forEach(choice -> acts.add(choice.act()));
      }
    }
    if (acts.isEmpty()) {
      return WalkEvent.of("key", "space");
    }
    Act act = pick(acts);
    return random.nextInt(4) == 0
        ? WalkEvent.of("act", act.id())
        : WalkEvent.of("key", model.settings().keys().keysOf(act).get(0));
  }

  private String letter() {
    return Character.toString(LETTERS.charAt(random.nextInt(LETTERS.length())));
  }

  private <T> T pick(List<T> some) {
    return some.get(random.nextInt(some.size()));
  }
}
