package linkwright.books;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import linkwright.books.BookScan.ScannedLine;
import linkwright.job.EntryId;
import linkwright.quantity.Problem;

/**
 * Whether anything is missing from a book, or was moved in it. Each device numbers its entries and,
 * since the second format, names in each the check of the one before: so what came from whom and in
 * which order is known, however the lines of several devices lie between one another.
 */
final class Continuity {
  private static final Comparator<ScannedLine> BY_NUMBER =
      Comparator.comparingInt(row -> entry(row).number());

  /** Where something is missing or moved, put in words only for who reads it. */
  record Gap(int line, Supplier<Problem> told) {}

  private Continuity() {}

  /** Device → the check that its next entry names, that of the last it made. */
  static Map<String, String> lastChecks(List<ScannedLine> rows) {
    Map<String, ScannedLine> last = new HashMap<>();
    for (ScannedLine row : rows) {
      if (row.parsed().isPresent()) {
        last.merge(
            entry(row).device(),
            row,
            (before, now) -> BY_NUMBER.compare(before, now) <= 0 ? now : before);
      }
    }
    Map<String, String> checks = new HashMap<>();
    last.forEach((device, row) -> checks.put(device, row.stated()));
    return checks;
  }

  /** What is missing and what was moved, device by device. */
  static List<Gap> gaps(String file, List<ScannedLine> rows) {
    List<Gap> problems = new ArrayList<>();
    byDevice(rows)
        .forEach(
            (device, own) -> {
              moved(file, device, own, problems);
              missing(file, device, own, problems);
            });
    problems.sort(Comparator.comparingInt(Gap::line));
    return problems;
  }

  private static Map<String, List<ScannedLine>> byDevice(List<ScannedLine> rows) {
    Map<String, List<ScannedLine>> byDevice = new LinkedHashMap<>();
    for (ScannedLine row : rows) {
      row.entry()
          .ifPresent(
              entry -> byDevice.computeIfAbsent(entry.device(), any -> new ArrayList<>()).add(row));
    }
    return byDevice;
  }

  private static void moved(String file, String device, List<ScannedLine> own, List<Gap> problems) {
    for (int i = 1; i < own.size(); i++) {
      int number = entry(own.get(i)).number();
      int before = entry(own.get(i - 1)).number();
      if (number < before) {
        int line = own.get(i).line();
        problems.add(new Gap(line, () -> moved(file, device, line, number, before)));
      }
    }
  }

  private static Problem moved(String file, String device, int line, int number, int before) {
    return new Problem(
        file,
        line,
        1,
        "Entry "
            + number
            + " of "
            + EntryId.shown(device)
            + " stands after its entry "
            + before
            + ".",
        "Lines stay where they are written; they are read in the order of their numbers.");
  }

  private static void missing(
      String file, String device, List<ScannedLine> own, List<Gap> problems) {
    List<ScannedLine> inOrder = new ArrayList<>(own);
    inOrder.sort(BY_NUMBER);
    int number = 0;
    Set<String> checks = new HashSet<>(Set.of(""));
    for (ScannedLine row : inOrder) {
      ParsedLine parsed = row.parsed().orElseThrow();
      int now = parsed.entry().number();
      if (now != number) {
        boolean unlinked = parsed.linked() && !checks.contains(parsed.after());
        boolean gap = !parsed.linked() && row.sound() && now > number + 1;
        if (unlinked || gap) {
          int before = number;
          problems.add(new Gap(row.line(), () -> gone(file, device, row, before, now)));
        }
        checks.clear();
      }
      number = now;
      checks.add(row.stated());
    }
  }

  private static Problem gone(String file, String made, ScannedLine row, int before, int now) {
    String device = EntryId.shown(made);
    String which =
        now > before + 2
            ? "Entries " + (before + 1) + " to " + (now - 1) + " of " + device + " are missing"
            : now == before + 2
                ? "Entry " + (before + 1) + " of " + device + " is missing"
                : "The entry of "
                    + device
                    + " before this one is not the one that was there when"
                    + " this was written";
    return new Problem(
        file,
        row.line(),
        1,
        which + ".",
        (now > before + 2 ? "Bring them back" : "Bring it back")
            + " from a copy of the book: linkwright merge takes both together.");
  }

  private static BookLine entry(ScannedLine row) {
    return row.entry().orElseThrow();
  }
}
