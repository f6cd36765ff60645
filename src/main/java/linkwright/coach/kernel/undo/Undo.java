package linkwright.coach.kernel.undo;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import linkwright.coach.kernel.EntryWords;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Turn;
import linkwright.job.BenchFact;
import linkwright.job.Entry;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.job.Strikes;
import linkwright.job.TimeSheet;
import linkwright.job.Trials;
import linkwright.routine.StepId;

/**
 * Takes back the last acts of this sitting on this machine, at the place that is shown, one by one,
 * and brings them back. Entries of one act carry one time. Nothing is erased: a strike is an entry.
 */
public final class Undo {
  private final Model model;
  private final OpenJob job;
  private final PlaceId here;
  private final Strikes strikes;

  private Undo(Model model, PlaceId here) {
    this.model = model;
    this.job = model.job().orElseThrow();
    this.here = here;
    this.strikes = Strikes.in(job.entries());
  }

  /** Strikes what the last act at this place entered, and names it. */
  public static Turn last(Model model) {
    if (model.job().isEmpty()) {
      return Turn.to(model.trouble("Nothing to undo: no job is open."));
    }
    if (model.job().get().lookOnly()) {
      return Turn.onlyLooking(model);
    }
    return at(model).map(Undo::strike).orElseGet(() -> nothing(model));
  }

  /** Brings back what undo took last at this place, unless something was entered there since. */
  public static Turn bringBack(Model model) {
    if (model.job().isEmpty()) {
      return Turn.to(model.trouble("Nothing to bring back: no job is open."));
    }
    if (model.job().get().lookOnly()) {
      return Turn.onlyLooking(model);
    }
    return at(model)
        .map(Undo::unstrike)
        .orElseGet(() -> Turn.to(model.told("Nothing was undone here.")));
  }

  /** What strikes what was counted last at the bench; what failed of it stays entered. */
  public static List<Fact> lastAtBench(Model model) {
    return lastAtBench(model, 1);
  }

  /** The same of so many acts, the last ones. */
  public static List<Fact> lastAtBench(Model model, int acts) {
    return new Undo(model, PlaceId.BENCH)
        .allHere().stream()
            .limit(acts)
            .flatMap(List::stream)
            .filter(entry -> !isFailed(entry))
            .map(entry -> (Fact) new Fact.Struck(entry.id(), Strikes.UNDONE))
            .toList();
  }

  /** What came through last, if that was the last act at the bench. */
  public static Optional<Fact.PiecesThrough> lastThrough(Model model) {
    return new Undo(model, PlaceId.BENCH)
        .lastHere()
        .flatMap(act -> first(act, Fact.PiecesThrough.class));
  }

  /** What came through act by act, the last first, until something else was entered. */
  public static List<Fact.PiecesThrough> throughInARow(Model model) {
    List<Fact.PiecesThrough> row = new ArrayList<>();
    for (List<Entry> act : new Undo(model, PlaceId.BENCH).allHere()) {
      Optional<Fact.PiecesThrough> next = first(act, Fact.PiecesThrough.class);
      if (next.isEmpty()
          || (!row.isEmpty() && (act.size() > 1 || !alike(row.get(0), next.get())))) {
        break;
      }
      row.add(next.get());
    }
    return row;
  }

  private static boolean alike(Fact.PiecesThrough one, Fact.PiecesThrough other) {
    return one.step().equals(other.step())
        && one.stage().equals(other.stage())
        && one.redo() == other.redo()
        && one.pieces().keySet().equals(other.pieces().keySet())
        && one.sizes().keySet().equals(other.sizes().keySet());
  }

  /** What was cut last, if nothing but scrap of it was entered at the bench since. */
  public static Optional<Fact.WireCut> lastCut(Model model) {
    return new Undo(model, PlaceId.BENCH)
        .allHere().stream()
            .dropWhile(Undo::isScrap)
            .findFirst()
            .flatMap(act -> first(act, Fact.WireCut.class));
  }

  /** What was scrapped by itself since anything else was entered at the bench. */
  public static int scrappedSince(Model model) {
    return new Undo(model, PlaceId.BENCH)
        .allHere().stream()
            .takeWhile(Undo::isScrap)
            .flatMap(List::stream)
            .mapToInt(entry -> ((Fact.PiecesScrapped) entry.fact()).count())
            .sum();
  }

  private static <F extends Fact> Optional<F> first(List<Entry> act, Class<F> kind) {
    return act.stream().map(Entry::fact).filter(kind::isInstance).map(kind::cast).findFirst();
  }

  private static boolean isScrap(List<Entry> act) {
    return act.stream().allMatch(entry -> entry.fact() instanceof Fact.PiecesScrapped);
  }

