package linkwright.coach.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.ShortageWords;
import linkwright.coach.kernel.Turn;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.Pile;
import linkwright.routine.Counts;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import linkwright.standing.Standing;
import linkwright.standing.StillToDo;

/** Counting at the bench: pieces come through, blanks are cut, pieces are taken in hand. */
final class BenchCount {
  private BenchCount() {}

  /** So many come through; with nothing left to count, the next step opens. */
  static Turn through(Model model, AtBench at, int count) {
    Model shown = model.with(BenchScreens.plain(BenchPlace.screen(model)));
    if (at.waitRunning(model).isPresent() && at.step().counts() != Counts.EACH) {
      return BenchWait.notYet(shown, at);
    }
    if (at.step().counts() == Counts.NOTHING || at.piece().equals(PieceKind.NONE)) {
      return stepDone(shown, at);
    }
    if (at.begins()) {
      boolean typed = !BenchPlace.screen(model).digits().isEmpty();
      return enoughAreCut(model, at) && !typed
          ? BenchGate.onward(shown.told(at.cuts() ? "Enough are cut." : "Enough are begun."), at)
          : cut(shown, at, count);
    }
    if (at.step().counts() == Counts.BATCH) {
      return batch(shown, at);
    }
    if (at.available() == 0 || spare(model, at)) {
      return BenchGate.onward(shown, at);
    }
    if (count > at.available()) {
      return Turn.to(
          shown.trouble(
              "Only "
                  + at.available()
                  + (at.fromRedo() ? " are in the redo pile" : " wait")
                  + "; "
                  + count
                  + " cannot come through. Type a smaller number."));
    }
    return Turn.keep(shown, moved(model, at, count, at.fromRedo()));
  }

  /** The chain has all it takes and the key was only pressed: what waits is left over. */
  private static boolean spare(Model model, AtBench at) {
    return at.enough() && !at.fromRedo() && BenchPlace.screen(model).digits().isEmpty();
  }

  private static Turn stepDone(Model model, AtBench at) {
    JobState state = model.job().orElseThrow().state();
    if (state.course().stepsDone().contains(at.step().id())) {
      return BenchGate.onward(model, at);
    }
    Optional<BenchAsk> untried = BenchPassing.untried(model, at);
    if (untried.isPresent()) {
      return Turn.to(model.with(BenchScreens.asking(BenchPlace.screen(model), untried.get())));
    }
    Turn onward = BenchGate.onward(model, at);
    List<Effect> effects = new ArrayList<>();
    List<Fact> facts = new ArrayList<>(BenchWait.over(model, at));
    facts.add(new Fact.StepDone(at.step().id()));
    for (Effect effect : onward.effects()) {
      if (effect instanceof Effect.KeepFacts keep) {
        facts.addAll(keep.facts());
      } else {
        effects.add(effect);
      }
    }
    Turn kept = Turn.keep(onward.model(), facts);
    effects.addAll(0, kept.effects());
    return new Turn(kept.model(), effects, Optional.empty());
  }

  private static Turn cut(Model model, AtBench at, int count) {
    OpenJob job = model.job().orElseThrow();
    Standing standing = job.standing();
    double each = standing.eachMm().getOrDefault(at.piece(), 0.0);
    Fact cut = new Fact.WireCut(at.piece(), count, each);
    String missing =
        ShortageWords.after(
            standing, job.standingWith(cut, model.now(), model.handbook()), at.piece(), count);
    return Turn.keep(missing.isEmpty() ? model : model.trouble(missing), cut);
  }

  /** Whether no further blank is needed; a number typed cuts more all the same. */
  static boolean enoughAreCut(Model model, AtBench at) {
    StillToDo left = model.job().orElseThrow().standing().left().get(at.piece());
    if (left == null || at.through() == 0) {
      return false;
    }
    return left.toCut().isPresent()
        ? left.toCut().getAsInt() == 0
        : left.good() + left.inWork() >= left.wanted();
  }

