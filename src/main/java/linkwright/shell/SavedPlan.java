package linkwright.shell;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.files.PlanFile;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.quantity.Read;
import linkwright.standing.Handbook;
import linkwright.standing.PlanDefaults;
import linkwright.standing.asked.RoutineOfPlan;

/** A plan that was saved to a file, for a job that begins with it. */
final class SavedPlan {
  private static final String FOLDER = "plans";
  private static final String ENDING = ".yaml";

  /** Where no routine is made for the plan's pattern. */
  private static final String USUAL_ROUTINE = "scroll-and-ring";

  private SavedPlan() {}

  /**
   * The entries that begin a job with the plan of a file: those before it, a routine that was not
   * chosen being the file's, else the one for the plan's pattern, and the plan.
   *
   * @param typed a path, or a name in the folder {@code plans} of the user's, with or without its
   *     ending
   * @param before the entries that the job begins with
   */
  static Read<List<Fact>> read(Home home, String typed, List<Fact> before, Handbook handbook) {
    Path path;
    try {
      path = found(home, typed);
    } catch (InvalidPathException no) {
      return Read.bad("“" + typed + "” is no path: write the plan file's name.");
    }
    if (!Files.isRegularFile(path)) {
      return Read.bad(
          PlanFile.none(path, "“" + typed + "”")
              .orElse(
                  "There is no plan file “"
                      + typed
                      + "”, nor one of that name in "
                      + FOLDER
                      + "."));
    }
    PlanFile plan = PlanFile.read(path, Library.load(home));
    if (!plan.problems().isEmpty()) {
      return Read.bad(plan.problems().get(0).sentence());
    }
    Read<String> routine =
        plan.routine()
            .map(Read::good)
            .orElseGet(() -> RoutineOfPlan.of(plan.texts(), handbook, USUAL_ROUTINE));
    if (routine.problem().isPresent() && before.stream().anyMatch(SavedPlan::namesNoRoutine)) {
      return Read.bad(routine.problem().get());
    }
    List<Fact> facts = new ArrayList<>();
    before.forEach(
        fact ->
            facts.add(
                namesNoRoutine(fact)
                    ? new Fact.JobOpened(((Fact.JobOpened) fact).name(), routine.orThrow())
                    : fact));
    List<Entry> entries = new ArrayList<>();
    for (Fact fact : facts) {
      entries.add(new Entry(entries.size() + 1, Instant.EPOCH, "plan", fact));
    }
    facts.add(
        PlanDefaults.kept(plan.texts(), JobState.replay(entries, handbook.stages()), handbook));
    return Read.good(List.copyOf(facts));
  }

  private static boolean namesNoRoutine(Fact fact) {
    return fact instanceof Fact.JobOpened opened && opened.routine().isEmpty();
  }

  private static Path found(Home home, String typed) {
    Path path = Path.of(typed);
    if (path.isAbsolute()) {
      return path;
    }
    Path folder = home.folder().resolve(FOLDER);
    List<Path> there =
        Stream.of(typed, typed + ENDING).map(folder::resolve).filter(Files::exists).toList();
    return there.stream()
        .filter(Files::isRegularFile)
        .findFirst()
        .orElse(there.isEmpty() ? path : there.get(0));
  }
}