  private static boolean isFailed(Entry entry) {
    return entry.fact() instanceof Fact.PiecesScrapped
        || entry.fact() instanceof Fact.PiecesSentBack;
  }

  private static List<Fact> undone(List<Entry> live) {
    return strikes(live, Strikes.UNDONE);
  }

  private static Optional<Undo> at(Model model) {
    PlaceId here = model.held().place();
    return EntryWords.anythingTakenBackAt(here)
        ? Optional.of(new Undo(model, here))
        : Optional.empty();
  }

  private Turn strike() {
    Optional<Entry> beyond = here == PlaceId.BENCH ? beyond(model, strikes) : Optional.empty();
    Optional<EntryId> last = beyond.map(Entry::id);
    if (beyond.isPresent() && !model.bench().mind().refused().equals(last)) {
      return Turn.to(model.refused(last).told(notReached(model, beyond.get())));
    }
    Optional<List<Entry>> act = lastHere();
    if (act.isEmpty() || (beyond.isPresent() && !isOfOpenStep(act.get()))) {
      return nothing(model);
    }
    Optional<String> held = act.get().stream().flatMap(entry -> heldBy(entry).stream()).findFirst();
    return held.map(why -> Turn.to(model.trouble(why))).orElseGet(() -> strike(act.get()));
  }

  /** Past hot work and a wait that runs, only what was entered at the step that is open now. */
  private boolean isOfOpenStep(List<Entry> act) {
    StepId step = StepId.NONE;
    for (Entry entry : job.entries()) {
      if (entry.fact() instanceof Fact.StepOpened opened && !strikes.has(entry)) {
        step = opened.step();
      }
      if (entry.equals(act.get(0))) {
        break;
      }
    }
    return step.equals(job.state().course().step());
  }

  /** What still counts of the last act that was entered at this place and no other. */
  private Optional<List<Entry>> lastHere() {
    return allHere().stream().findFirst();
  }

  /** The same of all acts, the last before the rest. */
  private List<List<Entry>> allHere() {
    return acts(job, model.now()).stream()
        .map(this::live)
        .filter(live -> !live.isEmpty())
        .filter(live -> live.stream().allMatch(entry -> places(entry).contains(here)))
        .toList();
  }

  private Turn strike(List<Entry> live) {
    List<Fact> facts = undone(live);
    for (Entry entry : live) {
      if (entry.fact() instanceof Fact.StepDone done
          && !job.state().course().step().equals(done.step())) {
        // Done and on to the next step was one press: taken back, its own step is open again.
        facts.add(new Fact.StepOpened(done.step()));
      }
    }
    return Turn.keep(
        model.told("Undone: " + words(live) + " (" + "{do:bring-back} brings it back)."), facts);
  }

  private Turn unstrike() {
    Map<EntryId, Entry> byId = new HashMap<>();
    job.entries().forEach(entry -> byId.put(entry.id(), entry));
    boolean since = false;
    for (List<Entry> act : acts(job, model.now())) {
      List<Entry> undone = new ArrayList<>(opened(act));
      List<Entry> targets = new ArrayList<>();
      for (Entry entry : act) {
        if (entry.fact() instanceof Fact.Struck strike
            && strike.why().equals(Strikes.UNDONE)
            && !strikes.has(entry)
            && byId.containsKey(strike.entry())) {
          undone.add(entry);
          targets.add(byId.get(strike.entry()));
        }
      }
      List<Entry> named = targets.stream().filter(entry -> !places(entry).isEmpty()).toList();
      if (!named.isEmpty() && named.stream().allMatch(entry -> places(entry).contains(here))) {
        return since
            ? Turn.to(
                model.told(
                    "Something was entered here since: the book ({do:to-book}) brings it back."))
            : Turn.keep(
                model.told("Brought back: " + words(named) + "."),
                strikes(undone, Strikes.BROUGHT_BACK));
      }
      since |= live(act).stream().anyMatch(entry -> places(entry).contains(here));
    }
    return Turn.to(model.told("Nothing was undone here in this sitting."));
  }

  /** The step that an undo opened again; nothing of any other act. */
  private List<Entry> opened(List<Entry> act) {
    return act.stream()
        .filter(entry -> entry.fact() instanceof Fact.StepOpened && !strikes.has(entry))
        .toList();
  }

  private static List<Fact> strikes(List<Entry> entries, String why) {
    List<Fact> facts = new ArrayList<>();
    entries.forEach(entry -> facts.add(new Fact.Struck(entry.id(), why)));
    return facts;
  }

  private List<Entry> live(List<Entry> act) {
    return act.stream().filter(entry -> !strikes.has(entry) && !places(entry).isEmpty()).toList();
  }

