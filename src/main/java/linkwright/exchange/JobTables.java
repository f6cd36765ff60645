package linkwright.exchange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.LinkSizes;
import linkwright.job.LotFact;
import linkwright.job.Strikes;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;

/**
 * A job as tables for other programs, out of its own book alone: nothing of another job is in them,
 * not even the name of the one it was made again from. Struck entries count no more.
 */
public final class JobTables {
  private JobTables() {}

  /** Name of a table → its rows; times are UTC. */
  public static Map<String, List<Map<String, Object>>> of(List<Entry> entries, JobState state) {
    Strikes strikes = Strikes.in(entries);
    Map<String, List<Map<String, Object>>> tables = new LinkedHashMap<>();
    tables.put("card", card(state));
    tables.put("test-pieces", new ArrayList<>());
    tables.put("trial-lengths", new ArrayList<>());
    tables.put("tallies", new ArrayList<>());
    tables.put("wire", new ArrayList<>());
    tables.put("weighed", new ArrayList<>());
    for (Entry entry : entries) {
      if (!strikes.has(entry)) {
        pieces(tables, entry, state);
        tallies(tables.get("tallies"), entry, state);
        wire(tables.get("wire"), entry);
        weighed(tables.get("weighed"), entry);
      }
    }
    return tables;
  }

