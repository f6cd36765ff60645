package linkwright.cli.walk;

import java.util.Map;
import java.util.Set;
import linkwright.coach.bench.BenchAnswers;
import linkwright.coach.content.Prose;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;

/** Counts at the bench, and nothing at a step that the user has not heard yet. */
final class WalkBench {
  /** What the words of the bench do in a rehearsal. */
  private static final Map<Act, Act> DRY =
      Map.of(
          Act.NEXT_STEP, Act.DRY_ON,
          Act.LOOK_ON, Act.DRY_ON,
          Act.PREVIOUS_STEP, Act.DRY_BACK,
          Act.LOOK_BACK, Act.DRY_BACK);

  /** What comes before a step can be counted at. */
  private static final Set<Act> GATES = Set.of(Act.SEEN, Act.BACK_AT_BENCH, Act.LIT, Act.HOT_ON);

  private final WalkLines lines;
  private final WalkCoach coach;
  private final WalkChoice choice;

  WalkBench(WalkLines lines, WalkCoach coach, WalkChoice choice) {
    this.lines = lines;
    this.coach = coach;
    this.choice = choice;
  }

  /** Nothing is counted at a step that the user has not heard yet. */
  void act(Act act, String rest) {
    if (coach.place() == PlaceId.REHEARSAL && DRY.containsKey(act)) {
      coach.choose(DRY.get(act));
      return;
    }
    if (coach.place() != PlaceId.BENCH) {
      if (!saysFirst()) {
        coach.go(Act.TO_BENCH);
        // That a flame burns is true wherever it is typed; a count belongs to a step.
        if (coach.place() == PlaceId.BENCH && act == Act.LIT) {
          act(act, rest);
        } else if (coach.place() == PlaceId.BENCH) {
          lines.say("You are at the bench now. Type it again if you mean the step that follows.");
        }
      }
      return;
    }
    if (!rest.isEmpty() && !rest.matches("[0-9]{1,4}")) {
      lines.say("“" + rest + "” is not a number of pieces. Nothing was entered.");
      return;
    }
    if (!new WalkPage(coach.model()).opens(act)) {
      refuse(act);
      return;
    }
    type(rest);
    coach.choose(act);
  }

  /** Whether a student has to say what comes before the step is told; then that is told. */
  boolean saysFirst() {
    boolean first = coach.place() == PlaceId.SAYING;
    if (first) {
      WalkPage page = new WalkPage(coach.model());
      lines.say(
          page.asks()
              ? "First the question: a number answers it. The step is told once it is said."
              : "First what was said: an empty line goes on.");
    }
    return first;
  }

  /** The coach says that it is not for now; what comes first is told with it. */
  void refuse(Act act) {
    coach.choose(act);
    lines.sayAll(coach.takeTold());
    ShortVisits.wordOf(act).ifPresent(word -> lines.say("From here write: " + word + "."));
    WalkPage page = new WalkPage(coach.model());
    page.inFront()
        .map(first -> page.plain().prose(Prose.says("First: " + first)))
        .ifPresent(lines::sayAll);
    lines.sayAll(page.emptyLine());
  }

  void type(String digits) {
    digits.codePoints().forEach(digit -> coach.press(Key.of(Character.toString(digit))));
  }

  /** A number was typed; padded: with a nought before it, so that it is none of the answers. */
  void number(int number, boolean padded) {
    WalkPage page = new WalkPage(coach.model());
    if (page.asksStudent() && !coach.failing() && (padded || !page.answers(number))) {
      lines.say(AskedLine.FIRST);
    } else if (page.asks() && !coach.failing() && coach.place() != PlaceId.BENCH) {
      coach.press(Key.of(number < 10 ? Integer.toString(number) : "0"));
    } else if (page.table().isPresent() && new WalkPage(coach.model()).opens(Act.CHOOSE)) {
      choice.chosen(Act.CHOOSE, Integer.toString(number));
    } else if (page.tellsAnswer()) {
      lines.say("That was answered. An empty line goes on.");
    } else if (coach.place() != PlaceId.BENCH || page.common().isEmpty() || coach.failing()) {
      lines.say("A number counts pieces at the bench. bench leads there.");
    } else if (page.asks()) {
      coach.press(Key.of(number < 10 ? Integer.toString(number) : "0"));
    } else if (page.common().filter(GATES::contains).isPresent()) {
      refuse(Act.THROUGH);
    } else if (page.common().filter(Act.BACK_FROM_LOOK::equals).isPresent()) {
      coach.press(Key.of(Integer.toString(number)));
    } else if (number == 0) {
      lines.say("None came through; nothing was entered.");
    } else {
      type(Integer.toString(number));
      coach.choose(page.common().get());
    }
  }

  void away() {
    if (coach.place() != PlaceId.BENCH) {
      coach.go(Act.TO_BENCH);
    }
    if (!BenchAnswers.away(coach.model())) {
      act(Act.STEP_AWAY, "");
    }
  }
}
