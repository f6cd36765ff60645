package linkwright.coach.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.form.ShortageWords;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Turn;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.OnWay;
import linkwright.job.Pile;
import linkwright.plan.LinksOfSize;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepCounting;
import linkwright.routine.StepId;
import linkwright.standing.Standing;
import linkwright.standing.StillToDo;
import linkwright.standing.sizes.SizeAtBench;

/** Counting at the bench: pieces come through, blanks are cut, pieces are taken in hand. */
final class BenchCount {
  /** So many more or fewer are nobody's question. */
  private static final int FEW = 5;

  private BenchCount() {}

  /** So many come through; with nothing left to count, the next step opens. */
  static Turn through(Model model, AtBench at, int count) {
    Model shown = model.with(BenchScreens.plain(BenchPlace.screen(model)));
    if (BenchWait.chainIn(model, at).isPresent()) {
      return BenchWait.notYet(shown, at);
    }
    AtWait wait = AtWait.of(model, at);
    boolean out = at.together() && !wait.out().isEmpty();
    if (at.waitRunning(model).isPresent() && at.step().counts() != StepCounting.EACH && !out) {
      return BenchWait.notYet(shown, at);
    }
    if (at.together() && !out && wait.next().isPresent()) {
      // Whatever key takes them through: they have not been in yet.
      return BenchWait.start(shown, at);
    }
    if (at.step().counts() == StepCounting.NOTHING || at.piece().equals(PieceKind.NONE)) {
      return stepDone(shown, at);
    }
    if (at.begins()) {
      boolean typed = !BenchPlace.screen(model).digits().isEmpty();
      if (BenchPlace.screen(model).ask() instanceof BenchAsk.Sure sure
          && (!typed || count == sure.count())) {
        return cut(shown, at, sure.count());
      }
      Optional<String> doubt = typed ? outOfReason(model, at, count) : Optional.empty();
      if (doubt.isPresent()) {
        return Turn.to(
            shown
                .with(BenchScreens.asking(BenchPlace.screen(shown), new BenchAsk.Sure(count)))
                .trouble(doubt.get()));
      }
      return enoughAreCut(model, at) && !typed
          ? BenchGate.onward(shown.told(at.cuts() ? "Enough are cut." : "Enough are begun."), at)
          : cut(shown, at, count);
    }
    if (at.step().counts() == StepCounting.BATCH) {
      return batch(shown, at);
    }
    if (at.available() == 0 || spare(model, at)) {
      return BenchGate.onward(shown, at);
    }
    if (count > at.available()) {
      return Turn.to(shown.trouble(tooMany(at, count)));
    }
    List<Fact> facts = moved(model, at, count, at.fromRedo());
    return Turn.keep(Partners.counted(NextSize.told(shown, at, facts), at, count), facts);
  }

  private static String tooMany(AtBench at, int count) {
    int others = at.fromRedo() ? at.waiting() : at.redo();
    String other = at.fromRedo() ? "new" : "to be redone";
    return "Only "
        + at.available()
        + (at.fromRedo() ? " are in the redo pile" : " wait")
        + (others == 0
            ? "; " + count + " cannot come through. Type a smaller number."
            : ", besides "
                + others
                + " "
                + other
                + ": each pile goes by itself, {do:take} takes the other. Type a smaller number.");
  }

  /** The chain has all it takes and the key was only pressed: what waits is left over. */
  private static boolean spare(Model model, AtBench at) {
    return at.enough() && BenchPlace.screen(model).digits().isEmpty();
  }

