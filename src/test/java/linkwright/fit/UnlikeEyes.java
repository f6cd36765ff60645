package linkwright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.link.Bend;
import linkwright.link.OtherHalf;
import linkwright.link.Pattern;
import linkwright.link.PatternPart;
import linkwright.link.Run;
import linkwright.link.Side;

/** Links whose two eyes are not turned alike, as hands make them. */
final class UnlikeEyes {
  private UnlikeEyes() {}

  /** The pattern written out whole, each of its two eyes turned further by its own amount. */
  static Pattern of(Pattern pattern, double[] turns) {
    List<PatternPart> path = new ArrayList<>();
    for (PatternPart bit : pattern.path()) {
      path.add(bit instanceof Bend bend ? bent(bend, bend.side(), turns[0]) : bit);
    }
    for (int i = pattern.path().size() - 1; i >= 0; i--) {
      PatternPart bit = pattern.path().get(i);
      if (bit instanceof Bend bend) {
        Bend back =
            new Bend(
                bend.to().orElse(bend.over()),
                bend.to().isPresent() ? Optional.of(bend.over()) : Optional.empty(),
                bend.turnDeg(),
                bend.side(),
                bend.eye(),
                bend.curl(),
                bend.overOnPurpose());
        boolean turned = pattern.other() == OtherHalf.TURNED;
        path.add(bent(back, turned ? bend.side().opposite() : bend.side(), turns[1]));
      } else if (bit instanceof Run run) {
        path.add(run.isRest() ? Run.likeRest() : run);
      }
    }
    return new Pattern(
        pattern.id(),
        pattern.says(),
        pattern.formersMm(),
        path,
        OtherHalf.NONE,
        pattern.closed(),
        List.of(),
        pattern.usual());
  }

  private static Bend bent(Bend bend, Side side, double moreDeg) {
    return new Bend(
        bend.over(),
        bend.to(),
        bend.eye() ? bend.turnDeg() + moreDeg : bend.turnDeg(),
        side,
        bend.eye(),
        bend.curl(),
        bend.overOnPurpose());
  }
}
