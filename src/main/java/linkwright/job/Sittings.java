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
   */
  public record Sat(String person, Instant since) {}

  Sittings after(Entry entry) {
    if (!(entry.fact() instanceof Fact.SittingStarted started)) {
      return this;
    }
    Map<String, Sat> more = new HashMap<>(last);
    more.put(entry.device(), new Sat(started.person(), entry.at()));
    return new Sittings(Map.copyOf(more));
  }
}
