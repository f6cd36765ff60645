package linkwright.coach.kernel;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.standing.again.ClosedChain;
import linkwright.standing.reach.WireWanted;

/**
 * A job as it lies in the tray.
 *
 * @param slug its book's name
 * @param name its name
 * @param stands where it stands, in a few words
 * @param waits what waits: a timer, a redo, a shortage; empty if nothing
 * @param lastEntry when its last entry was made
 * @param closed whether it is closed
 * @param came what it came to; empty while it is not closed
 * @param wants wire that it still lacks; empty once it is closed
 * @param away whether it was put away
 */
public record TrayJob(
    String slug,
    String name,
    String stands,
    List<String> waits,
    Instant lastEntry,
    boolean closed,
    Optional<ClosedChain> came,
    Optional<WireWanted> wants,
    boolean away) {
  public TrayJob {
    waits = List.copyOf(waits);
  }

  /** The same where more waits. */
  public TrayJob alsoWaiting(List<String> more) {
    List<String> all = new ArrayList<>(waits);
    all.addAll(more);
    return new TrayJob(slug, name, stands, all, lastEntry, closed, came, wants, away);
  }

  /** A job of which nothing more is known. */
  public TrayJob(
      String slug,
      String name,
      String stands,
      List<String> waits,
      Instant lastEntry,
      boolean closed) {
    this(slug, name, stands, waits, lastEntry, closed, Optional.empty(), Optional.empty(), false);
  }
}
