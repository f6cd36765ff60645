package linkwright.standing.asked;

import java.util.Map;
import java.util.Optional;
import linkwright.quantity.Read;
import linkwright.routine.Routine;
import linkwright.standing.Handbook;
import linkwright.standing.JobTraits;
import linkwright.standing.Standing;

/** By which routine a job begins whose plan file names none. */
public final class RoutineOfPlan {
  private RoutineOfPlan() {}

  /**
   * The usual one for its links.
   *
   * @param texts the plan as it is written
   * @param usual the id of the one that is taken where none is made for its links
   * @return its id; or a sentence where that one is not for the plan's metal: nobody is led to fuse
   *     what does not fuse
   */
  public static Read<String> of(Map<String, String> texts, Handbook handbook, String usual) {
    Optional<Routine> made = Standing.routineFor(texts, handbook);
    JobTraits traits = JobTraits.of(texts, handbook.reference());
    return made.filter(
            known -> known.detail().suits().filter(suits -> !traits.meet(suits.when())).isPresent())
        .map(known -> Read.<String>bad(says(known)))
        .orElseGet(() -> Read.good(made.map(Routine::id).orElse(usual)));
  }

  private static String says(Routine routine) {
    return "The plan names no routine, and the usual one for such links, “"
        + routine.title()
        + "”, is not for its metal. Choose a routine, or give it rings: ring: {inside: 3 mm}.";
  }
}
