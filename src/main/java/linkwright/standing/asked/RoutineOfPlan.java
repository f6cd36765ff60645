package linkwright.standing.asked;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.plan.WishKeys;
import linkwright.quantity.Read;
import linkwright.routine.Makes;
import linkwright.routine.Routine;
import linkwright.standing.Handbook;
import linkwright.standing.Standing;
import linkwright.standing.typed.RoutineFits;

/** By which routine a job begins whose plan file names none. */
public final class RoutineOfPlan {
  private RoutineOfPlan() {}

  /**
   * The usual one for its links.
   *
   * @param texts the plan as it is written
   * @param usual the id of the one that is taken where none is made for its links
   * @return its id; or a sentence where those that are made for its links are not for its metal:
   *     nobody is led to fuse what does not fuse, nor through the steps of other links
   */
  public static Read<String> of(Map<String, String> texts, Handbook handbook, String usual) {
    Optional<Routine> made = Standing.routineFor(texts, handbook);
    String pattern = texts.getOrDefault(WishKeys.LINK_PATTERN, "").strip();
    boolean ofOneLink = texts.getOrDefault(WishKeys.LINK_REPEAT, "").isBlank();
    if (ofOneLink && made.filter(known -> !RoutineFits.made(known, pattern)).isPresent()) {
      List<String> others =
          handbook.routines().stream()
              .filter(known -> known.makes() == Makes.CHAIN && known.patterns().contains(pattern))
              .filter(known -> known.ends() == made.get().ends())
              .map(known -> "“" + known.title() + "”")
              .toList();
      if (!others.isEmpty()) {
        return Read.bad(
            "The plan names no routine, and of those for such links ("
                + String.join(", ", others)
                + ") the usual one is not for its metal. Choose a routine, or give it rings: ring:"
                + " {inside: 3 mm}.");
      }
    }
    return Read.good(made.map(Routine::id).orElse(usual));
  }
}
