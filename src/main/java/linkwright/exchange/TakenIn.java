package linkwright.exchange;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import linkwright.drawer.Drawer;
import linkwright.hands.Verdicts;
import linkwright.job.Again;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.LotFact;
import linkwright.plan.ChainWish;
import linkwright.quantity.Length;
import linkwright.quantity.Mass;
import linkwright.quantity.Problem;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Reference;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import linkwright.standing.Handbook;
import linkwright.standing.Standing;
import linkwright.standing.TestPieces;
import linkwright.standing.asked.Questions;
import linkwright.standing.stock.LotQuestions;

/**
 * What the rows of a table come to as entries. Either all of them can be entered or none is.
 *
 * @param facts the entries, in the order of the rows
 * @param problems what is wrong, each with its line: the first, and how many more
 * @param known how many rows were given out of this book and stand in it: they are left out
 * @param asked what is to be asked before the rows are entered, in sentences
 */
public record TakenIn(List<Fact> facts, List<Problem> problems, int known, List<String> asked) {
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
  static final List<String> PASSED = List.of("number", "when", "sample", "step", "left");

  static final String FORMER = "former ";

  /** Pieces that came through a stage; said where a tally says nothing else. */
  static final String THROUGH = "through";

  /** Copies the lists. */
  public TakenIn {
    facts = List.copyOf(facts);
    problems = List.copyOf(problems);
    asked = List.copyOf(asked);
  }

  /** What is left out, in a sentence; empty for nothing. */
  public String leftOut() {
    return switch (known) {
      case 0 -> "";
      case 1 -> "1 row was given out of this book and stands in it: it is left out.";
      default -> known + " rows were given out of this book and stand in it: they are left out.";
    };
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
      String file,
      CsvTable table,
      List<Entry> entries,
      JobState state,
      Standing standing,
      Handbook handbook,
      UnitStyle units) {
    return table.columns().contains("stage")
        ? tallies(
            file,
            table,
            StandsThere.in(entries, state, "tallies"),
            state,
            handbook,
            standing,
            units)
        : pieces(
            file, table, StandsThere.in(entries, state, "test-pieces"), state, standing, units);
  }

  /** Test pieces; wire and formers that no column tells are those of the job's plan. */
  private static TakenIn pieces(
      String file,
      CsvTable table,
      StandsThere there,
      JobState state,
      Standing standing,
      UnitStyle units) {
    Map<String, Optional<TestPieces>> taught = new HashMap<>();
    RowReading rows = new RowReading(file, table, PIECES, List.of("blank"), there);
    List<String> formerColumns =
        table.columns().stream().filter(column -> column.startsWith(FORMER)).toList();
    Optional<ChainWish> wish = standing.counted().wish();
    for (CsvTable.CsvRow row : rows.fresh(table)) {
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
      Fact.TestPieceTried piece =
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
              row.of("size"));
      rows.add(row, piece);
      if (!rows.isWrong(row)) {
        Questions.ofTestPiece(
                piece,
                taught.computeIfAbsent(piece.size(), size -> TestPieces.of(standing, state, size)),
                standing,
                units)
            .values()
            .forEach(each -> rows.ask(row, each));
      }
    }
    return rows.taken();
  }

  /** Pieces that came through a stage, went back to one, or were lost there. */
  private static TakenIn tallies(
      String file,
      CsvTable table,
      StandsThere there,
      JobState state,
      Handbook handbook,
      Standing standing,
      UnitStyle units) {
    RowReading rows =
        new RowReading(file, table, TALLIES, List.of("piece", "stage", "count"), there);
    Map<PieceKind, List<Stage>> stages = handbook.stages().of(state.course().routine());
    Tallied tallied = new Tallied(state, handbook.stages());
    Map<PieceKind, Integer> cut = new HashMap<>();
    for (CsvTable.CsvRow row : rows.fresh(table)) {
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
        boolean begins = state.piles().of(kind.get()).begins(stage.get());
        Fact fact =
            begins && said.what().equals(THROUGH) && !again
                ? begun(kind.get(), said, standing)
                : tally(kind.get(), stage.get(), back.get(), said, row.of("reason"));
        if (fact instanceof Fact.WireCut wire) {
          Questions.ofCut(wire, cut.getOrDefault(wire.piece(), 0), standing, tallied.wire(), units)
              .values()
              .forEach(each -> rows.ask(row, each));
          cut.merge(wire.piece(), wire.count(), Integer::sum);
        }
        tallied
            .after(fact, kind.get(), stage.get(), said)
            .ifPresent(sentence -> rows.wrong(row, "count", () -> sentence));
        rows.add(row, fact);
      }
    }
    return rows.taken();
  }

  /** As the bench enters it: what begins takes its wire off what is on hand. */
  private static Fact begun(PieceKind kind, Tallied.TallyRow said, Standing standing) {
    return new Fact.WireCut(kind, said.count(), standing.takesMm(kind, said.size()), said.size());
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
  public static TakenIn stock(
      String file, CsvTable table, Drawer drawer, Reference reference, UnitStyle units) {
    RowReading rows =
        new RowReading(file, table, STOCK, List.of("lot", "metal"), StandsThere.NOTHING);
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
      LotFact.LotArrived came =
          new LotFact.LotArrived(
              row.of("lot"),
              row.of("what").isEmpty() ? what : row.of("what"),
              alloy.orElse(""),
              wire,
              row.of("temper").isEmpty() && wire.isPresent() ? "soft" : row.of("temper"),
              row.of("batch"),
              length,
              mass,
              row.of("note"));
      if (!rows.isWrong(row)) {
        LotQuestions.wrong(came, drawer, units)
            .forEach((field, wrong) -> rows.wrong(row, field, () -> wrong));
        LotQuestions.lot(came.lot(), drawer)
            .ifPresent(lot -> rows.ask(row, LotQuestions.there(lot, units)));
        LotQuestions.ofCame(came, reference, units).values().forEach(each -> rows.ask(row, each));
      }
      rows.add(row, came);
    }
    return rows.taken();
  }
}
