package linkwright.books;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import linkwright.books.BookScan.ScannedLine;
import linkwright.disk.Disk;
import linkwright.disk.DiskTrouble;
import linkwright.job.EntryId;
import linkwright.job.EntryLabels;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;

/**
 * Books of one job from several machines, taken together as a set of lines. What comes out depends
 * on that set alone: neither on the order of the books nor on how often or in what steps they are
 * united. Each device's entries stand in the order of their numbers, whatever its clock said; those
 * of several devices lie between one another by their times, but none before the job was begun.
 *
 * @param texts the lines of the new book as they stood, without its header
 * @param problems what was met in the books, and entries that say two things
 * @param summary what comes from where, in sentences
 * @param before the entries in use of each book, in the order in which they were named
 * @param lines the entries in use of the new book
 */
public record BookMerge(
    List<String> texts,
    List<Problem> problems,
    List<String> summary,
    Map<Path, List<BookLine>> before,
    List<BookLine> lines) {
  private static final String TOGETHER = "the books together";
  private static final String LOT = "lot-";
  private static final String PLAN = "plan-set";

  /** Copies the lists and the map. */
  public BookMerge {
    texts = List.copyOf(texts);
    problems = List.copyOf(problems);
    summary = List.copyOf(summary);
    before = Collections.unmodifiableMap(new LinkedHashMap<>(before));
    lines = List.copyOf(lines);
  }

  /** A book and its lines by their text. */
  private record Source(Path path, Map<String, ScannedLine> rows) {
    Set<BookLine> openings() {
      Set<BookLine> openings = new HashSet<>();
      for (ScannedLine row : rows.values()) {
        row.entry()
            .filter(entry -> entry.kind().equals(EarlyClocks.OPENED))
            .ifPresent(openings::add);
      }
      return openings;
    }

    /** The drawer's book has no beginning of its own: two that hold lots alone are one. */
    boolean isDrawers() {
      return rows.values().stream()
          .flatMap(row -> row.entry().stream())
          .allMatch(entry -> entry.kind().startsWith(LOT));
    }
  }

  /**
   * A line with the time by which it is put between those of other devices.
   *
   * @param time the latest that its device's clock had said, or the first that it can have meant
   * @param follows whether it stands behind those of the same time by the device that began it
   * @param said the same without regard to when the job was begun
   */
  private record Placed(Instant time, boolean follows, Instant said, ScannedLine row) {
    static final Comparator<Placed> ORDER =
        Comparator.comparing(Placed::time)
            .thenComparing(Placed::follows)
            .thenComparing(Placed::said)
            .thenComparing(placed -> entry(placed.row()).device())
            .thenComparing(Placed::row, BY_NUMBER);
  }

  private static final Comparator<ScannedLine> BY_NUMBER =
      Comparator.<ScannedLine>comparingInt(row -> entry(row).number())
          .thenComparing(row -> entry(row).at())
          .thenComparing(ScannedLine::text);

  /**
   * Reads books and unites their lines; the books themselves stay as they are.
   *
   * @param books one file or more; one alone is put in order and becomes a book of this format
   * @return the union, or a sentence if one cannot be read or they are of different jobs
   */
  public static Read<BookMerge> of(List<Path> books) {
    List<Source> sources = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    List<String> unreadable = new ArrayList<>();
    Map<Path, List<BookLine>> before = new LinkedHashMap<>();
    for (Path path : books) {
      Read<BookFile> read = BookFile.look(path);
      read.problem().ifPresent(unreadable::add);
      read.found()
          .ifPresent(
              book -> {
                problems.addAll(book.problems());
                before.put(path, book.lines());
                Map<String, ScannedLine> rows = new LinkedHashMap<>();
                book.rows().forEach(row -> rows.put(row.text(), row));
                sources.add(new Source(path, rows));
              });
    }
    if (!unreadable.isEmpty()) {
      return Read.bad(String.join(" ", new LinkedHashSet<>(unreadable)));
    }
    for (Source other : sources) {
      if (!sameJob(sources.get(0), other)) {
        return Read.bad(
            sources.get(0).path()
                + " and "
                + other.path()
                + " are books of two jobs: they do not begin with one and the same entry. Only"
                + " books of one job are united.");
      }
    }
    Map<String, ScannedLine> union = new TreeMap<>();
    sources.forEach(source -> union.putAll(source.rows()));
    Map<String, List<ScannedLine>> byDevice = byDevice(union);
    problems.addAll(twice(byDevice));
    List<String> texts = inOrder(union);
    problems.addAll(plansBehind(sources, texts, union));
    return Read.good(
        new BookMerge(
            texts,
            problems.stream().distinct().toList(),
            summary(sources, byDevice, texts.stream().map(union::get).toList()),
            before,
            BookReading.of(TOGETHER, texts.stream().map(union::get).toList()).lines()));
  }

  private static boolean sameJob(Source one, Source other) {
    Set<BookLine> shared = one.openings();
    Set<BookLine> others = other.openings();
    if (one.isDrawers() && other.isDrawers()) {
      return true;
    }
    if (shared.isEmpty() || others.isEmpty()) {
      return other.rows().keySet().stream().anyMatch(one.rows()::containsKey);
    }
    shared.retainAll(others);
    return !shared.isEmpty();
  }

  private static Map<String, List<ScannedLine>> byDevice(Map<String, ScannedLine> union) {
    Map<String, List<ScannedLine>> byDevice = new TreeMap<>();
    for (ScannedLine row : union.values()) {
      row.entry()
          .ifPresent(
              entry -> byDevice.computeIfAbsent(entry.device(), any -> new ArrayList<>()).add(row));
    }
    byDevice.values().forEach(rows -> rows.sort(BY_NUMBER));
    return byDevice;
  }

  /**
   * The lines of several books, each once, in the order of the book that they make together. A
   * clock that was set back does not pull an entry before the ones that its device made first. One
   * that stood before the job was begun and was set right later puts what was made till then before
   * the first entry since; of one that never was, only the job's beginning is known to lie before.
   */
  static List<String> inOrder(Map<String, ScannedLine> union) {
    Optional<BookLine> opening = EarlyClocks.opening(entries(union.values()));
    List<Placed> placed = new ArrayList<>();
    for (List<ScannedLine> rows : byDevice(union).values()) {
      boolean follows =
          opening.map(first -> !first.device().equals(entry(rows.get(0)).device())).orElse(false);
      Instant begun = opening.filter(first -> follows).map(BookLine::at).orElse(Instant.MIN);
      Instant setRight =
          rows.stream()
              .map(row -> entry(row).at())
              .filter(at -> !at.isBefore(begun))
              .findFirst()
              .orElse(begun);
      Instant latest = Instant.MIN;
      for (ScannedLine row : rows) {
        latest = entry(row).at().isAfter(latest) ? entry(row).at() : latest;
        Instant time = latest.isBefore(begun) ? setRight : latest;
        placed.add(new Placed(time, follows, latest, row));
      }
    }
    placed.sort(Placed.ORDER);
    List<String> texts = new ArrayList<>(placed.stream().map(each -> each.row().text()).toList());
    union.values().stream()
        .filter(row -> row.entry().isEmpty())
        .forEach(row -> texts.add(row.text()));
    return texts;
  }

  private static List<BookLine> entries(Collection<ScannedLine> rows) {
    return rows.stream().flatMap(row -> row.entry().stream()).toList();
  }

  private static List<Problem> twice(Map<String, List<ScannedLine>> byDevice) {
    List<Problem> problems = new ArrayList<>();
    byDevice.forEach(
        (device, rows) -> {
          Set<Integer> numbers = new HashSet<>();
          Set<Integer> told = new TreeSet<>();
          rows.stream()
              .map(row -> entry(row).number())
              .filter(number -> !numbers.add(number))
              .forEach(told::add);
          for (int number : told) {
            problems.add(
                new Problem(
                    TOGETHER,
                    0,
                    0,
                    "There are two entries " + number + " of " + EntryId.shown(device) + ".",
                    "Both are kept and used: two machines may have been called alike."));
          }
        });
    return problems;
  }

  /**
   * Plans that a clock lays before one that stood in their own book already when they were made: of
   * the books together another plan holds than of that book alone.
   */
  private static List<Problem> plansBehind(
      List<Source> sources, List<String> texts, Map<String, ScannedLine> union) {
    Optional<BookLine> holds = lastPlan(texts, union);
    List<Problem> problems = new ArrayList<>();
    for (Source source : sources) {
      Optional<BookLine> own = lastPlan(List.copyOf(source.rows().keySet()), union);
      boolean hadSeen =
          entries(source.rows().values()).stream()
              .anyMatch(each -> holds.equals(Optional.of(each)));
      if (hadSeen && !own.equals(holds)) {
        problems.add(
            new Problem(
                TOGETHER,
                0,
                0,
                "In "
                    + source.path()
                    + " the plan is that of "
                    + named(own.orElseThrow())
                    + "; united, by the time that its clock said, it lies before that of "
                    + named(holds.orElseThrow())
                    + ", and that one holds.",
                "Look at the plan of the new book, and set it anew if the other is meant."));
      }
    }
    return problems;
  }

  private static Optional<BookLine> lastPlan(List<String> texts, Map<String, ScannedLine> union) {
    return texts.stream()
        .flatMap(text -> union.get(text).entry().stream())
        .filter(entry -> entry.kind().equals(PLAN))
        .reduce((before, last) -> last);
  }

  private static String named(BookLine entry) {
    return "entry " + entry.number() + " of " + EntryId.shown(entry.device());
  }

  private static List<String> summary(
      List<Source> sources, Map<String, List<ScannedLine>> byDevice, List<ScannedLine> inOrder) {
    Map<String, String> machines =
        EntryLabels.machines(entries(inOrder).stream().map(BookLine::device).distinct().toList());
    List<String> summary = new ArrayList<>();
    for (Source source : sources) {
      List<Source> others =
          sources.stream().filter(each -> !each.path().equals(source.path())).toList();
      long own =
          source.rows().keySet().stream()
              .filter(text -> others.stream().noneMatch(each -> each.rows().containsKey(text)))
              .count();
      summary.add(source.path() + ": " + lines(source.rows().size()) + ", " + own + " only there.");
    }
    byDevice.forEach(
        (device, rows) ->
            summary.add(
                (byDevice.size() == 1 ? "One machine" : machines.get(device))
                    + ": "
                    + lines(rows.size())
                    + ", "
                    + entry(rows.get(0)).number()
                    + " to "
                    + entry(rows.get(rows.size() - 1)).number()
                    + "."));
    summary.addAll(
        EarlyClocks.told(byDevice.values().stream().flatMap(r -> entries(r).stream()).toList()));
    return summary;
  }

  private static String lines(int count) {
    return count == 1 ? "1 entry" : count + " entries";
  }

  private static BookLine entry(ScannedLine row) {
    return row.entry().orElseThrow();
  }

  /** Writes the new book, which must not be there yet; a disk that refuses leaves nothing of it. */
  public Read<Path> write(Path into) {
    String text = BookText.HEADER + "\n" + String.join("\n", texts) + (texts.isEmpty() ? "" : "\n");
    try {
      Disk.createWhole(into, text.getBytes(StandardCharsets.UTF_8));
      return Read.good(into);
    } catch (IOException trouble) {
      return Read.bad(DiskTrouble.writing(into, trouble));
    }
  }
}
