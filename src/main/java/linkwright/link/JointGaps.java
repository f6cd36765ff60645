package linkwright.link;

import java.util.List;

/** Finds how well the joints close. */
final class JointGaps {
  JointGaps(Formed link) {}

  List<JointGap> all() {
    return List.of();
  }
}
