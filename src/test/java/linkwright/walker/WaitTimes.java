package linkwright.walker;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import linkwright.coach.kernel.JobWait;
import linkwright.coach.kernel.Model;
import linkwright.job.Entry;
import linkwright.job.EntryId;
import linkwright.job.Fact;

/** How long the waits of all jobs really ran, by the walker's own clock. */
final class WaitTimes {
  private static final Duration SLIGHT = Duration.ofSeconds(2);

  /** Book and entry → when a timer really began; ids are a book's own. */
  private final Map<String, Instant> begun = new HashMap<>();

  private Instant restartedAt = Instant.MIN;
  private Instant clockThen = Instant.MIN;

  /** A timer was begun in a book. */
  void begun(String slug, EntryId timer, Instant real) {
    begun.put(slug + " " + timer, real);
  }

  /**
   * Every wait of every open job is known wherever she is, and rings when it is over, neither
   * sooner nor later; of what ran before a restart only the computer's clock tells.
   */
  List<String> rings(Model model, Map<String, List<Entry>> books, Instant real) {
    Set<String> known = ids(model.waits());
    Set<String> due = ids(model.due());
    List<String> wrong = new ArrayList<>();
    books.forEach(
        (slug, book) -> {
          for (EntryId id : closed(book) ? Set.<EntryId>of() : EntryChecks.running(book)) {
            String timer = slug + " " + id;
            if (!known.contains(timer)) {
              wrong.add("a wait is known nowhere: " + timer);
            }
            Instant since = begun.getOrDefault(timer, Instant.MIN);
            Duration left =
                Duration.ofSeconds(seconds(book, id))
                    .minus(
                        since.isBefore(restartedAt)
                            ? Duration.ZERO
                            : Duration.between(since, real));
            boolean exact = !since.isBefore(restartedAt) && !left.abs().minus(SLIGHT).isNegative();
            if (exact && left.isNegative() != due.contains(timer)) {
              wrong.add(
                  "a wait " + (left.isNegative() ? "rings nowhere: " : "rings early: ") + timer);
            }
          }
        });
    return wrong;
  }

  private static Set<String> ids(List<JobWait> waits) {
    return waits.stream()
        .map(wait -> wait.slug() + " " + wait.run().id())
        .collect(Collectors.toSet());
  }

  private static boolean closed(List<Entry> book) {
    boolean closed = false;
    Set<EntryId> struck = PieceLedger.struck(book);
    for (Entry entry : book) {
      if (!struck.contains(entry.id())) {
        closed =
            entry.fact() instanceof Fact.JobClosed
                || (closed && !(entry.fact() instanceof Fact.JobReopened));
      }
    }
    return closed;
  }

  private static long seconds(List<Entry> book, EntryId timer) {
    return book.stream()
        .filter(each -> each.id().equals(timer))
        .mapToLong(each -> ((Fact.TimerStarted) each.fact()).seconds())
        .findFirst()
        .orElse(0);
  }

  /**
   * The program was started anew: how long a wait ran before that, only the computer's clock tells.
   *
   * @param real the moment as it really is
   * @param clock the same by the computer's clock
   */
  void restarted(Instant real, Instant clock) {
    restartedAt = real;
    clockThen = clock;
  }

  /** How long a wait ran: really, or by all that can be known of it after a restart. */
  Duration ran(String slug, Entry start, Instant real) {
    Instant since = begun.getOrDefault(slug + " " + start.id(), real);
    Duration really = Duration.between(since, real);
    if (!since.isBefore(restartedAt)) {
      return really;
    }
    Duration before = Duration.between(start.at(), clockThen);
    Duration known =
        (before.isNegative() ? Duration.ZERO : before).plus(Duration.between(restartedAt, real));
    return known.compareTo(really) > 0 ? known : really;
  }
}
