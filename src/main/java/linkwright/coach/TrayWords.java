package linkwright.coach;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import linkwright.job.Entry;
import linkwright.job.JobState;
import linkwright.job.StillToDo;

/** A job as it lies in the tray, told from its book. */
public final class TrayWords {
  private TrayWords() {}

  /** Where the job stands and what waits. */
  public static TrayJob of(String slug, List<Entry> entries, Shelf shelf, Instant now) {
    JobState state = JobState.replay(entries, shelf.stages());
    Instant last = entries.isEmpty() ? Instant.EPOCH : entries.get(entries.size() - 1).at();
    String name = state.course().name().isEmpty() ? slug : state.course().name();
    Reckoned reckoned = Reckoned.of(state, shelf);
    return new TrayJob(
        slug,
        name,
        stands(state, reckoned, shelf),
        waits(state, reckoned, now),
        last,
        state.course().closed());
  }

  private static String stands(JobState state, Reckoned reckoned, Shelf shelf) {
    if (state.course().closed()) {
      return "closed";
    }
    if (state.course().wish().isEmpty() && reckoned.left().isEmpty()) {
      return "no plan yet";
    }
    String count = count(reckoned);
    String step =
        shelf
            .routine(state.course().routine())
            .flatMap(routine -> routine.step(state.course().step()))
            .map(open -> "at “" + open.title() + "”")
            .orElse("not begun");
    return count + step;
  }

  /** How many of the first kind of piece came good: links, or what the routine makes. */
  private static String count(Reckoned reckoned) {
    return reckoned.left().entrySet().stream()
        .findFirst()
        .map(
            each ->
                each.getValue().good()
                    + " of "
                    + each.getValue().wanted()
                    + " "
                    + each.getKey()
                    + (each.getValue().wanted() == 1 ? "" : "s")
                    + " good, ")
        .orElse("");
  }

  private static List<String> waits(JobState state, Reckoned reckoned, Instant now) {
    List<String> waits = new ArrayList<>();
    if (state.course().closed()) {
      return waits;
    }
    state.timers().ringing(now).forEach(timer -> waits.add(timer.name() + " is due"));
    for (Map.Entry<String, StillToDo> each : reckoned.left().entrySet()) {
      if (each.getValue().redo() > 0) {
        int redo = each.getValue().redo();
        waits.add(redo + " " + each.getKey() + (redo == 1 ? "" : "s") + " to do again");
      }
    }
    waits.addAll(reckoned.shortages());
    return waits;
  }
}
