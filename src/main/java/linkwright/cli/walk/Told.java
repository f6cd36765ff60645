package linkwright.cli.walk;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import linkwright.coach.bench.Bench;
import linkwright.coach.bench.BenchAsk;
import linkwright.coach.bench.BenchHeld;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.EntryWords;
import linkwright.coach.kernel.Model;
import linkwright.coach.testpieces.TestsHeld;
import linkwright.coach.trial.TrialHeld;
import linkwright.coach.weigh.WeighHeld;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.routine.Caution;
import linkwright.routine.Remedy;

/**
 * Tells what changed since it told last; entries only from the book, so only once they are kept.
 */
final class Told {
  /** What is in front of the user; told whole when it becomes another. */
  private record Scene(String place, boolean away, String card, String ask, String step) {
    /** Whether nothing but a question lay between this and the other. */
    boolean asked(Scene after) {
      return !ask.equals(NOTHING)
          && after.ask.equals(NOTHING)
          && equals(new Scene(after.place, after.away, after.card, ask, after.step));
    }
  }

  private static final String NOTHING = new BenchAsk.Nothing().toString();

  private final Desk desk;
  private final Hands hands;
  private final Set<String> readWhole = new HashSet<>();
  private Optional<Scene> scene = Optional.empty();
  private Optional<Remedy> remedy = Optional.empty();
  private int entries;

  Told(Desk desk, Hands hands) {
    this.desk = desk;
    this.hands = hands;
    this.entries = known(hands.model()).size();
  }

  private static List<Entry> known(Model model) {
    return model.job().map(job -> job.entries()).orElse(List.of());
  }

  /** Tells all that is new. */
  void tell() {
    Model model = hands.model();
    desk.sayAll(hands.takeTold());
    List<Entry> all = known(model);
    List<Entry> more = all.subList(Math.min(entries, all.size()), all.size());
    more.forEach(entry -> words(entry, model).ifPresent(desk::say));
    entries = all.size();
    tellRemedy(model);
    Scene now = scene(model);
    boolean changed = scene.filter(now::equals).isEmpty();
    boolean onlyAnswered = changed && scene.filter(before -> before.asked(now)).isPresent();
    scene = Optional.of(now);
    if (changed && !onlyAnswered) {
      desk.sayAll(whole(model));
    } else if (onlyAnswered || !more.isEmpty()) {
      desk.sayAll(again(model));
    }
  }

  /** Tells once more all that is in front of the user. */
  void repeat() {
    desk.sayAll(hands.takeTold());
    desk.sayAll(whole(hands.model()));
  }

  private static Optional<String> words(Entry entry, Model model) {
    Fact fact = entry.fact();
    if (fact instanceof Fact.StepOpened
        || fact instanceof Fact.CautionSeen
        || fact instanceof Fact.SittingStarted
        || fact instanceof Fact.JobOpened
        || fact instanceof Fact.PlanSet
        || fact instanceof Fact.Struck) {
      return Optional.empty();
    }
    if (fact instanceof Fact.StepDone) {
      return Optional.of("Entered: step done.");
    }
    return Optional.of("Entered: " + EntryWords.of(fact, model.settings()) + ".");
  }

  private void tellRemedy(Model model) {
    Optional<Remedy> shown =
        model.held() instanceof BenchHeld bench ? bench.remedy() : Optional.empty();
    if (!shown.equals(remedy)) {
      shown.ifPresent(now -> desk.sayAll(StepLines.remedy(model, now)));
    }
    remedy = shown;
  }

  private static Scene scene(Model model) {
    String place = model.held().getClass().getSimpleName();
    if (!(model.held() instanceof BenchHeld bench)) {
      return new Scene(place, false, "", "", "");
    }
    return new Scene(
        place,
        Bench.away(model),
        Bench.caution(model).map(Caution::id).orElse(""),
        bench.ask().toString(),
        Bench.target(model).map(at -> at.step().id()).orElse(""));
  }

  private List<String> whole(Model model) {
    if (model.job().isEmpty()) {
      return List.of();
    }
    if (model.held() instanceof BenchHeld bench) {
      return bench(model, bench);
    }
    if (model.held() instanceof TestsHeld) {
      return PlaceLines.tests(model);
    }
    if (model.held() instanceof TrialHeld trial) {
      return PlaceLines.trial(model, trial);
    }
    if (model.held() instanceof WeighHeld) {
      return WeighLines.of(model);
    }
    return model.held().form().isPresent() ? List.of() : PlaceLines.where(model);
  }

  private List<String> bench(Model model, BenchHeld bench) {
    Optional<AtBench> target = Bench.target(model);
    if (target.isEmpty()) {
      return List.of("The routine of this job is not among the files at hand.");
    }
    AtBench at = target.get();
    if (Bench.away(model)) {
      return List.of(
          "Away from the bench: the hours stand still, timers go on. An empty line: back.");
    }
    Optional<Caution> card = Bench.caution(model);
    if (card.isPresent()) {
      readWhole.add(card.get().id());
      return StepLines.card(model, card.get(), at.step().title());
    }
    if (bench.ask() instanceof BenchAsk.Why why) {
      return StepLines.why(model, at, why);
    }
    List<String> step = StepLines.of(model, at, Set.copyOf(readWhole));
    readWhole.clear();
    return step;
  }

  /** After an entry at the same place: the counts, not the whole step again. */
  private List<String> again(Model model) {
    if (model.held() instanceof BenchHeld) {
      List<String> lines = new ArrayList<>();
      Bench.target(model).ifPresent(at -> lines.addAll(StepLines.counts(model, at)));
      return lines;
    }
    return whole(model);
  }
}
