package linkwright.fit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import linkwright.quantity.Read;

/**
 * What was proposed last, by all that it follows from. A plan that is typed, what if and the tray
 * ask the same again at every key, and a proposal takes up to some 50 ms.
 */
final class LastProposals {
  private static final int MOST = 100;

  private static final Map<List<Object>, Read<Proposal>> KNOWN =
      new LinkedHashMap<>(MOST, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<List<Object>, Read<Proposal>> eldest) {
          return size() > MOST;
        }
      };

  private LastProposals() {}

  /**
   * The proposal that follows from all that is asked.
   *
   * @param asked all that it follows from, each with an equality by value
   */
  static Read<Proposal> of(List<Object> asked, Supplier<Read<Proposal>> proposed) {
    synchronized (KNOWN) {
      Read<Proposal> known = KNOWN.get(asked);
      if (known != null) {
        return known;
      }
    }
    Read<Proposal> found = proposed.get();
    synchronized (KNOWN) {
      KNOWN.put(asked, found);
    }
    return found;
  }
}