  private static List<Map<String, Object>> card(JobState state) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("job", state.course().name());
    row.put("routine", state.course().routine());
    row.putAll(state.card().said());
    row.put("closed", state.course().closed());
    row.put("next-time", state.course().nextTime());
    return List.of(row);
  }

  private static Map<String, Object> row(Entry entry) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("number", entry.number());
    row.put("when", entry.at().toString());
    return row;
  }

  private static void put(Map<String, Object> row, String key, OptionalDouble amount) {
    row.put(key, amount.isPresent() ? Optional.of(amount.getAsDouble()) : Optional.<Double>empty());
  }

  private static void pieces(
      Map<String, List<Map<String, Object>>> tables, Entry entry, JobState state) {
    Map<String, Object> row = row(entry);
    if (entry.fact() instanceof Fact.TestPieceTried piece) {
      row.put("wire_mm", piece.wireMm());
      row.put("blank_mm", piece.blankMm());
      piece.formersMm().forEach((name, mm) -> row.put("former_" + name + "_mm", mm));
      put(row, "length_mm", piece.lengthMm());
      put(row, "width_mm", piece.widthMm());
      put(row, "inside_mm", piece.insideMm());
      row.put("verdict", piece.verdicts().isEmpty() ? "" : piece.verdicts().get(0));
      row.put("verdict_2", piece.verdicts().size() < 2 ? "" : piece.verdicts().get(1));
      row.put("note", piece.note());
      row.put("lot", piece.lot());
      row.put("size", piece.size());
      row.put("sample", state.trials().isSample(entry.id()));
      tables.get("test-pieces").add(row);
    }
    if (entry.fact() instanceof Fact.TrialMeasured trial) {
      row.put("links", trial.links());
      row.put("rings", trial.rings());
      row.put("ring_inside_mm", trial.ringInsideMm());
      put(row, "oval_inside_mm", trial.ovalInsideMm());
      row.put("hung_mm", trial.hungMm());
      row.put("clasp_mm", trial.claspMm());
      row.put("note", trial.note());
      tables.get("trial-lengths").add(row);
    }
  }

  /** As they can be taken in again: where a piece failed, and where it went back to. */
  private static void tallies(List<Map<String, Object>> rows, Entry entry, JobState state) {
    if (entry.fact() instanceof Fact.WireCut cut) {
      state.piles().of(cut.piece()).stages().stream()
          .findFirst()
          .map(first -> tally(entry, cut.piece(), first, "through", cut.count()))
          .ifPresent(row -> rows.add(more(row, "", "", false, cut.size())));
    }
    if (entry.fact() instanceof Fact.PiecesThrough through) {
      through
          .pieces()
          .forEach(
              (piece, count) ->
                  LinkSizes.of(piece, count, through.sizes())
                      .forEach(
                          (size, each) ->
                              rows.add(
                                  more(
                                      tally(entry, piece, through.stage(), "through", each),
                                      "",
                                      "",
                                      through.redo(),
                                      size))));
    }
    if (entry.fact() instanceof Fact.PiecesSentBack back) {
      rows.add(
          more(
              tally(entry, back.piece(), back.from(), "redo", back.count()),
              back.reason(),
              back.to().id(),
              back.redo(),
              back.size()));
    }
    if (entry.fact() instanceof Fact.PiecesScrapped gone) {
      rows.add(
          more(
              tally(entry, gone.piece(), gone.stage(), "scrap", gone.count()),
              gone.reason(),
              "",
              gone.redo(),
              gone.size()));
    }
  }

  private static Map<String, Object> tally(
      Entry entry, PieceKind piece, Stage stage, String what, int count) {
    Map<String, Object> row = row(entry);
    row.put("piece", piece.id());
    row.put("stage", stage.id());
    row.put("what", what);
    row.put("count", count);
    return row;
  }

  private static Map<String, Object> more(
      Map<String, Object> row, String reason, String backTo, boolean fromRedo, String size) {
    row.put("reason", reason);
    row.put("back_to", backTo);
    row.put("from_redo", fromRedo ? "yes" : "");
    row.put("size", size);
    return row;
  }

  private static void wire(List<Map<String, Object>> rows, Entry entry) {
    Fact fact = entry.fact();
    OptionalDouble none = OptionalDouble.empty();
    if (fact instanceof Fact.WireAdded came) {
      OptionalDouble length = OptionalDouble.of(came.lengthMm());
      Map<String, Object> row = moved(entry, "came", came.piece(), length, none, came.lot());
      row.put("wire_mm", came.wireMm());
      rows.add(row);
    }
    if (fact instanceof Fact.WireCut cut) {
      OptionalDouble length = OptionalDouble.of(cut.count() * cut.eachMm());
      rows.add(moved(entry, "cut", cut.piece(), length, none, ""));
    }
    if (fact instanceof Fact.WireDiscarded gone) {
      OptionalDouble length = OptionalDouble.of(gone.lengthMm());
      rows.add(moved(entry, "lost", gone.piece(), length, none, ""));
    }
    if (fact instanceof LotFact.StockTaken taken) {
      rows.add(moved(entry, "taken", taken.piece(), taken.lengthMm(), taken.massG(), taken.lot()));
    }
    if (fact instanceof LotFact.StockReturned back) {
      rows.add(moved(entry, "back", back.piece(), back.lengthMm(), back.massG(), back.lot()));
    }
  }

  private static Map<String, Object> moved(
      Entry entry,
      String what,
      PieceKind piece,
      OptionalDouble length,
      OptionalDouble mass,
      String lot) {
    Map<String, Object> row = row(entry);
    row.put("what", what);
    row.put("piece", piece.id());
    put(row, "length_mm", length);
    put(row, "mass_g", mass);
    row.put("lot", lot);
    return row;
  }

  private static void weighed(List<Map<String, Object>> rows, Entry entry) {
    Map<String, Object> row = row(entry);
    if (entry.fact() instanceof Fact.MetalWeighedOut out) {
      row.put("what", "out: " + out.what());
      row.put("mass_g", out.massG());
      rows.add(row);
    }
    if (entry.fact() instanceof Fact.WeighedIn in) {
      row.put("what", "in");
      put(row, "chain_g", in.chainG());
      put(row, "length_mm", in.lengthMm());
      put(row, "wire_returned_g", in.wireReturnedG());
      put(row, "clean_scrap_g", in.cleanScrapG());
      put(row, "soldered_scrap_g", in.solderedScrapG());
      put(row, "filings_g", in.filingsG());
      put(row, "sweeps_g", in.sweepsG());
      rows.add(row);
    }
  }
}