  private static Turn stepDone(Model model, AtBench at) {
    JobState state = model.job().orElseThrow().state();
    boolean leaves = BenchBack.fromElsewhere(model, at);
    if (state.course().stepsDone().contains(at.step().id())
        && (leaves || !BenchHot.heats(at))
        && !at.heatedSince(state.course())) {
      return BenchGate.onward(model, at);
    }
    Optional<BenchAsk> untried = BenchPassing.untried(model, at);
    if (untried.isPresent()) {
      return Turn.to(model.with(BenchScreens.asking(BenchPlace.screen(model), untried.get())));
    }
    List<Effect> effects = new ArrayList<>();
    List<Fact> facts = new ArrayList<>(BenchWait.answered(model, at));
    facts.add(new Fact.StepDone(at.step().id()));
    if (leaves) {
      // It is on the disk before another book is opened.
      return Turn.keep(model, facts);
    }
    Turn onward = BenchGate.onward(model, at);
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

  /** More than the wire on hand gives, or than twice what lacks: asked before it is entered. */
  private static Optional<String> outOfReason(Model model, AtBench at, int count) {
    Standing standing = model.job().orElseThrow().standing();
    if (at.left(model.job().orElseThrow()).isEmpty()) {
      return Optional.empty();
    }
    StillToDo left = at.left(model.job().orElseThrow()).get();
    int toCut = left.toCutOrAsMany();
    boolean wire = standing.wireKnown() && count > left.canCut();
    if (!wire && count <= 2 * Math.max(toCut, FEW)) {
      return Optional.empty();
    }
    String why = wire ? "the wire on hand gives " + left.canCut() : toCut + " are still to cut";
    return Optional.of(
        count
            + "? "
            + why.substring(0, 1).toUpperCase(Locale.ROOT)
            + why.substring(1)
            + ". {do:cut-one} again if it is right, or type another number.");
  }

  private static Turn cut(Model model, AtBench at, int count) {
    OpenJob job = model.job().orElseThrow();
    Standing standing = job.standing();
    Fact cut = new Fact.WireCut(at.piece(), count, eachMm(standing, at), at.size());
    String missing =
        ShortageWords.after(
            standing,
            job.standingWith(cut, model.now(), model.handbook()),
            at.piece(),
            at.size(),
            count);
    return Turn.keep(
        missing.isEmpty() ? NextSize.told(model, at, List.of(cut)) : model.trouble(missing), cut);
  }

  /** Wire that one of what is counted takes, kerf included, mm. */
  static double eachMm(Standing standing, AtBench at) {
    return standing.takesMm(at.piece(), at.size());
  }

  /** The link that is counted, where the chain has several sizes. */
  static Optional<LinksOfSize> sizeOf(Standing standing, AtBench at) {
    return standing.counted().plan().stream()
        .flatMap(plan -> plan.sizes().stream())
        .filter(size -> !at.size().isEmpty() && size.name().equals(at.size()))
        .findFirst();
  }

  /** Whether no further blank is needed; a number typed cuts more all the same. */
  static boolean enoughAreCut(Model model, AtBench at) {
    Optional<StillToDo> known = at.left(model.job().orElseThrow());
    if (known.isEmpty() || at.pile().atOrPast(at.stage()) == 0) {
      return false;
    }
    StillToDo left = known.get();
    return left.toCut().isPresent()
        ? left.toCut().getAsInt() == 0
        : left.good() + left.inWork() >= left.wanted();
  }

  /** What its wait let go comes through, and no more. */
  private static Turn batch(Model model, AtBench at) {
    AtWait wait = AtWait.of(model, at);
    Map<OnWay, Integer> out = wait.out();
    if (out.isEmpty()) {
      return BenchGate.onward(model, at);
    }
    List<Fact> facts = new ArrayList<>(BenchWait.answered(model, at));
    facts.removeIf(
        fact ->
            at.looked()
                && fact instanceof Fact.TimerAnswered answered
                && wait.staysIn(answered.timer()));
    StepId step = at.step().id();
    for (boolean redo : List.of(true, false)) {
      Map<Stage, Map<PieceKind, Integer>> going = new LinkedHashMap<>();
      Map<Stage, Map<String, Integer>> sizes = new LinkedHashMap<>();
      out.forEach(
          (way, count) -> {
            if (way.redo() == redo) {
              add(going, way.to(), way.piece(), count);
              if (!way.size().isEmpty()) {
                add(sizes, way.to(), way.size(), count);
              }
            }
          });
      going.forEach(
          (stage, pieces) ->
              facts.add(
                  new Fact.PiecesThrough(
                      pieces, stage, redo, step, sizes.getOrDefault(stage, Map.of()))));
    }
    return Turn.keep(model, facts);
  }

  /** The counted kind moves; one of each other kind of the step goes with each, if it waits. */
  private static List<Fact> moved(Model model, AtBench at, int count, boolean redo) {
    Map<Stage, Map<PieceKind, Integer>> fresh = new LinkedHashMap<>();
    if (!redo) {
      add(fresh, at.stage(), at.piece(), count);
    }
    along(model, at, count)
        .forEach((piece, going) -> add(fresh, at.step().stage().get(piece), piece, going));
    List<Fact> facts = new ArrayList<>();
    StepId step = at.step().id();
    if (redo) {
      Map<String, Integer> sizes = at.size().isEmpty() ? Map.of() : Map.of(at.size(), count);
      facts.add(new Fact.PiecesThrough(Map.of(at.piece(), count), at.stage(), true, step, sizes));
    }
    fresh.forEach(
        (stage, pieces) ->
            facts.add(
                new Fact.PiecesThrough(
                    pieces, stage, false, step, sizes(model, at, stage, pieces))));
    return facts;
  }

  /** Of which sizes the links are that go on: the one that is counted, else as in the chain. */
  private static Map<String, Integer> sizes(
      Model model, AtBench at, Stage stage, Map<PieceKind, Integer> pieces) {
    int links = pieces.getOrDefault(PieceKind.LINK, 0);
    return links == 0
        ? Map.of()
        : at.size().isEmpty()
            ? SizeAtBench.inOrder(
                model.job().orElseThrow().state(),
                model.job().orElseThrow().standing(),
                stage,
                links)
            : Map.of(at.size(), links);
  }

  /** Pieces of other kinds than the counted one that go through together here. */
  static Map<PieceKind, Integer> alongAtBatch(Model model, AtBench at) {
    boolean batch = at.step().counts() == StepCounting.BATCH && !at.begins();
    return batch ? along(model, at, 0) : Map.of();
  }

  private static <K> void add(Map<Stage, Map<K, Integer>> byStage, Stage stage, K what, int count) {
    byStage.computeIfAbsent(stage, any -> new LinkedHashMap<>()).merge(what, count, Integer::sum);
  }

  private static Map<PieceKind, Integer> along(Model model, AtBench at, int count) {
    JobState state = model.job().orElseThrow().state();
    Map<PieceKind, Integer> along = new LinkedHashMap<>();
    at.step()
        .stage()
        .forEach(
            (piece, stage) -> {
              Pile pile = state.piles().of(piece);
              boolean batch = at.step().counts() == StepCounting.BATCH;
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
        shown,
        new Fact.PiecesTaken(
            Map.of(at.piece(), Math.min(count, there)), at.stage(), redo, at.size()));
  }

  private static List<String> sizes(Model model, AtBench at) {
    return SizeAtBench.choices(
        model.job().orElseThrow().state(),
        model.job().orElseThrow().standing(),
        at.piece(),
        at.stage());
  }

  /** Whether links of another size than the one that is counted can be counted here. */
  static boolean canTakeOtherSize(Model model, AtBench at) {
    return !at.together() && sizes(model, at).stream().anyMatch(size -> !size.equals(at.size()));
  }

  /** The next size of link of those that can be counted here. */
  static Turn otherSize(Model model, AtBench at) {
    List<String> sizes = sizes(model, at);
    String next = sizes.get((sizes.indexOf(at.size()) + 1) % sizes.size());
    Pile pile = model.job().orElseThrow().state().piles().of(at.piece(), next);
    boolean redo = pile.waitingFor(at.stage()) == 0 && pile.redoAt(at.stage()) > 0;
    return Turn.keep(
        model.with(BenchScreens.plain(BenchPlace.screen(model))),
        new Fact.PiecesTaken(Map.of(at.piece(), 1), at.stage(), redo, next));
  }
}
