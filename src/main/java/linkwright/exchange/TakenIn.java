package linkwright.exchange;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Supplier;
import linkwright.hands.Verdicts;
import linkwright.job.Again;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.LotFact;
import linkwright.plan.ChainWish;
import linkwright.quantity.Count;
import linkwright.quantity.Length;
import linkwright.quantity.Mass;
import linkwright.quantity.Nearest;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;
import linkwright.reference.Reference;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import linkwright.standing.Handbook;
import linkwright.standing.Standing;

/**
 * What the rows of a table come to as entries. Either all of them can be entered or none is.
 *
 * @param facts the entries, in the order of the rows
 * @param problems what is wrong, each with its line: the first, and how many more
 */
public record TakenIn(List<Fact> facts, List<Problem> problems) {
  /** Said where rows of a closed job are to be entered. */
  public static final String CLOSED = "This job is closed: open it again before rows go in.";

  private static final List<String> PIECES =
      List.of(
          "blank",
          "wire",
          "length",
          "width",
          "inside",
          "verdict",
          "verdict 2",
          "note",
          "lot",
          "size");
  private static final List<String> TALLIES =
      List.of("piece", "stage", "what", "count", "reason", "back to", "from redo", "size");
  private static final List<String> STOCK =
      List.of("lot", "what", "metal", "wire", "length", "mass", "temper", "batch", "note");

  /** Columns that an export writes and that say nothing to be entered. */
  private static final List<String> PASSED = List.of("number", "when", "sample", "step", "left");

  private static final String FORMER = "former ";

  /** Pieces that came through a stage; said where a tally says nothing else. */
  static final String THROUGH = "through";

  /** Copies the lists. */
  public TakenIn {
    facts = List.copyOf(facts);
    problems = List.copyOf(problems);
  }

  /** How many rows, in words. */
  public String count() {
    return count(facts.size());
  }

  /** So many rows, in words. */
  public static String count(int rows) {
    return rows + (rows == 1 ? " row" : " rows");
  }

  /** Rows of a job: tallies where a column says the stage, else test pieces. */
  public static TakenIn job(
      String file, CsvTable table, JobState state, Standing standing, Handbook handbook) {
    return table.columns().contains("stage")
        ? tallies(file, table, state, handbook)
        : pieces(file, table, standing);
  }

  /** Test pieces; wire and formers that no column tells are those of the job's plan. */
  public static TakenIn pieces(String file, CsvTable table, Standing standing) {
    Rows rows = new Rows(file, table, PIECES, List.of("blank"));
    List<String> formerColumns =
        table.columns().stream().filter(column -> column.startsWith(FORMER)).toList();
    Optional<ChainWish> wish = standing.counted().wish();
    for (CsvTable.CsvRow row : table.rows()) {
      Map<String, Double> formers =
          new LinkedHashMap<>(wish.map(known -> known.link().formersMm()).orElse(Map.of()));
      for (String column : formerColumns) {
        rows.number(row, column, text -> Length.readSize(text).map(Length::mm))
            .ifPresent(mm -> formers.put(column.substring(FORMER.length()), mm));
      }
      List<String> verdicts = new ArrayList<>();
      for (String column : List.of("verdict", "verdict 2")) {
        if (!row.of(column).isEmpty()) {
          rows.word(row, column, Verdicts.words()).ifPresent(verdicts::add);
        }
      }
      OptionalDouble blank = rows.size(row, "blank");
      if (blank.isEmpty()) {
        rows.missing(row, "blank", "38 mm");
      }
      rows.add(
          new Fact.TestPieceTried(
              rows.thickness(row).orElse(wish.map(ChainWish::wireMm).orElse(0.0)),
              blank.orElse(0),
              formers,
              rows.size(row, "length"),
              rows.size(row, "width"),
              rows.size(row, "inside"),
              verdicts,
              row.of("note"),
              row.of("lot"),
              true,
              row.of("size")));
    }
    return rows.taken();
  }

