package linkwright.standing;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.bench.OwnBench;
import linkwright.job.JobState;
import linkwright.job.StagesByKind;
import linkwright.link.Pattern;
import linkwright.reference.Reference;
import linkwright.routine.Caution;
import linkwright.routine.Routine;

/**
 * What the coach can look up: shipped data and the user's own over it.
 *
 * @param reference metals, solders, fineness rules, clasps
 * @param patterns link patterns
 * @param routines routines
 * @param cautions cautions
 * @param told what was wrong with files that could not be used, a sentence each
 * @param own the maker's own bench
 */
public record Handbook(
    Reference reference,
    List<Pattern> patterns,
    List<Routine> routines,
    List<Caution> cautions,
    List<String> told,
    OwnBench own) {
  /** At a bench that nobody described. */
  public Handbook(
      Reference reference,
      List<Pattern> patterns,
      List<Routine> routines,
      List<Caution> cautions,
      List<String> told) {
    this(reference, patterns, routines, cautions, told, OwnBench.NONE);
  }

  public Handbook {
    patterns = List.copyOf(patterns);
    routines = List.copyOf(routines);
    cautions = List.copyOf(cautions);
    told = List.copyOf(told);
  }

  /** The pattern of that id. */
  public Optional<Pattern> pattern(String id) {
    return patterns.stream().filter(pattern -> pattern.id().equals(id)).findFirst();
  }

  /** The routine of that id. */
  public Optional<Routine> routine(String id) {
    return routines.stream().filter(routine -> routine.id().equals(id)).findFirst();
  }

  /** The routine of a job as it is walked there: without the steps that are not meant for it. */
  public Optional<Routine> walked(JobState state) {
    return routine(state.course().routine())
        .map(routine -> JobTraits.of(state.course().wish(), reference).walked(routine));
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
