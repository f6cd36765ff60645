package linkwright.plan;

import java.util.List;
import linkwright.link.Joint;
import linkwright.link.Pattern;
import linkwright.wire.JointKind;
import linkwright.wire.SolderNeed;

/**
 * Solder of all joints of a chain.
 *
 * @param joints how many joints
 * @param fillsG solder that fills them, g
 * @param placedG solder of the pallions placed, g: all of it stays in the chain
 */
record SolderOfChain(int joints, double fillsG, double placedG) {

  static SolderOfChain of(ChainWish wish, Counted count, RingsCounted rings) {
    List<Joint> ofLink = wish.link().pattern().map(Pattern::joints).orElse(List.of());
    SolderOfChain none = new SolderOfChain(0, 0, 0);
    SolderOfChain one = ofLink.isEmpty() ? none.with(1, wish, wish.wireMm(), JointKind.BUTT) : none;
    for (Joint joint : ofLink) {
      JointKind kind = joint == Joint.TIP_TO_TIP ? JointKind.BUTT : JointKind.SIDE;
      one = one.with(1, wish, wish.wireMm(), kind);
    }
    SolderOfChain links = one.times(count.links());
    return count.rings() == 0
        ? links
        : links.with(count.rings(), wish, rings.wireMm(), JointKind.BUTT);
  }

  private SolderOfChain with(int more, ChainWish wish, double wireMm, JointKind kind) {
    SolderNeed need =
        SolderNeed.of(
            wireMm,
            Planning.JOINT_GAP_MM,
            SolderNeed.USUAL_FILLET_SHARE,
            Planning.STRIP_WIDTH_MM,
            Planning.STRIP_THICKNESS_MM,
            wish.solderGCm3(),
            kind);
    double pieceG =
        need.pieceMm()
            * Planning.STRIP_WIDTH_MM
            * Planning.STRIP_THICKNESS_MM
            * wish.solderGCm3()
            / 1000;
    return new SolderOfChain(joints + more, fillsG + more * need.massG(), placedG + more * pieceG);
  }

  private SolderOfChain times(int pieces) {
    return new SolderOfChain(joints * pieces, fillsG * pieces, placedG * pieces);
  }
}
