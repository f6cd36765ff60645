package linkwright.cli.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.kernel.EntryWords;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.PlaceId;
import linkwright.job.BenchFact;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.plain.PlainLines;

/**
 * Tells what changed since it told last: all of a page when it is another one, else the lines that
 * are new in it. Entries are told only from the book, so only once they are kept.
 */
final class WalkTelling {
  /** A page as it was told. */
  private record Heard(PlaceId place, List<String> names, List<String> lines) {
    boolean same(Heard other) {
      return place == other.place && names.equals(other.names);
    }
  }

  private final WalkLines lines;
  private final WalkCoach coach;
  private Optional<Heard> last = Optional.empty();

  /** The page that a question lies in front of: it is not told again once that is answered. */
  private Optional<Heard> behind = Optional.empty();

  private int entries;
  private boolean brief;

  WalkTelling(WalkLines lines, WalkCoach coach) {
    this.lines = lines;
    this.coach = coach;
    this.entries = known(coach.model()).size();
  }

  private static List<Entry> known(Model model) {
    return model.job().map(job -> job.entries()).orElse(List.of());
  }

  /** Tells all that is new. */
  void tell() {
    Model model = coach.model();
    lines.sayAll(coach.takeTold());
    List<Entry> all = known(model);
    List<Entry> more = all.subList(Math.min(entries, all.size()), all.size());
    boolean takesOver =
        more.stream().anyMatch(entry -> entry.fact() instanceof Fact.SittingStarted);
    more.stream()
        // Whoever takes over is told with whose sitting ended by it.
        .filter(entry -> !(takesOver && entry.fact() instanceof BenchFact.SittingEnded))
        .forEach(entry -> words(entry, model).ifPresent(lines::say));
    entries = all.size();
    boolean asked = model.held().form().isPresent() && !coach.failing();
    if (asked || coach.left()) {
      return;
    }
    WalkPage page = new WalkPage(model);
    List<String> said = new ArrayList<>(page.said());
    said.addAll(page.emptyLine());
    Heard now = new Heard(coach.place(), page.names(), said);
    Optional<Heard> before =
        last.filter(now::same).or(() -> behind.filter(now::same).filter(any -> before(now)));
    if (before.isPresent() && brief) {
      // One line a count: the entry was told.
    } else if (before.isPresent()) {
      said.stream().filter(line -> !before.get().lines().contains(line)).forEach(lines::say);
    } else if (asksOn(page, now)) {
      // Where question follows on question, whoever listens hears each time what is new alone.
      lines.sayAll(said.subList(1, said.size()));
    } else {
      whole(page);
    }
    last = Optional.of(now);
    if (!page.asks() && !page.tellsAnswer()) {
      behind = last;
    }
  }

  /** Whether what was told last lay in front of a page; what was asked elsewhere did not. */
  private boolean before(Heard page) {
    return last.filter(shown -> shown.place() == page.place() || shown.place() == PlaceId.HOT_WORK)
        .isPresent();
  }

  /** Whether a question or its answer follows on another at the same place. */
  private boolean asksOn(WalkPage page, Heard now) {
    return (page.asks() || page.tellsAnswer())
        && last.filter(shown -> shown.place() == now.place())
            .filter(shown -> !now.lines().isEmpty() && shown.lines().contains(now.lines().get(0)))
            .isPresent();
  }

  /** From now on one line a count, or everything again; tells which. */
  void turnBrief() {
    brief = !brief;
    lines.say(brief ? "Brief: one line a count." : "Everything is told again.");
  }

  /** Tells once more all that is in front of the user. */
  void repeat() {
    lines.sayAll(coach.takeTold());
    whole(new WalkPage(coach.model()));
  }

  /** Tells in one line where the user is. */
  void where() {
    lines.say(new WalkPage(coach.model()).where());
  }

  private void whole(WalkPage page) {
    lines.sayAll(page.said());
    lines.sayAll(page.nextWaits());
    lines.sayAll(page.emptyLine());
    if (!brief) {
      lines.sayAll(page.words());
    }
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
    return Optional.of("Entered: " + PlainLines.sentence(EntryWords.of(fact, model)));
  }
}
