package linkwright.standing;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import linkwright.job.Entry;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.plan.Wishes;
import linkwright.shell.Start;

/** A job's book, entry by entry, and what stands of it. */
public final class JobBook {
  public static final Handbook HANDBOOK = Start.handbook(Wishes.LIBRARY);

  private final List<Entry> entries = new ArrayList<>();
  private Instant now = Instant.parse("2026-03-02T08:00:00Z");

  /** A job by that routine, not planned yet. */
  public static JobBook of(String routine) {
    JobBook book = new JobBook();
    book.enter(new Fact.JobOpened("A chain", routine));
    return book;
  }

  /** A chain of scroll links and rings with that plan. */
  public static JobBook scroll(Map<String, String> wish) {
    return of("scroll-and-ring").and(new Fact.PlanSet(wish));
  }

  public JobBook and(Fact fact) {
    enter(fact);
    return this;
  }

  /** Enters it a minute after the last. */
  public EntryId enter(Fact fact) {
    now = now.plusSeconds(60);
    entries.add(new Entry(entries.size() + 1, now, "bench", fact));
    return entries.get(entries.size() - 1).id();
  }

  /** Time goes by with nothing entered. */
  public JobBook after(int minutes) {
    now = now.plusSeconds(60L * (minutes - 1));
    return this;
  }

  public List<Entry> entries() {
    return List.copyOf(entries);
  }

  public Instant now() {
    return now;
  }

  public JobState state() {
    return JobState.replay(entries, HANDBOOK.stages());
  }

  public Standing standing() {
    return Standing.of(state(), HANDBOOK);
  }
}
