package linkwright.coach.kernel;

import java.util.List;
import java.util.Optional;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.Strikes;

/** Takes the last act back: entries of one act carry one time. Nothing is erased. */
public final class Undo {
  private Undo() {}

  /** Strikes what the last act entered. */
  public static Turn last(Model model) {
    if (model.job().isEmpty()) {
      return Turn.to(model.trouble("Nothing to undo: no job is open."));
    }
    List<Entry> entries = model.job().get().entries();
    Optional<Entry> last = JobState.lastUndoable(entries);
    if (last.isEmpty()) {
      return Turn.to(model.trouble("Nothing left to undo in this book."));
    }
    Strikes strikes = Strikes.in(entries);
    List<Fact> struck =
        entries.stream()
            .filter(entry -> entry.at().equals(last.get().at()))
            .filter(entry -> entry.device().equals(last.get().device()))
            .filter(entry -> !strikes.has(entry) && Strikes.canBeUndone(entry.fact()))
            .map(entry -> (Fact) new Fact.Struck(entry.id(), "undone"))
            .toList();
    String what = EntryWords.of(last.get().fact(), model.settings());
    return Turn.keep(model.told("Undone: " + what), struck);
  }
}
