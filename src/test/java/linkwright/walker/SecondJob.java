package linkwright.walker;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import linkwright.books.BookFile;
import linkwright.books.EntryLines;
import linkwright.coach.Bencher;
import linkwright.files.Home;
import linkwright.job.Entry;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.routine.Step;
import linkwright.routine.Wait;
import linkwright.shell.Demo;

/** Another job at the same bench, in whose pickle something lies while the walk begins. */
final class SecondJob {
  static final String SLUG = "other-job";

  private SecondJob() {}

  /** Is told of a timer that runs from then on. */
  interface Begun {
    void timer(String slug, EntryId id, Instant real);
  }

  static void begin(Home home, Instant now, Begun begun) {
    Step step =
        Bencher.SHELF.routine("round-cable").orElseThrow().steps().stream()
            .filter(each -> !each.waits().isEmpty() && each.stage().isEmpty())
            .findFirst()
            .orElseThrow();
    Wait wait = step.waits().get(0);
    List<Fact> facts = new ArrayList<>(Demo.facts(Bencher.LIBRARY));
    facts.set(0, new Fact.JobOpened("other job", "round-cable"));
    facts.add(new Fact.StepOpened(step.id()));
    facts.add(new Fact.TimerStarted(wait.name(), wait.seconds(), wait.id(), step.id(), Map.of()));
    // One of her own rings before that.
    facts.add(new Fact.TimerStarted("kettle", 60));
    List<Entry> entries = new ArrayList<>();
    for (Fact fact : facts) {
      entries.add(new Entry(entries.size() + 1, now, "bench", fact));
    }
    try (BookFile book = BookFile.create(home.jobs(), "other job", "bench", now).orThrow()) {
      book.append(entries.stream().map(EntryLines::line).toList()).orThrow();
    } catch (IOException gone) {
      throw new UncheckedIOException(gone);
    }
    entries.stream()
        .filter(entry -> entry.fact() instanceof Fact.TimerStarted)
        .forEach(entry -> begun.timer(SLUG, entry.id(), now));
  }
}
