package linkwright.job;

import java.time.Instant;
import java.util.HashMap;
import java.util.Map;

/**
 * Whose sitting it was last on each machine; it stays hers over a restart.
 *
 * @param last device → the sitting begun there last
 */
public record Sittings(Map<String, Sat> last) {
  static final Sittings NONE = new Sittings(Map.of());

  /**
   * A sitting.
   *
   * @param person whose it is; empty if she did not say
   * @param since when it began
   * @param over whether it was ended; it stays hers
   */
  public record Sat(String person, Instant since, boolean over) {}

  Sittings after(Entry entry) {
    Fact fact = entry.fact();
    if (fact instanceof Fact.SittingStarted started) {
      return with(entry.device(), new Sat(started.person(), entry.at(), false));
    }
    boolean ends =
        fact instanceof Fact.SteppedAway
            || fact instanceof BenchFact.SittingEnded
            || fact instanceof Fact.JobClosed;
    Sat sat = last.get(entry.device());
    return ends && sat != null
        ? with(entry.device(), new Sat(sat.person(), sat.since(), true))
        : this;
  }

  private Sittings with(String device, Sat sat) {
    Map<String, Sat> more = new HashMap<>(last);
    more.put(device, sat);
    return new Sittings(Map.copyOf(more));
  }
}
