package linkwright.job;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Which entries of a book are struck. Read from the end: a strike counts unless a later one strikes
 * it.
 *
 * @param struck the names of the entries that count no more
 */
public record Strikes(Set<EntryId> struck) {
  /** The strikes of a book, whatever their order in it. */
  public static Strikes in(List<Entry> entries) {
    Set<EntryId> struck = new HashSet<>();
    for (int i = entries.size() - 1; i >= 0; i--) {
      Entry entry = entries.get(i);
      if (entry.fact() instanceof Fact.Struck strike && !struck.contains(entry.id())) {
        struck.add(strike.entry());
      }
    }
    return new Strikes(Set.copyOf(struck));
  }

  /** Whether that entry is struck. */
  public boolean has(Entry entry) {
    return struck.contains(entry.id());
  }

  /** Undo passes over what only accompanies the work: sittings, cautions seen, opened steps. */
  public static boolean canBeUndone(Fact fact) {
    return !(fact instanceof Fact.Struck
        || fact instanceof Fact.JobOpened
        || fact instanceof Fact.SittingStarted
        || fact instanceof Fact.SteppedAway
        || fact instanceof Fact.CautionSeen
        || fact instanceof Fact.StepOpened
        || fact instanceof Fact.LineAccepted
        || fact instanceof Fact.Unread);
  }
}
