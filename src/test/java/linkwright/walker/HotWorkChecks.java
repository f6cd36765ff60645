package linkwright.walker;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.PlaceId;
import linkwright.job.BenchFact;
import linkwright.job.Entry;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.job.HotWorkState;
import linkwright.job.TimerRun;
import linkwright.routine.Hazard;
import linkwright.routine.Routine;
import linkwright.routine.Step;
import linkwright.routine.StepCounting;
import linkwright.routine.StepId;

/**
 * What must hold of hot work, told from the entries of all books and from the real time: nothing is
 * heated before it is said to be lit, nobody leaves an open flame unasked, and the watch runs from
 * the last heat.
 */
final class HotWorkChecks {
  private static final Duration WATCH = Duration.ofHours(1);

  private Instant restartedAt = Instant.MIN;
  private Instant lastHeat = Instant.MIN;
  private boolean ended;

  /**
   * Whether something was heated since a flame was lit; if not, the watch is from the statement.
   */
  private boolean heatedSince;

  void restarted(Instant real) {
    restartedAt = real;
  }

  /** Whether anything burns by the words of those books; lit: a flame, else kiln or hotplate. */
  static boolean open(Collection<List<Entry>> books, HotWorkState what) {
    return books.stream().anyMatch(book -> lastWord(book, what) == what);
  }

  private static HotWorkState lastWord(List<Entry> book, HotWorkState what) {
    HotWorkState last = HotWorkState.NOT_KNOWN;
    for (Entry entry : book) {
      if (entry.fact() instanceof BenchFact.HotWorkSaid said
          && (said.state() == what || said.state() == HotWorkState.SHUT)) {
        last = said.state();
      }
    }
    return last;
  }

  /**
   * What is wrong with entries that were just made.
   *
   * @param before the book before them
   * @param others the other books
   * @param routine the job's routine
   * @param place where she was when the key was pressed
   * @param real the moment as it really is
   */
  List<String> check(
      List<Entry> before,
      List<Entry> more,
      Collection<List<Entry>> others,
      Optional<Routine> routine,
      PlaceId place,
      Instant real) {
    List<String> wrong = new ArrayList<>();
    List<Entry> book = new ArrayList<>(before);
    for (Entry entry : more) {
      List<List<Entry>> all = new ArrayList<>(others);
      all.add(book);
      boolean lit = open(all, HotWorkState.LIT);
      boolean asked = place == PlaceId.HOT_WORK;
      Fact fact = entry.fact();
      if (fact instanceof BenchFact.HotWorkSaid said) {
        if (said.state() == HotWorkState.SHUT && !asked) {
          wrong.add("every flame said to be out by nobody: " + entry);
        }
        if (said.state() == HotWorkState.LIT) {
          heatedSince = false;
        } else if (said.state() == HotWorkState.SHUT && lit && !heatedSince) {
          lastHeat = real;
          ended = false;
        }
      } else if ((fact instanceof Fact.SteppedAway || fact instanceof Fact.JobClosed)
          && lit
          && !asked) {
        wrong.add("left with a flame lit, and nobody asked: " + entry);
      } else if (fact instanceof BenchFact.WatchEnded) {
        ended = true;
      } else if (heats(book, entry, routine)) {
        if (!lit) {
          wrong.add("heated before it was lit: " + entry);
        }
        lastHeat = real;
        heatedSince = true;
        ended = false;
      }
      book.add(entry);
    }
    return wrong;
  }

  /** A count, or a wait begun, where gas burns; what comes out of its wait was heated before. */
  private static boolean heats(List<Entry> book, Entry entry, Optional<Routine> routine) {
    Optional<Step> step = routine.flatMap(walked -> workedAt(book, entry.fact(), walked));
    if (step.isEmpty() || !step.get().does().contains(Hazard.BURNS_GAS)) {
      return false;
    }
    boolean starts = entry.fact() instanceof Fact.TimerStarted;
    if (EntryChecks.takesOut(step.get(), entry.fact())) {
      return false;
    }
    return starts
        || step.get().counts() == StepCounting.EACH
        || !waited(book, step.get().id(), entry.at());
  }

  private static Optional<Step> workedAt(List<Entry> book, Fact fact, Routine routine) {
    if (fact instanceof Fact.PiecesThrough through) {
      return routine.step(through.step());
    }
    if (fact instanceof Fact.TimerStarted timer) {
      return routine.step(timer.step());
    }
    if (fact instanceof Fact.StepDone done) {
      return routine.step(done.step());
    }
    return fact instanceof Fact.WireCut ? EntryChecks.openStep(book, routine) : Optional.empty();
  }

  private static boolean waited(List<Entry> book, StepId step, Instant now) {
    Set<EntryId> struck = PieceLedger.struck(book);
    boolean waited = false;
    for (Entry entry : book) {
      if (struck.contains(entry.id())) {
        continue;
      }
      boolean counted =
          (entry.fact() instanceof Fact.PiecesThrough through && through.step().equals(step))
              || (entry.fact() instanceof Fact.StepDone done && done.step().equals(step));
      if (entry.fact() instanceof Fact.TimerStarted timer && timer.step().equals(step)) {
        waited = true;
      } else if (counted && !entry.at().equals(now)) {
        waited = false;
      }
    }
    return waited;
  }

  /** What the program knows of hot work is what the books say. */
  List<String> knows(Model model, Collection<List<Entry>> books, Instant real) {
    List<String> wrong = new ArrayList<>();
    boolean lit = open(books, HotWorkState.LIT);
    if (lit != model.hotWork().lit().isPresent()) {
      wrong.add("a flame is " + (lit ? "forgotten" : "imagined"));
    }
    boolean isKnown = lastHeat.isAfter(restartedAt);
    boolean watch =
        !lit && !ended && isKnown && Duration.between(lastHeat, real).compareTo(WATCH) < 0;
    Optional<TimerRun> runs =
        model.bench().watch().map(each -> each.run()).filter(run -> !run.rings(model.steady()));
    if (watch && runs.isEmpty()) {
      wrong.add("no fire watch, and the last heat was at " + lastHeat + ", now " + real);
    }
    if (watch && runs.isPresent()) {
      Duration left = runs.get().left(model.steady());
      Duration wanted = WATCH.minus(Duration.between(lastHeat, real));
      if (left.minus(wanted).abs().compareTo(Duration.ofSeconds(2)) > 0) {
        wrong.add("the fire watch has " + left + " left, and should have " + wanted);
      }
    }
    return wrong;
  }
}
