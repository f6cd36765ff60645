package linkwright.cli.walk;

import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import linkwright.coach.Act;
import linkwright.coach.Model;
import linkwright.coach.Screen;
import linkwright.quantity.Nearest;
import linkwright.quantity.UnitStyle;

/**
 * Wire that came or went, notes, and timers of one's own: places that are entered and left again at
 * once.
 */
final class FarPlaces {
  private static final Map<String, Act> WIRE =
      Map.of("came", Act.ADD_WIRE, "cut", Act.CUT, "lost", Act.DISCARD);

  private static final Pattern TIMER = Pattern.compile("(\\D+?)\\s+(\\d.*)");

  private FarPlaces() {}

  /** Enters it and goes back to where one was; false when the lines have ended. */
  static boolean obey(Word word, String rest, Desk desk, Hands hands, Predicate<String> form) {
    if (word == Word.WIRE && rest.isEmpty()) {
      desk.sayAll(left(hands.model()));
      return true;
    }
    boolean atBench = hands.model().screen() instanceof Screen.Bench;
    boolean goesOn =
        switch (word) {
          case NOTE -> {
            open(hands, Act.TO_BOOK, Act.NOTE);
            yield form.test(rest.isEmpty() ? "" : "note: " + rest.replace(';', ','));
          }
          case TIMER -> timer(rest, desk, hands, form);
          default -> wire(rest, desk, hands, form);
        };
    // Going to the bench from elsewhere would begin a sitting, which nobody asked for.
    if (atBench) {
      hands.go(Act.TO_BENCH);
    } else if (!(hands.model().screen() instanceof Screen.Round)) {
      hands.press(Act.ROUND);
    }
    return goesOn;
  }

  private static void open(Hands hands, Act place, Act act) {
    hands.go(place);
    hands.press(act);
  }

  private static boolean wire(String rest, Desk desk, Hands hands, Predicate<String> form) {
    String[] parts = rest.split("\\s+", 2);
    if (!WIRE.containsKey(parts[0])) {
      desk.say(
          "After wire write came, cut or lost. "
              + Nearest.of(parts[0], WIRE.keySet())
                  .map(near -> "Did you mean wire " + near + "?")
                  .orElse(""));
      return true;
    }
    open(hands, Act.TO_WIRE, WIRE.get(parts[0]));
    return form.test(parts.length > 1 ? parts[1] : "");
  }

  /** What for, then how long: the time begins where the digits do. */
  private static boolean timer(String rest, Desk desk, Hands hands, Predicate<String> form) {
    Matcher parts = TIMER.matcher(rest);
    if (!parts.matches()) {
      desk.say("Write what for and how long: timer kettle 8 min. Nothing was entered.");
      return true;
    }
    open(hands, Act.TO_TIMERS, Act.SET_TIMER);
    return form.test("what for: " + parts.group(1) + "; how long: " + parts.group(2));
  }

  private static List<String> left(Model model) {
    UnitStyle units = model.settings().units();
    return model
        .job()
        .map(
            job ->
                List.of(
                    "Links' wire on hand by the book: "
                        + units.length(job.standing().stockLeft().leftMm("link"))
                        + ".",
                    "Rings' wire: "
                        + (job.standing().stockLeft().ringsMm().isEmpty()
                            ? "the same."
                            : units.length(job.standing().stockLeft().leftMm("ring")) + ".")))
        .orElse(List.of());
  }
}
