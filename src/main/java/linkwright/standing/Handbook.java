package linkwright.standing;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.bench.OwnBench;
import linkwright.drawer.Drawer;
import linkwright.hands.Hands;
import linkwright.hands.TaughtJob;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.StagesByKind;
import linkwright.link.Pattern;
import linkwright.reference.Reference;
import linkwright.routine.Caution;
import linkwright.routine.Routine;
import linkwright.routine.Step;
import linkwright.routine.StepId;

/**
 * What the coach can look up: shipped data and the user's own over it.
 *
 * @param reference metals, solders, fineness rules, clasps
 * @param patterns link patterns
 * @param routines routines
 * @param cautions cautions
 * @param hands what all books taught of the hands that work here
 * @param told what was wrong with files that could not be used, a sentence each
 * @param own the maker's own bench
 * @param drawer what lies in the drawer
 */
public record Handbook(
    Reference reference,
    List<Pattern> patterns,
    List<Routine> routines,
    List<Caution> cautions,
    Hands hands,
    List<String> told,
    OwnBench own,
    Drawer drawer) {
  public Handbook {
    patterns = List.copyOf(patterns);
    routines = List.copyOf(routines);
    cautions = List.copyOf(cautions);
    told = List.copyOf(told);
  }

  /** What ships and the user's own, and nothing of any book. */
  public Handbook(
      Reference reference,
      List<Pattern> patterns,
      List<Routine> routines,
      List<Caution> cautions,
      List<String> told,
      OwnBench own) {
    this(reference, patterns, routines, cautions, Hands.NONE, told, own, Drawer.EMPTY);
  }

  /** The same with what books taught. */
  public Handbook with(Hands taught) {
    return new Handbook(reference, patterns, routines, cautions, taught, told, own, drawer);
  }

  /** The same with what lies in the drawer. */
  public Handbook with(Drawer lying) {
    return new Handbook(reference, patterns, routines, cautions, hands, told, own, lying);
  }

  /** The same with another bench. */
  public Handbook with(OwnBench bench) {
    return new Handbook(reference, patterns, routines, cautions, hands, told, bench, drawer);
  }

  /** The same for the job of that book: its own pieces are no earlier ones. */
  public Handbook forJob(String slug, List<Entry> entries) {
    return with(
        hands.forJob(slug, TaughtJob.person(entries), TaughtJob.batch(entries), closed(entries)));
  }

  /** The same with what that book says now of lots and of its metal, in the drawer. */
  public Handbook drawing(String slug, List<Entry> entries) {
    return with(drawer.with(slug, entries, reference));
  }

  private static Instant closed(List<Entry> entries) {
    Instant until = Instant.MAX;
    for (Entry entry : entries) {
      until = entry.fact() instanceof Fact.JobClosed ? entry.at() : until;
      until = entry.fact() instanceof Fact.JobReopened ? Instant.MAX : until;
    }
    return until;
  }

  /** What a job's book taught, whose entries add up to that state. */
  public TaughtJob taught(String slug, List<Entry> entries, JobState state) {
    return TaughtJob.of(
        slug, entries, state, reference, patterns, routine(state.course().routine()));
  }

  /** The pattern of that id. */
  public Optional<Pattern> pattern(String id) {
    return patterns.stream().filter(pattern -> pattern.id().equals(id)).findFirst();
  }

  /** The routine of that id. */
  public Optional<Routine> routine(String id) {
    return routines.stream().filter(routine -> routine.id().equals(id)).findFirst();
  }

  /** The step's title by routine and step, with anything between; itself where none is known. */
  public String stepTitle(String path) {
    List<String> ids = List.of(path.split("/", -1));
    return routine(ids.get(0))
        .flatMap(
            routine ->
                ids.stream()
                    .skip(1)
                    .flatMap(id -> routine.step(new StepId(id)).stream())
                    .findFirst())
        .map(Step::title)
        .orElse(path);
  }

  /**
   * The routine of a job as it is walked there: without the steps that are not meant for it, and
   * with her own waits.
   */
  public Optional<Routine> walked(JobState state) {
    return routine(state.course().routine())
        .map(routine -> OwnWaits.in(JobTraits.of(state, reference).walked(routine), own));
  }

  /** The caution of that id. */
  public Optional<Caution> caution(String id) {
    return cautions.stream().filter(caution -> caution.id().equals(id)).findFirst();
  }

  /** The stages of each routine's pieces, as a replay needs them. */
  public StagesByKind stages() {
    return id -> routine(id).map(Routine::pieces).orElse(Map.of());
  }
}
