package linkwright.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;

/**
 * Books of one job from several machines, taken together as a set of entries.
 *
 * @param lines every entry once, by time, then device, then number
 * @param problems what was met in the books, and entries that say two things
 */
public record BookMerge(List<BookLine> lines, List<Problem> problems) {
  private static final Comparator<BookLine> BY_NAME =
      Comparator.comparing(BookLine::device).thenComparingInt(BookLine::number);

  private static final Comparator<BookLine> IN_ORDER =
      Comparator.comparing(BookLine::at).thenComparing(BY_NAME);

  /** Of two entries with one name, the same one is taken whatever the order of the books. */
  private static final Comparator<BookLine> WHICH_STANDS =
      Comparator.comparing(BookLine::at).thenComparing(line -> BookText.encode(line, ""));

  /** Copies the lists. */
  public BookMerge {
    lines = List.copyOf(lines);
    problems = List.copyOf(problems);
  }

  /**
   * Reads books and unites their entries by device and number; the books themselves stay as they
   * are. The order of the books makes no difference to the entries.
   *
   * @param books two files or more
   * @return the union, or a sentence if one of the books cannot be read
   */
  public static Read<BookMerge> of(List<Path> books) {
    Map<BookLine, BookLine> union = new TreeMap<>(BY_NAME);
    List<Problem> problems = new ArrayList<>();
    List<String> unreadable = new ArrayList<>();
    for (Path path : books) {
      Read<BookFile> read = BookFile.look(path);
      read.problem().ifPresent(unreadable::add);
      if (read instanceof Read.Good<BookFile> good) {
        problems.addAll(good.value().problems());
        good.value().lines().forEach(line -> add(union, line, path, problems));
      }
    }
    if (!unreadable.isEmpty()) {
      return Read.bad(String.join(" ", unreadable));
    }
    return Read.good(new BookMerge(union.values().stream().sorted(IN_ORDER).toList(), problems));
  }

  private static void add(
      Map<BookLine, BookLine> union, BookLine line, Path path, List<Problem> problems) {
    BookLine before = union.get(line);
    if (before == null) {
      union.put(line, line);
    } else if (!before.equals(line)) {
      union.put(line, WHICH_STANDS.compare(before, line) <= 0 ? before : line);
      problems.add(
          new Problem(
              path.toString(),
              0,
              0,
              "Entry "
                  + line.number()
                  + " of device "
                  + line.device()
                  + " says something else here than in another of the books.",
              "Two machines must not share one device name. The earlier entry is taken."));
    }
  }
}
