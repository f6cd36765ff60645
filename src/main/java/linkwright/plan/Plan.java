package linkwright.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.cutting.BlanksWanted;
import linkwright.cutting.CutOrder;
import linkwright.cutting.RingsWanted;
import linkwright.link.Coil;
import linkwright.link.Formed;
import linkwright.link.Ring;
import linkwright.quantity.Decimals;
import linkwright.quantity.UnitStyle;
import linkwright.wire.SolderNeed;

/**
 * What a wish comes to, whatever wire is on hand.
 *
 * @param wish the wish it was reckoned for
 * @param links links of all sizes, 1 or more
 * @param rings rings that join them, n + 1 for n links; 0 where links join each other
 * @param lengthMm the chain's length with that many, clasp included, mm
 * @param plusMinusMm doubt of that length, one standard deviation, mm
 * @param plusMinusTrialMm the doubt that would be left after a trial length of three links, mm;
 *     empty where one is followed already or would tell no more
 * @param oneFewerMm its length with one link fewer, or one repeat; empty if there is no fewer
 * @param oneMoreMm its length with one link more, or one repeat, mm
 * @param exactRingInsideMm inside diameter of the round ring that would make the length exact;
 *     empty where there is none that two wires pass
 * @param tightRingInsideMm the ring that would make it exact and that two wires do not pass, mm;
 *     empty where they do, or where there is none
 * @param sizes the links, size by size: the planned one first; one where all are alike
 * @param endRings a jump ring at each end; empty without
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
 * @param massRingsG finished rings, those at the ends too, g
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
    List<LinksOfSize> sizes,
    Optional<EndRings> endRings,
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
    sizes = List.copyOf(sizes);
    remarks = List.copyOf(remarks);
  }

  /** What to mind, in sentences with sizes in those units. */
  public List<String> remarks(UnitStyle units) {
    return units == UnitStyle.METRIC
        ? remarks
        : Remarks.of(wish, sizes, RingsCounted.of(wish).orThrow(), units);
  }

  /**
   * Whether what the chain holds is known. A link that is folded or turned into its neighbours
   * shares the pull among several wires, round bends that no published formula is for: a round
   * ring's load says nothing of it.
   */
  public boolean pullIsKnown() {
    return wish.link().woven().isEmpty();
  }

  /** The planned link as it is counted. */
  public SettledLink link() {
    return sizes.get(0).link();
  }

  /** Whether its links are of several sizes. */
  public boolean sized() {
    return sizes.size() > 1;
  }

  /** Links of one repeat; 1 where all are alike. */
  public int linksPerRepeat() {
    return sized() ? sizes.stream().mapToInt(LinksOfSize::perRepeat).sum() : 1;
  }

  /** Links and rings of one repeat; of one link with its ring where all are alike. */
  public int repeatPieces() {
    return linksPerRepeat() * (rings > 0 ? 2 : 1);
  }

  /** Wire that the links of one repeat more take, kerfs included, mm. */
  public double repeatLinksMm() {
    return sizes.stream().mapToDouble(size -> size.perRepeat() * size.eachMm(wish)).sum()
        * linksPerRepeat()
        / sizes.stream().mapToInt(LinksOfSize::perRepeat).sum();
  }

  /** Wire that its rings take, mm. */
  public double repeatRingsMm() {
    return rings > 0 ? linksPerRepeat() * ringTurnMm : 0;
  }

  /** What one link adds along the pull in the mean of all sizes, mm. */
  public double meanInsideMm() {
    return sized()
        ? sizes.stream().mapToDouble(size -> size.links() * size.link().insideMm()).sum() / links
        : linkInsideMm();
  }

  /** Wire of the jump rings at the ends, spares included, mm. */
  public double wireEndsMm() {
    return endRings.map(ends -> ends.wireMm(wish)).orElse(0.0);
  }

  /** Rings in all, those at the ends too. */
  public int allRings() {
    return rings + (endRings.isPresent() ? EndRings.COUNT : 0);
  }

  /** Rings to cut in all, those at the ends too: each kind with spares of its own. */
  public int allRingsToCut() {
    return ringsToCut + endRings.map(EndRings::toCut).orElse(0);
  }

  /** Blanks to cut if that share were lost, 0 to 1, each size with spares of its own. */
  public int blanksToCut(double lossShare) {
    return sized()
        ? sizes.stream().mapToInt(size -> toCut(size.links(), lossShare)).sum()
        : toCut(links, lossShare);
  }

  /** Rings to cut in all if that share were lost, 0 to 1. */
  public int allRingsToCut(double lossShare) {
    int atEnds = endRings.isPresent() ? toCut(EndRings.COUNT, lossShare) : 0;
    return toCut(rings, lossShare) + atEnds;
  }

  private int toCut(int wanted, double lossShare) {
    return Planning.toCut(wanted, lossShare, wish.confidence());
  }

  /** Rings still lacking: those that join, then those at the ends, which are made last. */
  public List<Integer> ringsLacking(int more) {
    return endRings.isPresent() ? lastFirst(more, List.of(rings, EndRings.COUNT)) : List.of(more);
  }

  /** The end of it that the clasp may be hooked short of; empty where none was wished. */
  public Optional<Extender> extender() {
    return Extender.of(this);
  }

  /** Whether that length is another than the planned one, as far as its doubt lets it be told. */
  public boolean toldApart(double mm) {
    return !(plusMinusMm > 0)
        || !Decimals.roundedBy(mm, plusMinusMm).equals(Decimals.roundedBy(lengthMm, plusMinusMm));
  }

  /** How much longer than wished it comes, mm; negative for shorter. */
  public double offMm() {
    return lengthMm - wish.finishedMm();
  }

  /** What a ring has to have inside at the least so that the wires of two links pass it, mm. */
  public double leastRingInsideMm() {
    return 2 * wish.wireMm();
  }

  /** Whether the wires of two neighbors pass the ring between them, or the link where none is. */
  public boolean wiresPass() {
    return wish.ring().isPresent()
        ? wish.ring().get().insideMm() >= leastRingInsideMm() - 1e-9
        : sizes.stream()
            .allMatch(
                size -> size.link().freeInsideMm(wish.wireMm()) >= leastRingInsideMm() - 1e-9);
  }

  /** The link's blank, mm. */
  public double linkBlankMm() {
    return link().blankMm();
  }

  /** What one of the planned links adds along the pull, mm. */
  public double linkInsideMm() {
    return link().insideMm();
  }

  /** The pallion to cut for one joint of the links' wire, mm. */
  public double solderPieceMm() {
    return solder.pieceMm();
  }

  /** The pallions of all joints by their size, those of the links first. */
  public List<SolderPieces> solderPieces() {
    return SolderOfChain.of(wish, sizes, rings, endRings).pieces();
  }

  /** What to mind about the solder placed at a joint, in sentences: nobody typed which strip. */
  public List<String> solderWarnings() {
    String taken =
        "The usual strip is taken, "
            + UnitStyle.METRIC.length(Planning.STRIP_WIDTH_MM)
            + " by "
            + UnitStyle.METRIC.length(Planning.STRIP_THICKNESS_MM)
            + ". ";
    return solder.warnings().stream().map(each -> taken + each).toList();
  }

  /** The link's shape; empty for one known by its measures alone. */
  public Optional<Formed> formed() {
    return link().formed();
  }

  /** Wire in all, spares of links and rings included, mm. */
  public double wireTotalMm() {
    return wireLinksMm + wireRingsMm + wireSpareMm + wireSpareRingsMm + wireEndsMm();
  }

  /**
   * Pieces to cut.
   *
   * @param blanks of each size
   * @param rings that join
   * @param ends rings at the ends
   */
  public record ToCut(List<Integer> blanks, int rings, int ends) {
    public ToCut {
      blanks = List.copyOf(blanks);
    }
  }

  /**
   * What is asked of the cutting for so many blanks and rings of this plan: blanks size by size,
   * then those of the rings at the ends, where there are any.
   *
   * @param all pieces wanted, spares among them
   * @param least as many as would do if none were lost; the rest are spares
   * @param stockMm lengths of the links' wire
   * @param ringStockMm lengths of the rings' wire; empty where they are cut from the links' wire
   */
  public CutOrder order(
      ToCut all, ToCut least, List<Double> stockMm, Optional<List<Double>> ringStockMm) {
    boolean ringed = all.rings() > 0;
    List<BlanksWanted> wanted = new ArrayList<>();
    for (int i = 0; i < sizes.size(); i++) {
      LinksOfSize size = sizes.get(i);
      int blanks = all.blanks().get(i);
      int spare = Math.max(0, blanks - least.blanks().get(i));
      wanted.add(new BlanksWanted(size.link().blankMm(), blanks, size.perRepeat(), spare));
    }
    int spareEnds = Math.max(0, all.ends() - least.ends());
    endRings.ifPresent(
        ring -> wanted.add(new BlanksWanted(ring.blankMm(), all.ends(), 1, spareEnds)));
    int spareRings = Math.max(0, all.rings() - least.rings());
    return new CutOrder(
        stockMm,
        ringed ? ringStockMm : Optional.empty(),
        wanted,
        ringed
            ? Optional.of(
                new RingsWanted(
                    ringTurnMm, wish.coilTailMm(), all.rings(), linksPerRepeat(), spareRings))
            : Optional.empty(),
        wish.kerfMm());
  }

  private static List<Integer> lastFirst(int all, List<Integer> most) {
    Integer[] left = new Integer[most.size()];
    int rest = all;
    for (int i = most.size() - 1; i >= 0; i--) {
      left[i] = i == 0 ? rest : Math.min(rest, most.get(i));
      rest -= left[i];
    }
    return List.of(left);
  }

  /** Of which sizes so many links are from the beginning of the chain; none where all are alike. */
  public Map<String, Integer> inOrder(int count) {
    Map<String, Integer> bySize = new LinkedHashMap<>();
    for (int i = 0; sized() && i < count; i++) {
      bySize.merge(sizeAt(i).name(), 1, Integer::sum);
    }
    return bySize;
  }

  /** The size of the link at that place of the chain, counted from 0. */
  public LinksOfSize sizeAt(int index) {
    int place = index % linksPerRepeat();
    for (LinksOfSize size : sizes) {
      if (place < size.perRepeat()) {
        return size;
      }
      place -= size.perRepeat();
    }
    return sizes.get(0);
  }

  /** The size that is cut next, with so many blanks of each still to cut. */
  public LinksOfSize next(List<Integer> left) {
    for (int i = 0; i < left.size(); i++) {
      if (left.get(i) > 0) {
        return sizes.get(i);
      }
    }
    return sizes.get(sizes.size() - 1);
  }

  /** Wire that one link's blank takes with its kerf in the mean of all sizes, mm. */
  public double linkEachMm() {
    return sized() ? wireLinksMm / links : linkBlankMm() + wish.kerfMm();
  }

  /** Wire that one turn takes of a coil for rings of that inside, mm; as planned if none can be. */
  public double ringTurnMm(double insideMm) {
    return Ring.of(insideMm, wish.ringWireNow())
        .flatMap(ring -> Coil.of(ring, wish.kerfMm()))
        .map(Coil::turnMm)
        .orElse(ringTurnMm);
  }
}