  private static Turn batch(Model model, AtBench at) {
    if (at.waiting() + at.redo() == 0) {
      Map<PieceKind, Integer> along = alongAtBatch(model, at);
      if (along.isEmpty()) {
        return BenchGate.onward(model, at);
      }
      List<Fact> others = new ArrayList<>(BenchWait.over(model, at));
      Map<Stage, Map<PieceKind, Integer>> byStage = new LinkedHashMap<>();
      along.forEach((piece, going) -> put(byStage, at.step().stage().get(piece), piece, going));
      byStage.forEach(
          (stage, pieces) ->
              others.add(new Fact.PiecesThrough(pieces, stage, false, at.step().id())));
      return Turn.keep(model, others);
    }
    List<Fact> facts = new ArrayList<>(BenchWait.over(model, at));
    if (at.waiting() > 0) {
      facts.addAll(moved(model, at, at.waiting(), false));
    }
    if (at.redo() > 0) {
      facts.addAll(moved(model, at, at.redo(), true));
    }
    return Turn.keep(model, facts);
  }

  /** The counted kind moves; one of each other kind of the step goes with each, if it waits. */
  private static List<Fact> moved(Model model, AtBench at, int count, boolean redo) {
    Map<Stage, Map<PieceKind, Integer>> fresh = new LinkedHashMap<>();
    if (!redo) {
      put(fresh, at.stage(), at.piece(), count);
    }
    boolean wentBefore = at.step().counts() == Counts.BATCH && redo && at.waiting() > 0;
    if (!wentBefore) {
      along(model, at, count)
          .forEach((piece, going) -> put(fresh, at.step().stage().get(piece), piece, going));
    }
    List<Fact> facts = new ArrayList<>();
    StepId step = at.step().id();
    if (redo) {
      facts.add(new Fact.PiecesThrough(Map.of(at.piece(), count), at.stage(), true, step));
    }
    fresh.forEach((stage, pieces) -> facts.add(new Fact.PiecesThrough(pieces, stage, false, step)));
    return facts;
  }

  /** Pieces of other kinds than the counted one that go through together here. */
  static Map<PieceKind, Integer> alongAtBatch(Model model, AtBench at) {
    boolean batch = at.step().counts() == Counts.BATCH && !at.begins();
    return batch ? along(model, at, 0) : Map.of();
  }

  private static void put(
      Map<Stage, Map<PieceKind, Integer>> byStage, Stage stage, PieceKind piece, int count) {
    byStage.computeIfAbsent(stage, any -> new LinkedHashMap<>()).put(piece, count);
  }

  private static Map<PieceKind, Integer> along(Model model, AtBench at, int count) {
    JobState state = model.job().orElseThrow().state();
    Map<PieceKind, Integer> along = new LinkedHashMap<>();
    at.step()
        .stage()
        .forEach(
            (piece, stage) -> {
              Pile pile = state.piles().of(piece);
              boolean batch = at.step().counts() == Counts.BATCH;
              int going = batch ? pile.waitingFor(stage) : alongWith(model, at, count, piece);
              if (!piece.equals(at.piece()) && going > 0 && !pile.begins(stage)) {
                along.put(piece, going);
              }
            });
    return along;
  }

  /**
   * Pieces of another kind that go along with so many counted ones: one with each, as long as they
   * wait and the chain takes them. One that was done again took its own along the first time.
   */
  private static int alongWith(Model model, AtBench at, int count, PieceKind piece) {
    OpenJob job = model.job().orElseThrow();
    Pile pile = job.state().piles().of(piece);
    Stage stage = at.step().stage().get(piece);
    StillToDo left = job.standing().left().get(piece);
    int wanted = left == null ? Integer.MAX_VALUE : left.wanted();
    int room = Math.min(wanted, at.through() + count) - pile.atOrPast(stage);
    return Math.max(0, Math.min(room, pile.waitingFor(stage)));
  }

  /** Takes from the other pile: redo pieces after new ones, new ones after redo pieces. */
  static Turn take(Model model, AtBench at, int count) {
    boolean redo = !at.fromRedo();
    int there = redo ? at.redo() : at.waiting();
    if (there == 0) {
      return redo ? BenchGate.toRedo(model, at) : Turn.to(model.told("No new piece waits here."));
    }
    Model shown = model.with(BenchScreens.plain(BenchPlace.screen(model)));
    return Turn.keep(
        shown, new Fact.PiecesTaken(Map.of(at.piece(), Math.min(count, there)), at.stage(), redo));
  }
}
