package linkwright.cli.walk;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.keys.Act;
import linkwright.lesson.Roster;
import linkwright.quantity.Nearest;

/** Places that are gone to for one thing and left again at once, back to where one was. */
final class ShortVisits {
  /** What is entered at the wire's place, by the word after {@code wire}. */
  private static final Map<String, Act> WIRE =
      Map.of("came", Act.ADD_WIRE, "cut", Act.CUT, "lost", Act.DISCARD, "drawn", Act.DRAW);

  private static final Pattern TIMER = Pattern.compile("(\\D+?)\\s+(\\d.*)");

  private final WalkLines lines;
  private final WalkCoach coach;
  private final Predicate<String> form;

  /**
   * Visits.
   *
   * @param form talks the form through that is open, filled from a text; false when the lines have
   *     ended
   */
  ShortVisits(WalkLines lines, WalkCoach coach, Predicate<String> form) {
    this.lines = lines;
    this.coach = coach;
    this.form = form;
  }

  /** What is typed for an act of the wire's place; empty for any other. */
  static Optional<String> wordOf(Act act) {
    return WIRE.entrySet().stream()
        .filter(each -> each.getValue() == act)
        .map(each -> WalkWord.WIRE.word() + " " + each.getKey())
        .findFirst();
  }

  /** Does something elsewhere and goes back; false when the lines have ended. */
  boolean to(Act place, BooleanSupplier there) {
    PlaceId before = coach.place();
    if (before.act() != place) {
      coach.go(place);
    }
    boolean goesOn = coach.place().act() != place || there.getAsBoolean();
    back(before);
    return goesOn;
  }

  /** Goes back to where one was: by the places of the job, or straight where none leads there. */
  void back(PlaceId before) {
    if (before == coach.place() || coach.failing()) {
      return;
    }
    coach.go(Act.ROUND);
    if (coach.place() == before) {
      return;
    }
    if (new WalkPage(coach.model()).opens(before.act())) {
      coach.choose(before.act());
    } else {
      coach.lead(new Message.Led(before, ""));
    }
  }

  /** Tells what a place says. */
  void look(Act place) {
    to(
        place,
        () -> {
          lines.sayAll(coach.takeTold());
          lines.sayAll(WalkPage.passed(coach.model()).said());
          return true;
        });
  }

  boolean note(String text) {
    return text.isEmpty() ? enter(Act.TO_BOOK, Act.NOTE, "") : to(Act.TO_BOOK, () -> noted(text));
  }

  /** The whole of the line is the note, semicolons too. */
  private boolean noted(String text) {
    coach.choose(Act.NOTE);
    if (coach.model().held().form().isPresent()) {
      new FormTalk(lines, coach).fill(Map.of("text", text));
    }
    return true;
  }

  private boolean enter(Act place, Act act, String text) {
    return to(
        place,
        () -> {
          coach.choose(act);
          return form.test(text);
        });
  }

  /** Wire on hand, or some that came or went. */
  boolean wire(String rest) {
    if (rest.isEmpty()) {
      look(Act.TO_WIRE);
      return true;
    }
    String[] parts = rest.split("\\s+", 2);
    if (!WIRE.containsKey(parts[0])) {
      lines.say(
          "After wire write came, cut, lost or drawn. "
              + Nearest.of(parts[0], WIRE.keySet())
                  .map(near -> "Did you mean wire " + near + "?")
                  .orElse(""));
      return true;
    }
    return enter(Act.TO_WIRE, WIRE.get(parts[0]), parts.length > 1 ? parts[1] : "");
  }

  /** What for, then how long: the time begins where the digits do. */
  boolean timer(String rest) {
    Matcher parts = TIMER.matcher(rest);
    if (!parts.matches()) {
      lines.say("Write what for and how long: timer kettle 8 min. Nothing was entered.");
      return true;
    }
    List<String> fields = List.of("what for: " + parts.group(1), "how long: " + parts.group(2));
    return enter(Act.TO_TIMERS, Act.SET_TIMER, String.join("; ", fields));
  }

  /** The book of the student who is called so; a name that is none leads nowhere. */
  void student(String name) {
    Roster roster = coach.model().learning().roster();
    Optional<String> id = roster.find(name);
    if (id.isPresent()) {
      coach.lead(new Message.Led(PlaceId.STUDENT, id.get()));
      return;
    }
    lines.say(
        "No student is called “"
            + name
            + "”."
            + Nearest.of(name, roster.names().values())
                .map(near -> " Did you mean " + near + "?")
                .orElse(""));
  }
}
