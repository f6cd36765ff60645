package linkwright.coach;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import linkwright.job.Entry;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.job.Strikes;
import linkwright.job.TimeSheet;
import linkwright.job.Trials;

/**
 * Takes back the last acts of this sitting on this machine, at the place that is shown, one by one,
 * and brings them back. Entries of one act carry one time. Nothing is erased: a strike is an entry.
 */
final class Undo {
  private final Model model;
  private final OpenJob job;
  private final EnteredAt here;
  private final Strikes strikes;

  private Undo(Model model, EnteredAt here) {
    this.model = model;
    this.job = model.job().orElseThrow();
    this.here = here;
    this.strikes = Strikes.in(job.entries());
  }

  /** Strikes what the last act at this place entered, and names it. */
  static Turn last(Model model) {
    if (model.job().isEmpty()) {
      return Turn.to(model.trouble("Nothing to undo: no job is open."));
    }
    if (model.job().get().lookOnly()) {
      return Turn.onlyLooking(model);
    }
    return at(model).map(Undo::strike).orElseGet(() -> nothing(model));
  }

  /** Brings back what undo took last at this place, unless something was entered there since. */
  static Turn bringBack(Model model) {
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

  /** While the bench asks or shows a caution, nothing behind it changes. */
  private static Optional<Undo> at(Model model) {
    boolean behind =
        model.screen() instanceof Screen.Bench bench
            && (Bench.away(model)
                || Bench.caution(model).isPresent()
                || !(bench.ask() instanceof BenchAsk.Nothing));
    return EnteredAt.shown(model.screen())
        .filter(place -> !behind)
        .map(place -> new Undo(model, place));
  }

  private Turn strike() {
    for (List<Entry> act : acts(job, model.now())) {
      List<Entry> live = live(act);
      if (!live.isEmpty() && live.stream().allMatch(entry -> places(entry).contains(here))) {
        Optional<String> held = live.stream().flatMap(entry -> heldBy(entry).stream()).findFirst();
        return held.map(why -> Turn.to(model.trouble(why))).orElseGet(() -> strike(live));
      }
    }
    return nothing(model);
  }

  private Turn strike(List<Entry> live) {
    List<Fact> facts = strikes(live, Strikes.UNDONE);
    for (Entry entry : live) {
      if (entry.fact() instanceof Fact.StepDone done
          && !job.state().course().step().equals(done.step())) {
        // Done and on to the next step was one press: taken back, its own step is open again.
        facts.add(new Fact.StepOpened(done.step()));
      }
    }
    return Turn.keep(
        model.told("Undone: " + words(live) + " (" + key(Act.BRING_BACK) + " brings it back)."),
        facts);
  }

  private Turn unstrike() {
    Map<EntryId, Entry> byId = new HashMap<>();
    job.entries().forEach(entry -> byId.put(entry.id(), entry));
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
        return Turn.keep(
            model.told("Brought back: " + words(named) + "."),
            strikes(undone, Strikes.BROUGHT_BACK));
      }
      if (live(act).stream().anyMatch(entry -> places(entry).contains(here))) {
        return Turn.to(
            model.told("Something was entered here since: the book (esc, then k) brings it back."));
      }
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

  private static Set<EnteredAt> places(Entry entry) {
    return EnteredAt.of(entry.fact());
  }

  /** Why it cannot be taken back: what was chosen since hangs on it. */
  private Optional<String> heldBy(Entry entry) {
    Trials trials = job.state().trials();
    if (trials.sample().filter(choice -> choice.piece().equals(entry.id())).isPresent()) {
      return Optional.of(
          "The last test piece is the sample link, which undo does not reach: make another one the"
              + " sample link, or strike it in the book (esc, then k).");
    }
    if (trials.chosenLength().filter(entry.id()::equals).isPresent()) {
      return Optional.of(
          "The chain follows the last trial length, which undo does not reach: let it follow"
              + " another, or strike it in the book (esc, then k).");
    }
    return Optional.empty();
  }

  /** Nothing here; what was entered last elsewhere is taken back there. */
  private static Turn nothing(Model model) {
    OpenJob job = model.job().orElseThrow();
    Strikes strikes = Strikes.in(job.entries());
    return acts(job, model.now()).stream()
        .flatMap(List::stream)
        .filter(entry -> !strikes.has(entry) && !places(entry).isEmpty())
        .filter(
            entry -> !EnteredAt.shown(model.screen()).map(places(entry)::contains).orElse(false))
        .findFirst()
        .map(
            entry ->
                "Nothing to undo here. Last entered elsewhere, and undone there ("
                    + places(entry).iterator().next().words()
                    + "): "
                    + EntryWords.of(entry.fact(), model.settings())
                    + ".")
        .map(sentence -> Turn.to(model.told(sentence)))
        .orElseGet(
            () ->
                Turn.to(
                    model.told(
                        "Nothing of this sitting to undo here. The book (esc, then k) strikes any"
                            + " entry.")));
  }

  private String words(List<Entry> entries) {
    return entries.stream()
        .map(entry -> EntryWords.of(entry.fact(), model.settings()))
        .collect(Collectors.joining("; "));
  }

  private String key(Act act) {
    return model.settings().keys().keysOf(act).stream().findFirst().orElse("the book");
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
        || fact instanceof Fact.JobClosed
        || fact instanceof Fact.JobReopened;
  }
}
