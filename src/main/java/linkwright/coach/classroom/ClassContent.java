package linkwright.coach.classroom;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Table;
import linkwright.lesson.ClassRoom;
import linkwright.lesson.Learner;
import linkwright.lesson.Roster;
import linkwright.routine.TradeWords;
import linkwright.standing.Handbook;

/**
 * A class in a table: where each is as of when, what is got wrong most, who waits for a mark.
 *
 * @param room what was read of it
 * @param roster what students are called
 * @param handbook where the titles of steps are
 * @param words what things of the trade are called
 * @param now the moment at which it is looked at
 * @param zone the clock's
 */
public record ClassContent(
    ClassRoom room, Roster roster, Handbook handbook, TradeWords words, Instant now, ZoneId zone) {
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("d MMM uuuu, HH:mm", Locale.ENGLISH);

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMM, HH:mm", Locale.ENGLISH);

  private static final DateTimeFormatter CLOCK =
      DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

  /** All of it; at is the student who is looked at, -1 for none. */
  public List<Part> parts(int at) {
    List<Part> parts = new ArrayList<>();
    parts.add(Prose.aside(room.folder() + ", read at " + CLOCK.format(room.read().atZone(zone))));
    room.problems().forEach(problem -> parts.add(Prose.stop(problem)));
    if (room.students().isEmpty()) {
      parts.add(
          Prose.says(
              "No student's book is in this folder. Each stands in a folder called students."));
      return parts;
    }
    parts.add(table(at));
    parts.addAll(worst());
    parts.add(Prose.says(marks()));
    parts.add(flame());
    return parts;
  }

  private Table table(int at) {
    List<Table.Line> lines = new ArrayList<>();
    for (ClassRoom.Seat seat : room.students()) {
      Learner her = seat.learner();
      long known = her.learnt().items().keySet().stream().filter(her.learnt()::known).count();
      long due =
          her.learnt().items().keySet().stream()
              .flatMap(item -> her.learnt().due(item).stream())
              .filter(day -> !day.isAfter(now.atZone(zone).toLocalDate()))
              .count();
      lines.add(
          Table.Line.of(
              room.who(seat, roster),
              seat.step().isEmpty() ? "none yet" : words.show(handbook.stepTitle(seat.step())),
              seat.step().isEmpty() ? "" : asOf(seat.stepAt()),
              asOf(seat.at()),
              "" + known,
              "" + due));
    }
    return new Table(
        List.of(
            Table.Column.words("who"),
            Table.Column.words("last at step"),
            Table.Column.words("as of"),
            Table.Column.words("heard last"),
            Table.Column.numbers("known"),
            Table.Column.numbers("due")),
        lines,
        at);
  }

  /** Each in a line of its own, in the words in which it is asked. */
  private List<Part> worst() {
    List<ClassRoom.Missed> worst = ClassRoom.worst(room.students());
    List<Part> parts = new ArrayList<>();
    parts.add(Prose.says(worst.isEmpty() ? "Nothing was got wrong yet." : "Got wrong most:"));
    worst.forEach(
        each ->
            parts.add(
                Prose.says(
                    "in "
                        + (each.times() == 1 ? "1 lesson" : each.times() + " lessons")
                        + ": "
                        + room.calls(each.item()))));
    return parts;
  }

  /** Whoever made something at a step that nobody has signed since. */
  private String marks() {
    Map<String, List<String>> waits = new LinkedHashMap<>();
    for (ClassRoom.Seat seat : room.students()) {
      for (Learner.Made made : seat.learner().made()) {
        String step = made.fact().routine() + "/" + made.fact().step();
        boolean signed =
            seat.learner().signed().stream()
                .anyMatch(
                    mark -> mark.fact().step().equals(step) && !mark.day().isBefore(made.day()));
        List<String> steps =
            waits.computeIfAbsent(room.who(seat, roster), any -> new ArrayList<>());
        String title = handbook.stepTitle(step);
        if (!signed && !steps.contains(title)) {
          steps.add(title);
        }
      }
    }
    waits.values().removeIf(List::isEmpty);
    return waits.isEmpty()
        ? "Nobody waits for a mark."
        : "Waits for a mark: "
            + waits.entrySet().stream()
                .map(each -> each.getKey() + " (" + String.join(", ", each.getValue()) + ")")
                .collect(Collectors.joining("; "))
            + ".";
  }

  /** What was said last of a flame in this room; silence is never shut. */
  private Part flame() {
    if (room.lastFlame().isEmpty()) {
      return Prose.stop(
          "No book here says anything of a flame. That is not the same as shut: look.");
    }
    ClassRoom.LastFlame flame = room.lastFlame().get();
    String said = "The last word on a flame: " + flame.words() + ", " + when(flame.at()) + ".";
    Instant ends = flame.at().plus(Duration.ofHours(1));
    boolean watched = ends.isAfter(now);
    return Prose.stop(
        flame.shut()
            ? said
                + (watched
                    ? " The hour's watch ends at " + when(ends) + "."
                    : " The hour after it is over.")
            : said + " Nobody has said shut since: look.");
  }

  /** The time of day, and of another day its date too. */
  private String asOf(Instant at) {
    ZonedDateTime there = at.atZone(zone);
    boolean today = there.toLocalDate().equals(now.atZone(zone).toLocalDate());
    boolean thisYear = there.getYear() == now.atZone(zone).getYear();
    return today ? CLOCK.format(there) : thisYear ? DAY.format(there) : WHEN.format(there);
  }

  private String when(Instant at) {
    return WHEN.format(at.atZone(zone));
  }
}
