package linkwright.standing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.cutting.BlankWish;
import linkwright.cutting.Cut;
import linkwright.cutting.CutOrder;
import linkwright.cutting.CutPlan;
import linkwright.cutting.Cutting;
import linkwright.cutting.RingWish;
import linkwright.job.JobState;
import linkwright.plan.ChainWish;
import linkwright.plan.Plan;

/**
 * How the wire stands: every length with what was cut from it, and how the pieces that are still
 * missing are best cut from what is left.
 *
 * @param links the links' wire, in the order in which it is used up
 * @param rings the rings' wire; empty where the rings are cut from the links' wire
 * @param toCut links and rings still to be cut
 * @param missing links and rings for which the wire will not do
 * @param shortLinksMm links' wire missing, mm
 * @param shortRingsMm rings' wire missing, mm; the same wire as the links' where it is shared
 */
public record WireStand(
    List<Bar> links,
    Optional<List<Bar>> rings,
    Pieces toCut,
    Pieces missing,
    double shortLinksMm,
    double shortRingsMm) {
  /** Search steps that a key may take; the best plan found by then is shown. */
  private static final int STEPS = 20_000;

  public WireStand {
    links = List.copyOf(links);
    rings = rings.map(List::copyOf);
  }

  /** So many links and rings. */
  public record Pieces(int links, int rings) {
    /** Whether there is none of either. */
    public boolean none() {
      return links == 0 && rings == 0;
    }
  }

  /**
   * One length of wire.
   *
   * @param mm its length when it came, mm
   * @param cutMm cut from it so far, mm
   * @param lostMm lost from it, mm
   * @param next what is to be cut from it
   * @param nextLinksMm wire that these links take, kerf included, mm
   * @param nextRingsMm wire that these rings take, the coil's tail included, mm
   */
  public record Bar(
      double mm, double cutMm, double lostMm, Pieces next, double nextLinksMm, double nextRingsMm) {
    /** What is on hand of it now, mm. */
    public double leftMm() {
      return Math.max(0, mm - cutMm - lostMm);
    }

    /** What will be over, mm. */
    public double overMm() {
      return Math.max(0, leftMm() - nextLinksMm - nextRingsMm);
    }
  }

  /** How the wire of the job stands; empty without a plan. */
  public static Optional<WireStand> of(Standing standing, JobState state) {
    return standing.counted().plan().map(plan -> of(plan, standing, state));
  }

  private static WireStand of(Plan plan, Standing standing, JobState state) {
    ChainWish wish = plan.wish();
    List<WireLengths> links = WireLengths.ofLinks(wish, state.wire());
    Optional<List<WireLengths>> rings = WireLengths.ofRings(wish, state.wire());
    Pieces toCut =
        new Pieces(toCut(standing, "link"), plan.rings() == 0 ? 0 : toCut(standing, "ring"));
    BlankWish blanks = new BlankWish(plan.linkBlankMm(), toCut.links());
    Optional<RingWish> ring = ring(plan, toCut, rings.isPresent());
    // Wires apart are planned apart: links are no worse off for want of the rings' wire.
    CutPlan ofLinks =
        best(
            CutOrder.of(
                left(links),
                List.of(blanks),
                rings.isPresent() ? Optional.empty() : ring,
                wish.kerfMm()));
    Optional<CutPlan> ofRings =
        rings.map(lengths -> best(CutOrder.of(left(lengths), List.of(), ring, wish.kerfMm())));
    int shortLinks = ofLinks.shortBlanks().stream().mapToInt(Integer::intValue).sum();
    int shortRings = ofLinks.shortRings() + ofRings.map(CutPlan::shortRings).orElse(0);
    return new WireStand(
        bars(links, ofLinks),
        rings.map(lengths -> bars(lengths, ofRings.orElseThrow())),
        toCut,
        new Pieces(shortLinks, shortRings),
        ofLinks.shortLinksMm(),
        ofLinks.shortRingsMm() + ofRings.map(CutPlan::shortRingsMm).orElse(0.0));
  }

  private static int toCut(Standing standing, String piece) {
    StillToDo left = standing.left().get(piece);
    return left == null ? 0 : left.toCut().orElse(left.more());
  }

  /** Where rings come from the links' wire, each link still to be cut takes a ring with it. */
  private static Optional<RingWish> ring(Plan plan, Pieces toCut, boolean apart) {
    if (toCut.rings() == 0) {
      return Optional.empty();
    }
    boolean paired = !apart && toCut.rings() >= toCut.links();
    return Optional.of(
        new RingWish(
            plan.ringTurnMm(),
            plan.wish().coilTailMm(),
            toCut.rings(),
            paired ? 1 : 0,
            paired ? toCut.rings() - toCut.links() : toCut.rings()));
  }

  private static CutPlan best(CutOrder order) {
    int[] steps = {STEPS};
    return Cutting.plan(order, () -> steps[0]-- <= 0);
  }

  private static List<Double> left(List<WireLengths> lengths) {
    return lengths.stream().map(WireLengths::leftMm).toList();
  }

  private static List<Bar> bars(List<WireLengths> lengths, CutPlan cuts) {
    List<Bar> bars = new ArrayList<>();
    for (int i = 0; i < lengths.size(); i++) {
      int place = i;
      Optional<Cut> cut = cuts.cuts().stream().filter(each -> each.place() == place).findFirst();
      WireLengths length = lengths.get(i);
      bars.add(
          new Bar(
              length.mm(),
              length.cutMm(),
              length.lostMm(),
              new Pieces(
                  cut.map(each -> each.blanks().stream().mapToInt(n -> n).sum()).orElse(0),
                  cut.map(Cut::rings).orElse(0)),
              cut.map(each -> each.piecesMm() + each.kerfsMm()).orElse(0.0),
              cut.map(Cut::coilMm).orElse(0.0)));
    }
    return bars;
  }

  /** Wire missing in all, mm. */
  public double shortMm() {
    return shortLinksMm + shortRingsMm;
  }

  /** What is on hand of that wire now, mm. */
  public static double leftMm(List<Bar> bars) {
    return bars.stream().mapToDouble(Bar::leftMm).sum();
  }

  /** What was cut of that wire, mm. */
  public static double cutMm(List<Bar> bars) {
    return bars.stream().mapToDouble(Bar::cutMm).sum();
  }

  /** What was lost of that wire, mm. */
  public static double lostMm(List<Bar> bars) {
    return bars.stream().mapToDouble(Bar::lostMm).sum();
  }

  /** What will be over of that wire once all that can be cut is cut, mm. */
  public static double overMm(List<Bar> bars) {
    return bars.stream().mapToDouble(Bar::overMm).sum();
  }
}
