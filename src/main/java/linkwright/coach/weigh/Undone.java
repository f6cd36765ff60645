package linkwright.coach.weigh;

import java.util.Map;
import java.util.stream.Collectors;
import linkwright.standing.Standing;

/** Work that a job still lacks as it is closed: asked about once, for its figures stay. */
final class Undone {
  private Undone() {}

  /** The question beside the closing's field; none where all that was wanted came good. */
  static Map<String, String> questions(Standing standing) {
    String undone =
        standing.left().entrySet().stream()
            .filter(kind -> kind.getValue().more() > 0)
            .map(
                kind ->
                    kind.getValue().good()
                        + " of "
                        + kind.getValue().wanted()
                        + " "
                        + kind.getKey().many())
            .collect(Collectors.joining(" and "));
    return undone.isEmpty()
        ? Map.of()
        : Map.of("next", undone + " are good: close it all the same?");
  }
}
