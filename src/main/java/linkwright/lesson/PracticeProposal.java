package linkwright.lesson;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import linkwright.routine.Remedy;
import linkwright.routine.Routine;
import linkwright.routine.Step;

/**
 * Practice that is proposed: so many pieces of a step in so many days, and so on at equal gaps
 * until the rate is the usual one.
 *
 * @param at what was made there so far
 * @param pieces how many
 * @param days in how many days
 * @param reason what goes back most
 * @param helps what helps against it, from the routine; may be empty
 */
public record PracticeProposal(StepMade at, int pieces, int days, String reason, String helps) {
  /** Fewest and most pieces of an exercise; five is where teachers begin to count one competent. */
  private static final int FEWEST = 5;

  private static final int MOST = 20;

  /** How often it went back for that reason. */
  public int back() {
    return at.redo().getOrDefault(reason, 0);
  }

  /** Of how many. */
  public int of() {
    return at.back() + at.through();
  }

  /**
   * One for each step that goes back more often than is usual: as many pieces as would hold one
   * failure at the usual rate, so that a better rate can be told.
   */
  static List<PracticeProposal> of(List<StepMade> made, Set<Routine> routines, int gapDays) {
    return made.stream()
        .filter(step -> step.back() > 0 && step.rate() > step.usualRedo())
        .map(step -> proposed(step, routines, gapDays))
        .toList();
  }

  private static PracticeProposal proposed(StepMade step, Set<Routine> routines, int gapDays) {
    String most =
        step.redo().entrySet().stream()
            .sorted(Map.Entry.comparingByKey())
            .max(Map.Entry.comparingByValue())
            .map(Map.Entry::getKey)
            .orElse("");
    int pieces =
        step.usualRedo() > 0
            ? (int) Math.max(FEWEST, Math.min(MOST, Math.ceil(1 / step.usualRedo())))
            : FEWEST;
    return new PracticeProposal(step, pieces, gapDays, most, helps(routines, step, most));
  }

  /** What the routine says against that fault, at the step itself before all others. */
  private static String helps(Set<Routine> routines, StepMade made, String reason) {
    List<Step> steps =
        routines.stream()
            .filter(routine -> routine.id().equals(made.routine()))
            .flatMap(routine -> routine.steps().stream())
            .toList();
    return remedy(steps.stream().filter(step -> step.id().equals(made.step())).toList(), reason)
        .or(() -> remedy(steps, reason))
        .orElse("");
  }

  private static Optional<String> remedy(List<Step> steps, String reason) {
    return steps.stream()
        .flatMap(step -> step.wrong().stream())
        .filter(remedy -> remedy.reason().equals(reason))
        .map(Remedy::remedy)
        .findFirst();
  }
}
