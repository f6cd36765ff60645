package linkwright.books;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Queue;
import java.util.Set;
import linkwright.books.BookScan.ScannedLine;
import linkwright.books.facts.FactCodecs;
import linkwright.files.yaml.ProblemList;
import linkwright.job.EntryId;
import linkwright.quantity.Problem;

/**
 * What the lines of a job book come to: which entries are used, which lines wait to be accepted,
 * and what there is to tell.
 *
 * @param lines the entries in use, in the order of the file
 * @param suspects the lines that are kept but not used
 * @param file what the book is called in problems
 * @param rows the lines as they stand
 */
record BookReading(
    List<BookLine> lines, List<Suspect> suspects, String file, List<ScannedLine> rows) {
  /** The kind of an entry that accepts a line whose check fails. */
  static final String ACCEPTED = "line-accepted";

  /** The field of such an entry that names the line by its check. */
  static final String ACCEPTED_CHECK = "line-crc";

  /** The same with entries added that are known to be new and sound. */
  BookReading with(List<BookLine> added) {
    List<BookLine> more = new ArrayList<>(lines);
    more.addAll(added);
    return new BookReading(more, suspects, file, rows);
  }

  /** The names of the entries in use; the caller's own to add to. */
  Set<Name> names() {
    Set<Name> names = new HashSet<>();
    lines.forEach(line -> names.add(Name.of(line)));
    return names;
  }

  /** What tells an entry from all others. */
  record Name(String device, int number) {
    static Name of(BookLine line) {
      return new Name(line.device(), line.number());
    }
  }

  BookReading {
    lines = List.copyOf(lines);
    suspects = List.copyOf(suspects);
    rows = List.copyOf(rows);
  }

  static BookReading of(String file, List<ScannedLine> rows) {
    Set<String> accepted = acceptedChecks(rows);
    List<ScannedLine> used = new ArrayList<>(rows.size());
    List<Suspect> suspects = new ArrayList<>();
    for (ScannedLine row : rows) {
      if (isUsed(row, accepted)) {
        used.add(row);
      } else {
        suspects.add(new Suspect(row.line(), row.check(), row.text(), row.entry()));
      }
    }
    List<BookLine> lines = once(used, (row, before, same) -> {});
    return new BookReading(inOrder(lines), suspects, file, rows);
  }

  /** What to tell the user, located; looked for only here, for most who read a book never ask. */
  List<Problem> problems() {
    Set<String> accepted = acceptedChecks(rows);
    List<ScannedLine> used = new ArrayList<>(rows.size());
    FirstProblems problems = new FirstProblems();
    for (ScannedLine row : rows) {
      if (isUsed(row, accepted)) {
        used.add(row);
        unusable(row).ifPresent(why -> problems.add(() -> idle(file, row, why)));
      } else {
        boolean readable = row.entry().isPresent();
        problems.add(() -> readable ? changed(file, row) : unreadable(file, row));
      }
    }
    once(used, (row, before, same) -> problems.add(() -> twice(file, row, before.line(), same)));
    Continuity.gaps(file, rows).forEach(gap -> problems.add(gap.told()));
    return problems.of(file);
  }

  private static boolean isUsed(ScannedLine row, Set<String> accepted) {
    return row.entry().isPresent() && (row.sound() || accepted.contains(row.check()));
  }

  /** Who is told of an entry that stands a second time. */
  private interface Twice {
    void told(ScannedLine row, ScannedLine before, boolean same);
  }

  /**
   * Every entry once. Two entries of one name are both used: two machines that were called alike
   * made them. The second goes by a device of its own, so that what names the first still does.
   */
  private static List<BookLine> once(List<ScannedLine> rows, Twice twice) {
    List<BookLine> lines = new ArrayList<>(rows.size());
    Map<Name, ScannedLine> first = new HashMap<>();
    Map<Name, List<BookLine>> others = new HashMap<>();
    for (ScannedLine row : rows) {
      BookLine line = row.entry().orElseThrow();
      Name name = Name.of(line);
      ScannedLine before = first.putIfAbsent(name, row);
      if (before == null) {
        lines.add(line);
        continue;
      }
      List<BookLine> more = others.computeIfAbsent(name, any -> new ArrayList<>());
      boolean same = line.equals(before.entry().orElseThrow()) || more.contains(line);
      twice.told(row, before, same);
      if (!same) {
        more.add(line);
        lines.add(line.madeBy(line.device() + "~" + (more.size() + 1)));
      }
    }
    return lines;
  }

  /** What each device made in the order of its numbers, in the places where its lines stand. */
  private static List<BookLine> inOrder(List<BookLine> lines) {
    if (isInOrder(lines)) {
      return lines;
    }
    Map<String, Queue<BookLine>> byDevice = new HashMap<>();
    for (BookLine line : lines) {
      byDevice
          .computeIfAbsent(
              line.device(), any -> new PriorityQueue<>(Comparator.comparingInt(BookLine::number)))
          .add(line);
    }
    return lines.stream().map(line -> byDevice.get(line.device()).remove()).toList();
  }

  private static boolean isInOrder(List<BookLine> lines) {
    Map<String, Integer> last = new HashMap<>();
    for (BookLine line : lines) {
      Integer before = last.put(line.device(), line.number());
      if (before != null && before > line.number()) {
        return false;
      }
    }
    return true;
  }

  private static Optional<String> unusable(ScannedLine row) {
    BookLine line = row.entry().orElseThrow();
    return FactCodecs.wrong(line.kind(), line.fields());
  }

  private static Problem idle(String file, ScannedLine row, String why) {
    return new Problem(file, row.line(), 1, why, "The line is kept, but it counts for nothing.");
  }

  /** Only a sound line can accept another: else one bad line could wave itself through. */
  private static Set<String> acceptedChecks(List<ScannedLine> rows) {
    Set<String> checks = new HashSet<>();
    for (ScannedLine row : rows) {
      if (row.sound() && row.entry().isPresent()) {
        BookLine line = row.entry().get();
        if (line.kind().equals(ACCEPTED)
            && line.fields().get(ACCEPTED_CHECK) instanceof String check) {
          checks.add(check);
        }
      }
    }
    return checks;
  }

  private static Problem unreadable(String file, ScannedLine row) {
    return new Problem(
        file,
        row.line(),
        1,
        "This line cannot be read as an entry: " + ProblemList.excerpt(row.text()),
        "An entry looks like - {n: 12, at: 2026-11-25T20:00:00Z, by: bench, kind: …}."
            + " The line is kept but not used.");
  }

  private static Problem changed(String file, ScannedLine row) {
    return new Problem(
        file,
        row.line(),
        1,
        "This entry was changed after it was written, its check does not fit: "
            + ProblemList.excerpt(row.text()),
        "Look it over and accept it if it is right, or bring back a copy of the book."
            + " Until then it is kept but not used.");
  }

  private static Problem twice(String file, ScannedLine row, int before, boolean same) {
    BookLine line = row.entry().orElseThrow();
    String which = "Entry " + line.number() + " of " + EntryId.shown(line.device());
    return same
        ? new Problem(
            file,
            row.line(),
            1,
            which + " stands here a second time, the same as on line " + before + ".",
            "Each entry once. It is counted once.")
        : new Problem(
            file,
            row.line(),
            1,
            which + " says something else here than on line " + before + ".",
            "Each device gives every number once. Both are kept and used; what names the entry"
                + " means the one on line "
                + before
                + ".");
  }
}
