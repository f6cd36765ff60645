package linkwright.cli.walk;

import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import linkwright.coach.Act;
import linkwright.coach.Model;
import linkwright.coach.Screen;
import linkwright.quantity.Nearest;
import linkwright.quantity.UnitStyle;

/** Wire that came or went, and notes: places that are entered and left again at once. */
final class FarPlaces {
  private static final Map<String, Act> WIRE =
      Map.of("came", Act.ADD_WIRE, "cut", Act.CUT, "lost", Act.DISCARD);

  private FarPlaces() {}

  static boolean obey(Word word, String rest, Desk desk, Hands hands, Predicate<String> form) {
    if (word == Word.NOTE) {
      hands.go(Act.TO_BOOK);
      hands.press(Act.NOTE);
      boolean open = form.test(rest.isEmpty() ? "" : "note " + rest.replace(';', ','));
      hands.go(Act.TO_BENCH);
      return open;
    }
    if (rest.isEmpty()) {
      desk.sayAll(left(hands.model()));
      return true;
    }
    String[] parts = rest.split("\\s+", 2);
    Act act = WIRE.get(parts[0]);
    if (act == null) {
      desk.say(
          "After wire write came, cut or lost. "
              + Nearest.of(parts[0], WIRE.keySet())
                  .map(near -> "Did you mean wire " + near + "?")
                  .orElse(""));
      return true;
    }
    hands.go(Act.TO_WIRE);
    if (!(hands.model().screen() instanceof Screen.Wire)) {
      desk.say("Wire cannot be entered here.");
      return true;
    }
    hands.press(act);
    return form.test(parts.length > 1 ? parts[1] : "");
  }

  private static List<String> left(Model model) {
    UnitStyle units = model.settings().units();
    return model
        .job()
        .map(
            job ->
                List.of(
                    "Links' wire on hand by the book: "
                        + units.length(job.reckoned().stockLeft().leftMm("link"))
                        + ".",
                    "Rings' wire: "
                        + (job.reckoned().stockLeft().ringsMm().isEmpty()
                            ? "the same."
                            : units.length(job.reckoned().stockLeft().leftMm("ring")) + ".")))
        .orElse(List.of());
  }
}
