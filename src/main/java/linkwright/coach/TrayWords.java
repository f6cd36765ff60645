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
    return standing(slug, entries, shelf).at(now);
  }

  /** Where the job stands, for any time: only timers go on by themselves. */
  public static Standing standing(String slug, List<Entry> entries, Shelf shelf) {
    JobState state = JobState.replay(entries, shelf.stages());
    Instant last = entries.isEmpty() ? Instant.EPOCH : entries.get(entries.size() - 1).at();
    String name = state.course().name().isEmpty() ? slug : state.course().name();
    boolean closed = state.course().closed();
    Reckoned reckoned = Reckoned.of(state, shelf);
    TrayJob job =
        new TrayJob(
            slug,
            name,
            stands(state, reckoned, shelf),
            closed ? List.of() : waits(reckoned),
            last,
            closed);
    return new Standing(job, state.timers());
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

  private static List<String> waits(Reckoned reckoned) {
    List<String> waits = new ArrayList<>();
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