  private static Set<PlaceId> places(Entry entry) {
    return Strikes.isOfUndo(entry.fact()) ? Set.of() : EntryWords.takenBackAt(entry.fact());
  }

  /** Why it cannot be taken back: what was chosen since hangs on it. */
  private Optional<String> heldBy(Entry entry) {
    Trials trials = job.state().trials();
    if (trials.isSample(entry.id())) {
      return Optional.of(
          "The last test piece is the sample link, which undo does not reach: make another one the"
              + " sample link, or strike it in the book ({do:to-book}).");
    }
    if (trials.chosenLength().filter(entry.id()::equals).isPresent()) {
      return Optional.of(
          "The chain follows the last trial length, which undo does not reach: let it follow"
              + " another, or strike it in the book ({do:to-book}).");
    }
    return Optional.empty();
  }

  /** Nothing here; what was entered last elsewhere is taken back there. */
  private static Turn nothing(Model model) {
    OpenJob job = model.job().orElseThrow();
    if (job.state().course().closed()) {
      return Turn.to(
          model.told(
              "This job is closed: nothing is undone in it. It is opened again where it was"
                  + " weighed in ({do:to-weigh-in}, there {do:reopen})."));
    }
    Strikes strikes = Strikes.in(job.entries());
    Optional<Entry> beyond = beyond(model, strikes);
    if (beyond.isPresent()) {
      return Turn.to(model.told(notReached(model, beyond.get())));
    }
    return acts(job, model.now()).stream()
        .flatMap(List::stream)
        .filter(entry -> !strikes.has(entry) && !places(entry).isEmpty())
        .filter(entry -> !places(entry).contains(model.held().place()))
        .findFirst()
        .map(
            entry ->
                "Nothing to undo here. Last entered elsewhere, and undone there ("
                    + places(entry).iterator().next().act().words()
                    + "): "
                    + EntryWords.quoted(entry.fact(), model)
                    + ".")
        .map(sentence -> Turn.to(model.told(sentence)))
        .orElseGet(
            () ->
                Turn.to(
                    model.told(
                        "Nothing of this sitting to undo here. The book ({do:to-book}) strikes any"
                            + " entry.")));
  }

  private static String notReached(Model model, Entry entry) {
    String last = EntryWords.quoted(entry.fact(), model);
    return entry.fact() instanceof Fact.TimerStarted
        ? "Undo strikes no wait. Last: "
            + last
            + (model.held().place() == PlaceId.TIMERS
                ? ". It is ended here ({do:stop-timer}), begun by mistake too."
                : ". It is ended at the timers ({do:to-timers}), begun by mistake too.")
        : "Undo strikes nothing that was said of flames. Last: " + last + ".";
  }

  /** What was entered last in this sitting, where that is a wait that runs or a word of flames. */
  private static Optional<Entry> beyond(Model model, Strikes strikes) {
    return acts(model.job().orElseThrow(), model.now()).stream()
        .flatMap(List::stream)
        .filter(entry -> !strikes.has(entry))
        .filter(entry -> isBeyond(entry.fact()) || !places(entry).isEmpty())
        .findFirst()
        .filter(entry -> isBeyond(entry.fact()))
        .filter(
            entry ->
                !(entry.fact() instanceof Fact.TimerStarted)
                    || model.timers().running().stream()
                        .anyMatch(run -> run.id().equals(entry.id())));
  }

  private static boolean isBeyond(Fact fact) {
    return fact instanceof Fact.TimerStarted || fact instanceof BenchFact.HotWorkSaid;
  }

  private String words(List<Entry> entries) {
    return entries.stream()
        .map(entry -> EntryWords.quoted(entry.fact(), model))
        .collect(Collectors.joining("; "));
  }

  /** The acts of this sitting on this machine, the last first; a long silence ends a sitting. */
  private static List<List<Entry>> acts(OpenJob job, Instant now) {
    List<List<Entry>> acts = new ArrayList<>();
    Instant later = now;
    for (int i = job.entries().size() - 1; i >= 0; i--) {
      Entry entry = job.entries().get(i);
      if (!entry.device().equals(job.device())) {
        continue;
      }
      boolean silence =
          Duration.between(entry.at(), later).compareTo(TimeSheet.LONGEST_SILENCE) > 0;
      if (silence || endsSitting(entry.fact())) {
        break;
      }
      if (acts.isEmpty() || !entry.at().equals(later)) {
        acts.add(new ArrayList<>());
      }
      acts.get(acts.size() - 1).add(0, entry);
      later = entry.at();
    }
    return acts;
  }

  private static boolean endsSitting(Fact fact) {
    return fact instanceof Fact.SteppedAway
        || fact instanceof BenchFact.SittingEnded
        || fact instanceof Fact.JobClosed
        || fact instanceof Fact.JobReopened;
  }
}
