package linkwright.cli.console;

import java.util.Map;
import java.util.Optional;
import linkwright.plan.WishKeys;
import linkwright.routine.Routine;
import linkwright.standing.Handbook;

/** What is told of a plan file that names no routine. */
public final class UnsaidRoutine {
  private UnsaidRoutine() {}

  /** Links that join each other may hang, or be folded or turned in: that is their routine's. */
  public static boolean matters(Map<String, String> wish, Handbook handbook) {
    String pattern = wish.getOrDefault(WishKeys.LINK_PATTERN, "").strip();
    return wish.getOrDefault(WishKeys.RING_INSIDE, "").isBlank()
        && handbook.routines().stream()
            .filter(known -> known.detail().linkAdds().isPresent())
            .anyMatch(known -> known.patterns().contains(pattern));
  }

  /**
   * Which routine it was reckoned for.
   *
   * @param suits whether it is made for such links and such a metal
   */
  public static String says(Optional<Routine> routine, boolean suits) {
    String another = " For another add a line to it, such as routine: rope.";
    return routine
            .map(
                known ->
                    suits
                        ? "it names no routine, and is reckoned for “%s” (%s)."
                            .formatted(known.title(), known.id())
                        : ("it names no routine, and is reckoned as plain links, each hung in the"
                                + " next; the hours are those of “%s”.")
                            .formatted(known.title()))
            .orElse("it names no routine, and none suits it: it is reckoned as plain links.")
        + another;
  }
}