  /** Pieces that came through a stage, went back to one, or were lost there. */
  public static TakenIn tallies(String file, CsvTable table, JobState state, Handbook handbook) {
    Rows rows = new Rows(file, table, TALLIES, List.of("piece", "stage", "count"));
    Map<PieceKind, List<Stage>> stages = handbook.stages().of(state.course().routine());
    Tallied tallied = new Tallied(state, handbook.stages());
    for (CsvTable.CsvRow row : table.rows()) {
      List<String> kinds = stages.keySet().stream().map(PieceKind::id).toList();
      Optional<PieceKind> kind = rows.word(row, "piece", kinds).map(PieceKind::new);
      List<String> known =
          kind.map(each -> List.copyOf(Stage.words(stages.get(each)))).orElse(List.of());
      Optional<Stage> stage =
          kind.isEmpty() ? Optional.empty() : rows.word(row, "stage", known).map(Stage::new);
      String what =
          row.of("what").isEmpty()
              ? THROUGH
              : rows.word(row, "what", List.of(THROUGH, "redo", "scrap")).orElse("");
      Optional<Stage> back =
          row.of("back to").isEmpty() || kind.isEmpty()
              ? stage
              : rows.word(row, "back to", known).map(Stage::new);
      boolean again =
          !row.of("from redo").isEmpty()
              && rows.word(row, "from redo", List.of("yes", "no"))
                  .filter("yes"::equals)
                  .isPresent();
      Optional<Integer> count = rows.count(row);
      if (!rows.isWrong(row) && stage.isPresent() && back.isPresent() && count.isPresent()) {
        Tallied.TallyRow said = new Tallied.TallyRow(what, count.get(), again, row.of("size"));
        Fact fact = tally(kind.orElseThrow(), stage.get(), back.get(), said, row.of("reason"));
        tallied
            .after(fact, kind.orElseThrow(), stage.get(), said)
            .ifPresent(sentence -> rows.wrong(row, "count", () -> sentence));
        rows.add(fact);
      }
    }
    return rows.taken();
  }

  private static Fact tally(
      PieceKind kind, Stage stage, Stage back, Tallied.TallyRow said, String reason) {
    int count = said.count();
    boolean again = said.fromRedo();
    return switch (said.what()) {
      case "redo" ->
          new Fact.PiecesSentBack(
              kind, count, stage, back, again, reason, Again.NOT_SAID, said.size());
      case "scrap" -> new Fact.PiecesScrapped(kind, count, stage, again, reason, said.size());
      default ->
          new Fact.PiecesThrough(
              Map.of(kind, count),
              stage,
              again,
              StepId.NONE,
              said.size().isEmpty() ? Map.of() : Map.of(said.size(), count));
    };
  }

  /** Lots that came into the drawer. */
  public static TakenIn stock(String file, CsvTable table, Reference reference) {
    Rows rows = new Rows(file, table, STOCK, List.of("lot", "metal"));
    Function<String, Optional<String>> alloys = reference.alloyIds();
    for (CsvTable.CsvRow row : table.rows()) {
      if (row.of("lot").isEmpty()) {
        rows.missing(row, "lot", "silver 0.9 March");
      }
      Optional<String> alloy = alloys.apply(row.of("metal"));
      if (alloy.isEmpty()) {
        rows.wrong(row, "metal", () -> reference.metal(row.of("metal")).problem().orElse(""));
      }
      OptionalDouble wire = rows.thickness(row);
      OptionalDouble length = rows.size(row, "length");
      OptionalDouble mass = rows.number(row, "mass", text -> Mass.read(text).map(Mass::grams));
      if (length.isEmpty() && mass.isEmpty()) {
        rows.missing(row, "mass", "20 g, or a length");
      }
      boolean metal =
          alloy.stream()
              .anyMatch(id -> reference.metals().stream().anyMatch(any -> any.id().equals(id)));
      String what = metal ? (wire.isPresent() ? "wire" : "metal") : "solder";
      rows.add(
          new LotFact.LotArrived(
              row.of("lot"),
              row.of("what").isEmpty() ? what : row.of("what"),
              alloy.orElse(""),
              wire,
              row.of("temper").isEmpty() && wire.isPresent() ? "soft" : row.of("temper"),
              row.of("batch"),
              length,
              mass,
              row.of("note")));
    }
    return rows.taken();
  }

  /** Reads cells and gathers what is wrong with them. */
  private static final class Rows {
    /** Nobody reads a thousand. */
    private static final int MOST_TOLD = 20;

    private final String file;
    private final List<Fact> facts = new ArrayList<>();
    private final List<Problem> problems;
    private final BitSet lines = new BitSet();
    private int untold;

    Rows(String file, CsvTable table, List<String> known, List<String> needed) {
      this.file = file;
      this.problems = new ArrayList<>(table.problems());
      problems.forEach(each -> lines.set(each.line()));
      List<String> columns = table.columns();
      for (String column : columns) {
        boolean taken =
            known.contains(column) || PASSED.contains(column) || column.startsWith(FORMER);
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

    void add(Fact fact) {
      facts.add(fact);
    }

    TakenIn taken() {
      if (problems.isEmpty()) {
        return new TakenIn(facts, problems);
      }
      List<Problem> told =
          new ArrayList<>(problems.subList(0, Math.min(MOST_TOLD, problems.size())));
      int more = problems.size() + untold - told.size();
      if (more > 0) {
        told.add(Problem.more(file, more));
      }
      return new TakenIn(List.of(), told);
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
}
