package linkwright.coach.kernel;

import java.time.Instant;
import java.util.List;

/**
 * A job as it lies in the tray.
 *
 * @param slug its book's name
 * @param name its name
 * @param stands where it stands, in a few words
 * @param waits what waits: a timer, a redo, a shortage; empty if nothing
 * @param lastEntry when its last entry was made
 * @param closed whether it is closed
 */
public record TrayJob(
    String slug,
    String name,
    String stands,
    List<String> waits,
    Instant lastEntry,
    boolean closed) {
  public TrayJob {
    waits = List.copyOf(waits);
  }
}
