package linkwright.link;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A pattern's bits from tip to tip, both halves written out. */
final class TipToTip {
  private TipToTip() {}

  /** The bits of the whole link, in the order of walking from the first tip to the last. */
  static List<PatternPart> whole(Pattern pattern) {
    List<PatternPart> path = pattern.path();
    if (pattern.other() == OtherHalf.NONE) {
      return path;
    }
    List<PatternPart> bits = new ArrayList<>(2 * path.size());
    bits.addAll(path);
    for (int at = path.size() - 1; at >= 0; at--) {
      bits.add(back(path.get(at), pattern.other()));
    }
    return bits;
  }

  /**
   * A bit of the other half, walked from the middle outwards. Walking a bend backwards turns it to
   * the other hand; half a turn of the plane leaves that hand, a mirror gives the first hand back.
   */
  private static PatternPart back(PatternPart bit, OtherHalf other) {
    if (!(bit instanceof Bend bend)) {
      return bit;
    }
    return new Bend(
        bend.to().orElse(bend.over()),
        bend.to().isPresent() ? Optional.of(bend.over()) : Optional.empty(),
        bend.turnDeg(),
        other == OtherHalf.TURNED ? bend.side().opposite() : bend.side(),
        bend.eye(),
        bend.curl(),
        bend.overOnPurpose());
  }
}
