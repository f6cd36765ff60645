package linkwright.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.cutting.BlanksWanted;
import linkwright.cutting.CutOrder;
import linkwright.cutting.RingsWanted;
import linkwright.link.Formed;
import linkwright.quantity.UnitStyle;
import linkwright.wire.SolderNeed;

/**
 * What a wish comes to, whatever wire is on hand.
 *
 * @param wish the wish it was reckoned for
 * @param links links, 1 or more
 * @param rings rings, n + 1 for n links; 0 where links join each other
 * @param lengthMm the chain's length with that many, clasp included, mm
 * @param plusMinusMm doubt of that length, one standard deviation, mm
 * @param plusMinusTrialMm the doubt that would be left after a trial length of three links, mm;
 *     empty where one is followed already
 * @param oneFewerMm its length with one link fewer; empty if there is no fewer
 * @param oneMoreMm its length with one link more, mm
 * @param exactRingInsideMm inside diameter of the round ring that would make the length exact;
 *     empty where there is none that two wires pass
 * @param tightRingInsideMm the ring that would make it exact and that two wires do not pass, mm;
 *     empty where they do, or where there is none
 * @param link the link as it is counted
 * @param ringBlankMm the ring's blank, mm, 0 without rings
 * @param ringTurnMm wire that one turn of the coil takes, mm, 0 without rings
 * @param ringInsideLengthMm what one ring adds along the pull, mm
 * @param blanksToCut blanks so that enough links come good with the wished chance
 * @param ringsToCut the same of rings; 0 without rings
 * @param wireLinksMm links × (blank + kerf), spares apart, mm
 * @param wireRingsMm rings × turn + tail, mm
 * @param wireSpareMm spare blanks × (blank + kerf), mm
 * @param wireSpareRingsMm spare rings × turn, mm
 * @param massLinksG finished links, g
 * @param massRingsG finished rings, g
 * @param massSolderG solder that fills the joints, g
 * @param solderPlacedG solder placed at the joints, which stays in the chain, g
 * @param massChainG links, rings, clasp and the solder placed, g
 * @param joints joints to solder in all
 * @param solder what one joint of the links' wire takes
 * @param pull loads at which links and rings give way
 * @param remarks what to mind, in sentences
 */
public record Plan(
    ChainWish wish,
    int links,
    int rings,
    double lengthMm,
    double plusMinusMm,
    OptionalDouble plusMinusTrialMm,
    OptionalDouble oneFewerMm,
    double oneMoreMm,
    OptionalDouble exactRingInsideMm,
    OptionalDouble tightRingInsideMm,
    SettledLink link,
    double ringBlankMm,
    double ringTurnMm,
    double ringInsideLengthMm,
    int blanksToCut,
    int ringsToCut,
    double wireLinksMm,
    double wireRingsMm,
    double wireSpareMm,
    double wireSpareRingsMm,
    double massLinksG,
    double massRingsG,
    double massSolderG,
    double solderPlacedG,
    double massChainG,
    int joints,
    SolderNeed solder,
    Pull pull,
    List<String> remarks) {
  public Plan {
    remarks = List.copyOf(remarks);
  }

  /** What to mind, in sentences with sizes in those units. */
  public List<String> remarks(UnitStyle units) {
    return units == UnitStyle.METRIC
        ? remarks
        : Remarks.of(wish, link, RingsCounted.of(wish).orThrow(), units);
  }

  /** How much longer than wished it comes, mm; negative for shorter. */
  public double offMm() {
    return lengthMm - wish.finishedMm();
  }

  /** What a ring has to have inside at the least so that the wires of two links pass it, mm. */
  public double leastRingInsideMm() {
    return 2 * wish.wireMm();
  }

  /** The link's blank, mm. */
  public double linkBlankMm() {
    return link.blankMm();
  }

  /** What one link adds along the pull, mm. */
  public double linkInsideMm() {
    return link.insideMm();
  }

  /** The pallion to cut for one joint of the links' wire, mm. */
  public double solderPieceMm() {
    return solder.pieceMm();
  }

  /** What to mind about the solder placed at a joint, in sentences. */
  public List<String> solderWarnings() {
    return solder.warnings();
  }

  /** The link's shape; empty for one known by its measures alone. */
  public Optional<Formed> formed() {
    return link.formed();
  }

  /** Wire in all, spares of links and rings included, mm. */
  public double wireTotalMm() {
    return wireLinksMm + wireRingsMm + wireSpareMm + wireSpareRingsMm;
  }

  /**
   * What is asked of the cutting for so many blanks and rings of this plan.
   *
   * @param stockMm lengths of the links' wire
   * @param ringStockMm lengths of the rings' wire; empty where they are cut from the links' wire
   */
  public CutOrder order(
      int blanks, int rings, List<Double> stockMm, Optional<List<Double>> ringStockMm) {
    return order(wish, linkBlankMm(), blanks, ringTurnMm, rings, stockMm, ringStockMm);
  }

  static CutOrder order(
      ChainWish wish,
      double blankMm,
      int blanks,
      double turnMm,
      int rings,
      List<Double> stockMm,
      Optional<List<Double>> ringStockMm) {
    boolean ringed = rings > 0;
    return new CutOrder(
        stockMm,
        ringed ? ringStockMm : Optional.empty(),
        List.of(BlanksWanted.each(blankMm, blanks)),
        ringed ? Optional.of(RingsWanted.each(turnMm, wish.coilTailMm(), rings)) : Optional.empty(),
        wish.kerfMm());
  }

  /** Wire that one link's blank takes with its kerf, mm. */
  public double linkEachMm() {
    return link.blankMm() + wish.kerfMm();
  }
}
