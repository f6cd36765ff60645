package linkwright.job;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which entries of a book are struck. A strike counts unless a strike that counts strikes it; in
 * what order they stand makes no difference, so that books of two machines agree. Strikes that
 * strike each other in a ring, which only a damaged book can hold, do not count.
 *
 * @param struck the names of the entries that count no more
 */
public record Strikes(Set<EntryId> struck) {
  /** Why undo strikes an entry, as the book says it. */
  public static final String UNDONE = "undone";

  /** Why the strike of an undo is struck. */
  public static final String BROUGHT_BACK = "brought back";

  /** The strikes of a book, whatever their order in it. */
  public static Strikes in(List<Entry> entries) {
    Map<EntryId, EntryId> strikes = new HashMap<>();
    for (Entry entry : entries) {
      if (entry.fact() instanceof Fact.Struck strike) {
        strikes.put(entry.id(), strike.entry());
      }
    }
    return strikes.isEmpty() ? new Strikes(Set.of()) : new Strikes(Set.copyOf(struck(strikes)));
  }

  /** Settles first the strikes that nothing strikes, then those that hang on settled ones only. */
  private static Set<EntryId> struck(Map<EntryId, EntryId> strikes) {
    Map<EntryId, Integer> open = new HashMap<>();
    strikes.values().forEach(target -> open.merge(target, 1, Integer::sum));
    Set<EntryId> struck = new HashSet<>();
    Deque<EntryId> settled = new ArrayDeque<>();
    strikes.keySet().stream().filter(strike -> !open.containsKey(strike)).forEach(settled::add);
    while (!settled.isEmpty()) {
      EntryId strike = settled.remove();
      EntryId target = strikes.get(strike);
      boolean first = !struck.contains(target);
      boolean counts = !struck.contains(strike);
      if (counts) {
        struck.add(target);
      }
      boolean last = open.merge(target, -1, Integer::sum) == 0;
      if (strikes.containsKey(target) && (counts ? first : last && first)) {
        settled.add(target);
      }
    }
    return struck;
  }

  /** Whether that entry is struck. */
  public boolean has(Entry entry) {
    return struck.contains(entry.id());
  }

  /** The strikes by which the entry is struck, of all entries of the book. */
  public List<Entry> on(Entry entry, List<Entry> entries) {
    return entries.stream()
        .filter(
            each -> each.fact() instanceof Fact.Struck strike && strike.entry().equals(entry.id()))
        .filter(each -> !has(each))
        .toList();
  }

  /** Whether it is a strike that undo made, or one by which it was brought back. */
  public static boolean isOfUndo(Fact fact) {
    return fact instanceof Fact.Struck strike
        && (strike.why().equals(UNDONE) || strike.why().equals(BROUGHT_BACK));
  }
}
