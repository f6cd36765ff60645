package linkwright.exchange;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import linkwright.job.Fact;
import linkwright.quantity.Count;
import linkwright.quantity.Length;
import linkwright.quantity.Nearest;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;

/** Reads cells and gathers what is wrong with them, and what is to be asked of them. */
final class RowReading {
  /** Nobody reads a thousand. */
  private static final int MOST_TOLD = 20;

  private static final int MOST_LINES = 8;

  private final String file;
  private final List<Fact> facts = new ArrayList<>();
  private final List<Problem> problems;
  private final BitSet lines = new BitSet();
  private final List<String> asked = new ArrayList<>();
  private final StandsThere there;
  private final List<Integer> alike = new ArrayList<>();
  private int known;
  private int untold;

  RowReading(
      String file, CsvTable table, List<String> known, List<String> needed, StandsThere there) {
    this.file = file;
    this.there = there;
    this.problems = new ArrayList<>(table.problems());
    problems.forEach(each -> lines.set(each.line()));
    List<String> columns = table.columns();
    for (String column : columns) {
      boolean taken =
          known.contains(column)
              || TakenIn.PASSED.contains(column)
              || column.startsWith(TakenIn.FORMER);
      if (!taken) {
        String near =
            Nearest.of(column, known).map(each -> " Did you mean " + each + "?").orElse("");
        problems.add(
            new Problem(
                file,
                1,
                0,
                "“" + column + "” is no heading that is known here." + near,
                "There are: " + String.join(", ", known) + ", with a unit: blank (mm)."));
      }
    }
    for (String column : needed) {
      if (!columns.contains(column) && !columns.isEmpty()) {
        problems.add(new Problem(file, 1, 0, "no column is headed “" + column + "”", ""));
      }
    }
    if (table.rows().isEmpty() && problems.isEmpty()) {
      problems.add(new Problem(file, 1, 0, "no row stands below the headings", ""));
    }
  }

  /** The rows that were not given out of the book that they are to go into. */
  List<CsvTable.CsvRow> fresh(CsvTable table) {
    List<CsvTable.CsvRow> fresh = table.rows().stream().filter(row -> !there.gave(row)).toList();
    known = table.rows().size() - fresh.size();
    return fresh;
  }

  void add(CsvTable.CsvRow row, Fact fact) {
    facts.add(fact);
    if (there.says(fact)) {
      alike.add(row.line());
    }
  }

  /** Something that may be so, but hardly is: it is asked before any row is entered. */
  void ask(CsvTable.CsvRow row, String question) {
    if (asked.size() < MOST_TOLD) {
      asked.add("Line " + row.line() + ": " + question);
    }
  }

  TakenIn taken() {
    if (problems.isEmpty()) {
      List<String> questions = new ArrayList<>();
      if (!alike.isEmpty()) {
        questions.add(alike());
      }
      questions.addAll(asked);
      return new TakenIn(facts, problems, known, questions);
    }
    List<Problem> told = new ArrayList<>(problems.subList(0, Math.min(MOST_TOLD, problems.size())));
    int more = problems.size() + untold - told.size();
    if (more > 0) {
      told.add(Problem.more(file, more));
    }
    return new TakenIn(List.of(), told, known, alike.isEmpty() ? List.of() : List.of(alike()));
  }

  private String alike() {
    String some =
        alike.stream().limit(MOST_LINES).map(String::valueOf).collect(Collectors.joining(", "));
    int more = alike.size() - Math.min(MOST_LINES, alike.size());
    return alike.size() == 1
        ? "Line " + some + " says what stands in the book already."
        : "Lines "
            + some
            + (more > 0 ? " and " + more + " more" : "")
            + " say what stands in the book already.";
  }

  /** What is wrong is put into words only where it is told: that may take long. */
  void wrong(CsvTable.CsvRow row, String column, Supplier<String> sentence) {
    lines.set(row.line());
    if (problems.size() >= MOST_TOLD) {
      untold++;
      return;
    }
    problems.add(new Problem(file, row.line(), 0, column + ": " + sentence.get(), ""));
  }

  boolean isWrong(CsvTable.CsvRow row) {
    return lines.get(row.line());
  }

  void missing(CsvTable.CsvRow row, String column, String example) {
    if (!lines.get(row.line()) && !lines.get(1)) {
      wrong(row, column, () -> "nothing stands there: write " + example + ".");
    }
  }

  OptionalDouble number(
      CsvTable.CsvRow row, String column, Function<String, Read<Double>> reading) {
    if (row.of(column).isEmpty()) {
      return OptionalDouble.empty();
    }
    Read<Double> read = reading.apply(row.of(column));
    read.problem().ifPresent(sentence -> wrong(row, column, () -> sentence));
    return read.map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }

  OptionalDouble size(CsvTable.CsvRow row, String column) {
    return number(row, column, text -> Length.readSize(text).map(Length::mm));
  }

  OptionalDouble thickness(CsvTable.CsvRow row) {
    return number(row, "wire", text -> Length.readWire(text).map(Length::mm));
  }

  Optional<Integer> count(CsvTable.CsvRow row) {
    Read<Integer> count = Count.read(row.of("count"), 1, Count.MOST);
    count.problem().ifPresent(sentence -> wrong(row, "count", () -> sentence));
    return count.found();
  }

  Optional<String> word(CsvTable.CsvRow row, String column, List<String> known) {
    String word = row.of(column).toLowerCase(Locale.ROOT);
    if (known.contains(word)) {
      return Optional.of(word);
    }
    wrong(
        row,
        column,
        () ->
            "“"
                + row.of(column)
                + "” is none of these: "
                + String.join(", ", known)
                + "."
                + Nearest.of(word, known).map(near -> " Did you mean " + near + "?").orElse(""));
    return Optional.empty();
  }
}
