package linkwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.link.Joint;
import linkwright.link.Pattern;
import linkwright.reference.Family;
import linkwright.reference.Metal;
import linkwright.reference.Reference;
import linkwright.reference.Solder;
import linkwright.wire.JointKind;
import linkwright.wire.SolderNeed;

/**
 * Solder of all joints of a chain.
 *
 * @param joints how many joints
 * @param fillsG solder that fills them, g
 * @param placedG solder of the pallions placed, g: all of it stays in the chain
 * @param pieces the pallions by their size, in the order in which they were counted
 */
record SolderOfChain(int joints, double fillsG, double placedG, List<SolderPieces> pieces) {
  /** Pallions nearer than that are cut alike, mm. */
  private static final double ALIKE_MM = 0.005;

  SolderOfChain {
    pieces = List.copyOf(pieces);
  }

  static SolderOfChain of(
      ChainWish wish, List<LinksOfSize> sizes, int rings, Optional<EndRings> ends) {
    SolderOfChain all = new SolderOfChain(0, 0, 0, List.of());
    for (int i = 0; i < sizes.size(); i++) {
      WishedLink link = i == 0 ? wish.link() : wish.repeat().others().get(i - 1).link();
      List<Joint> joints = link.pattern().map(Pattern::joints).orElse(List.of());
      int links = sizes.get(i).links();
      if (joints.isEmpty()) {
        all = all.with(links, wish, wish.wire().roundOfAreaMm(), JointKind.BUTT);
      }
      for (Joint joint : joints) {
        JointKind kind = joint == Joint.TIP_TO_TIP ? JointKind.BUTT : JointKind.SIDE;
        all = all.with(links, wish, wish.wire().roundOfAreaMm(), kind);
      }
    }
    if (ends.isPresent()) {
      all = all.with(EndRings.COUNT, wish, wish.wire().roundOfAreaMm(), JointKind.BUTT);
    }
    return rings == 0
        ? all
        : all.with(rings, wish, wish.ringWireNow().roundOfAreaMm(), JointKind.BUTT);
  }

  /**
   * The hard grade goes first; where no solder of the metal's family is known, hard silver. Of gold
   * less fine than any solder known, whose solder is as fine as it is itself and is not known, the
   * metal's own density: 750 solder weighs within 6 % of 750 gold (common practice, no source).
   */
  static double densityGCm3(Metal metal, Reference reference) {
    List<Solder> family = reference.soldersFor(metal.family());
    if (asFineAsItself(metal, family)) {
      return metal.densityGCm3().value();
    }
    return family.stream()
        .filter(solder -> solder.id().startsWith("hard-"))
        .findFirst()
        .or(() -> family.stream().findFirst())
        .or(() -> reference.solder("hard-silver").found())
        .map(Solder::densityGCm3)
        .orElse(metal.densityGCm3().value());
  }

  private static boolean asFineAsItself(Metal metal, List<Solder> family) {
    return metal.family() == Family.GOLD
        && metal.finenessPermille().isPresent()
        && family.stream()
                .flatMapToInt(solder -> solder.finenessPermille().stream())
                .min()
                .orElse(0)
            > metal.finenessPermille().getAsInt();
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
    return new SolderOfChain(
        joints + more,
        fillsG + more * need.massG(),
        placedG + more * pieceG,
        with(more, need.pieceMm()));
  }

  private List<SolderPieces> with(int more, double pieceMm) {
    List<SolderPieces> all = new ArrayList<>(pieces);
    for (int i = 0; i < all.size(); i++) {
      if (Math.abs(all.get(i).pieceMm() - pieceMm) < ALIKE_MM) {
        all.set(i, new SolderPieces(all.get(i).joints() + more, all.get(i).pieceMm()));
        return all;
      }
    }
    all.add(new SolderPieces(more, pieceMm));
    return all;
  }
}
