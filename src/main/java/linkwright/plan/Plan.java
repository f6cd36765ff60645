package linkwright.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.cutting.CutPlan;
import linkwright.link.Formed;
import linkwright.wire.SolderNeed;

/**
 * What a wish comes to.
 *
 * @param wish the wish it was reckoned for
 * @param links links, 1 or more
 * @param rings rings, n + 1 for n links; 0 where links join each other
 * @param lengthMm the chain's length with that many, clasp included, mm
 * @param oneFewerMm its length with one link fewer; empty if there is no fewer
 * @param oneMoreMm its length with one link more, mm
 * @param exactRingInsideMm inside diameter of the round ring that would make the length exact
 * @param linkBlankMm the link's blank, mm
 * @param linkInsideMm what one link adds along the pull, mm
 * @param formed the link as its pattern gives it; empty for one known by its measures alone
 * @param ringBlankMm the ring's blank, mm, 0 without rings
 * @param ringTurnMm wire that one turn of the coil takes, mm, 0 without rings
 * @param ringInsideLengthMm what one ring adds along the pull, mm
 * @param blanksToCut blanks so that enough come good with the wished chance
 * @param wireLinksMm links × (blank + kerf), spares apart, mm
 * @param wireRingsMm rings × turn + tail, mm
 * @param wireSpareMm spare blanks × (blank + kerf), mm
 * @param massLinksG finished links, g
 * @param massRingsG finished rings, g
 * @param massSolderG solder of all joints, g
 * @param massChainG links, rings, clasp and solder, g
 * @param joints joints to solder in all
 * @param solder what one joint takes
 * @param cuts how the wire on hand is best cut
 * @param wireShortMm wire that the stock lacks for all of it, mm
 * @param pull loads at which links and rings give way
 * @param remarks what to mind, in sentences
 */
public record Plan(
    ChainWish wish,
    int links,
    int rings,
    double lengthMm,
    OptionalDouble oneFewerMm,
    double oneMoreMm,
    OptionalDouble exactRingInsideMm,
    double linkBlankMm,
    double linkInsideMm,
    Optional<Formed> formed,
    double ringBlankMm,
    double ringTurnMm,
    double ringInsideLengthMm,
    int blanksToCut,
    double wireLinksMm,
    double wireRingsMm,
    double wireSpareMm,
    double massLinksG,
    double massRingsG,
    double massSolderG,
    double massChainG,
    int joints,
    SolderNeed solder,
    CutPlan cuts,
    double wireShortMm,
    Pull pull,
    List<String> remarks) {
  public Plan {
    remarks = List.copyOf(remarks);
  }

  /** Wire in all, spares included, mm. */
  public double wireTotalMm() {
    return wireLinksMm + wireRingsMm + wireSpareMm;
  }

  /** Wire that one link's blank takes with its kerf, mm. */
  public double linkEachMm() {
    return linkBlankMm + wish.kerfMm();
  }
}
