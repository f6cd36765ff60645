package linkwright.coach.tray;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.form.ShortageWords;
import linkwright.coach.kernel.TrayJob;
import linkwright.job.Entry;
import linkwright.job.JobCard;
import linkwright.job.JobState;
import linkwright.routine.PieceKind;
import linkwright.standing.Handbook;
import linkwright.standing.Standing;
import linkwright.standing.StillToDo;
import linkwright.standing.again.ClosedChain;
import linkwright.standing.reach.WireWanted;

/** A job as it lies in the tray, told from its book. */
public final class TrayWords {
  private TrayWords() {}

  /** Where the job stands, for any time: only timers go on by themselves. */
  public static TrayBook standing(String slug, List<Entry> entries, Handbook handbook) {
    JobState state = JobState.replay(entries, handbook.stages());
    TrayBook named = named(slug, entries, state);
    boolean closed = named.job().closed();
    Standing standing = Standing.of(state, handbook);
    TrayJob job =
        new TrayJob(
            slug,
            named.job().name(),
            stands(state, standing, handbook),
            closed ? List.of() : waits(standing),
            named.job().lastEntry(),
            closed,
            ClosedChain.of(entries, state, standing, handbook),
            closed ? Optional.empty() : WireWanted.of(standing),
            named.job().away());
    return new TrayBook(job, named.timers(), named.met());
  }

  /** The same by its name alone, while its figures are not reckoned yet. */
  public static TrayBook named(String slug, List<Entry> entries, JobState state) {
    Instant last = entries.isEmpty() ? Instant.EPOCH : entries.get(entries.size() - 1).at();
    String name = state.course().name().isEmpty() ? slug : state.course().name();
    boolean closed = state.course().closed();
    TrayJob job =
        new TrayJob(
            slug,
            name,
            closed ? "closed" : "being reckoned",
            List.of(),
            last,
            closed,
            Optional.empty(),
            Optional.empty(),
            state.card().away());
    return new TrayBook(job, state.timers(), state.cautions());
  }

  private static String stands(JobState state, Standing standing, Handbook handbook) {
    if (state.course().closed()) {
      return "closed";
    }
    if (state.course().wish().isEmpty() && standing.left().isEmpty()) {
      return "no plan yet";
    }
    String count = count(standing);
    String step =
        handbook
            .walked(state)
            .flatMap(routine -> routine.step(state.course().step()))
            .map(open -> "at “" + open.title() + "”")
            .orElse(begun(standing) ? "no step open" : "not begun");
    return count + step + promised(state.card());
  }

  /** Work that was taken in as tallies opened no step. */
  private static boolean begun(Standing standing) {
    return standing.left().values().stream()
        .anyMatch(each -> each.good() + each.inWork() + each.scrapped() > 0);
  }

  private static String promised(JobCard card) {
    return card.promised().map(day -> ", promised " + day).orElse("");
  }

  /** How many of the first kind of piece came good: links, or what the routine makes. */
  private static String count(Standing standing) {
    return standing.left().entrySet().stream()
        .findFirst()
        .map(
            each ->
                each.getValue().goodForChain()
                    + " of "
                    + each.getValue().wanted()
                    + " "
                    + each.getKey().word(each.getValue().wanted())
                    + " good, ")
        .orElse("");
  }

  private static List<String> waits(Standing standing) {
    List<String> waits = new ArrayList<>();
    for (Map.Entry<PieceKind, StillToDo> each : standing.left().entrySet()) {
      if (each.getValue().redo() > 0) {
        int redo = each.getValue().redo();
        waits.add(each.getKey().counted(redo) + " to redo");
      }
    }
    waits.addAll(ShortageWords.of(standing));
    return waits;
  }
}
