package linkwright.walker;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linkwright.job.Entry;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;

/**
 * Where every single piece is, told from the entries alone: a second way of counting, piece by
 * piece, beside the program's own piles.
 */
final class PieceLedger {
  /** One piece. */
  private static final class Piece {
    int stage;
    int redo = -1;
    boolean scrapped;
  }

  private final Map<PieceKind, List<Stage>> stages;
  private final Map<PieceKind, List<Piece>> pieces = new LinkedHashMap<>();
  private final Map<EntryId, Fact.TrialMeasured> trials = new HashMap<>();
  private final List<String> faults = new ArrayList<>();
  private boolean sampleIsFirst;

  private PieceLedger(Map<PieceKind, List<Stage>> stages) {
    this.stages = stages;
    stages.keySet().forEach(kind -> pieces.put(kind, new ArrayList<>()));
  }

  static PieceLedger of(List<Entry> entries, Map<PieceKind, List<Stage>> stages) {
    PieceLedger ledger = new PieceLedger(stages);
    Set<EntryId> struck = struck(entries);
    for (Entry entry : entries) {
      if (!struck.contains(entry.id())) {
        ledger.take(entry);
      }
    }
    return ledger;
  }

  /** A strike stands before what it strikes is read: from the last entry to the first. */
  static Set<EntryId> struck(List<Entry> entries) {
    Set<EntryId> struck = new HashSet<>();
    for (int i = entries.size() - 1; i >= 0; i--) {
      Entry entry = entries.get(i);
      if (entry.fact() instanceof Fact.Struck strike && !struck.contains(entry.id())) {
        struck.add(strike.entry());
      }
    }
    return struck;
  }

  private void take(Entry entry) {
    Fact fact = entry.fact();
    if (fact instanceof Fact.WireCut cut) {
      begin(cut.piece(), cut.count());
    } else if (fact instanceof Fact.PiecesThrough through) {
      through
          .pieces()
          .forEach((kind, count) -> through(kind, through.stage(), count, through.redo()));
    } else if (fact instanceof Fact.PiecesSentBack back) {
      sentBack(back);
    } else if (fact instanceof Fact.PiecesScrapped lost) {
      for (Piece piece : some(lost.piece(), lost.stage(), lost.count(), lost.redo())) {
        piece.scrapped = true;
      }
    } else if (fact instanceof Fact.SampleChosen sample) {
      sampled(sample.firstLink());
    } else if (fact instanceof Fact.TrialMeasured trial) {
      trials.put(entry.id(), trial);
    } else if (fact instanceof Fact.TrialChosen chosen && trials.containsKey(chosen.trial())) {
      hung(PieceKind.LINK, trials.get(chosen.trial()).links());
      hung(PieceKind.RING, trials.get(chosen.trial()).rings());
    }
  }

  private void begin(PieceKind kind, int count) {
    if (!stages.getOrDefault(kind, List.of()).isEmpty()) {
      for (int i = 0; i < count; i++) {
        pieces.get(kind).add(new Piece());
      }
    }
  }

  private void through(PieceKind kind, Stage stage, int count, boolean redo) {
    int at = stages.getOrDefault(kind, List.of()).indexOf(stage);
    if (at == 0 && !redo) {
      begin(kind, count);
      return;
    }
    for (Piece piece : some(kind, stage, count, redo)) {
      piece.redo = -1;
      piece.stage = at;
    }
  }

  private void sentBack(Fact.PiecesSentBack back) {
    List<Stage> order = stages.getOrDefault(back.piece(), List.of());
    int to = order.contains(back.to()) ? order.indexOf(back.to()) : order.indexOf(back.from());
    for (Piece piece : some(back.piece(), back.from(), back.count(), back.redo())) {
      piece.redo = to;
    }
  }

  /** So many of those that wait for a stage, or are to be done again there. */
  private List<Piece> some(PieceKind kind, Stage stage, int count, boolean redo) {
    int at = stages.getOrDefault(kind, List.of()).indexOf(stage);
    List<Piece> there =
        pieces.getOrDefault(kind, List.of()).stream()
            .filter(piece -> !piece.scrapped)
            .filter(piece -> redo ? piece.redo == at : piece.redo < 0 && piece.stage == at - 1)
            .filter(piece -> at >= 0)
            .toList();
    if (there.size() < count) {
      faults.add(count + " " + kind + "s at " + stage + ", where only " + there.size() + " are");
    }
    return there.subList(0, Math.min(count, there.size()));
  }

  private void sampled(boolean isFirst) {
    List<Stage> order = stages.getOrDefault(PieceKind.LINK, List.of());
    int joined = order.indexOf(Stage.JOINED);
    int at = joined > 0 ? joined - 1 : Math.max(0, order.size() - 2);
    if (order.isEmpty() || isFirst == sampleIsFirst) {
      sampleIsFirst = isFirst;
      return;
    }
    sampleIsFirst = isFirst;
    List<Piece> links = pieces.get(PieceKind.LINK);
    if (isFirst) {
      Piece sample = new Piece();
      sample.stage = at;
      links.add(sample);
    } else {
      links.stream()
          .filter(piece -> !piece.scrapped && piece.redo < 0 && piece.stage == at)
          .findFirst()
          .ifPresent(links::remove);
    }
  }

  private void hung(PieceKind kind, int count) {
    List<Stage> order = stages.getOrDefault(kind, List.of());
    int at = order.size() - 2;
    if (at < 0) {
      return;
    }
    List<Piece> all = pieces.get(kind);
    long lacks = count - all.stream().filter(piece -> alive(piece) && piece.stage >= at).count();
    for (int stage = at - 1; stage >= 0; stage--) {
      for (Piece piece : all) {
        if (lacks > 0 && alive(piece) && piece.stage == stage) {
          piece.stage = at;
          lacks--;
        }
      }
    }
    for (; lacks > 0; lacks--) {
      Piece made = new Piece();
      made.stage = at;
      all.add(made);
    }
  }

  private static boolean alive(Piece piece) {
    return !piece.scrapped && piece.redo < 0;
  }

  /** Moves of more pieces than there were; only strikes and merges may bring them about. */
  List<String> faults() {
    return faults;
  }

  int standing(PieceKind kind, Stage stage) {
    int at = stages.getOrDefault(kind, List.of()).indexOf(stage);
    return (int)
        pieces.getOrDefault(kind, List.of()).stream()
            .filter(piece -> alive(piece) && piece.stage == at)
            .count();
  }

  int redo(PieceKind kind, Stage stage) {
    int at = stages.getOrDefault(kind, List.of()).indexOf(stage);
    return (int)
        pieces.getOrDefault(kind, List.of()).stream()
            .filter(piece -> !piece.scrapped && piece.redo == at)
            .count();
  }

  int scrapped(PieceKind kind) {
    return (int) pieces.getOrDefault(kind, List.of()).stream().filter(p -> p.scrapped).count();
  }

  /** Pieces that are not scrapped and have a stage before them, those to be done again too. */
  int waiting() {
    int waiting = 0;
    for (Map.Entry<PieceKind, List<Piece>> each : pieces.entrySet()) {
      int last = stages.get(each.getKey()).size() - 1;
      waiting +=
          (int)
              each.getValue().stream()
                  .filter(piece -> !piece.scrapped && (piece.redo >= 0 || piece.stage < last))
                  .count();
    }
    return waiting;
  }
}
