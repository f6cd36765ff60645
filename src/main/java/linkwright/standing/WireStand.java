package linkwright.standing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import linkwright.cutting.CutOrder;
import linkwright.cutting.CutPlan;
import linkwright.cutting.Cutting;
import linkwright.cutting.LengthCut;
import linkwright.job.WireLedger;
import linkwright.plan.EndRings;
import linkwright.plan.Plan;
import linkwright.routine.PieceKind;
import linkwright.standing.stock.WireLengths;

/**
 * How the wire stands: every length with what was cut from it, and how the pieces that are still
 * missing are best cut from what is left.
 *
 * @param links the links' wire, in the order in which it is used up
 * @param rings the rings' wire; empty where the rings are cut from the links' wire
 * @param toCut links and rings still to be cut
 * @param blanks of the links, how many of each size
 * @param missing links and rings for which the wire will not do
 * @param shortLinksMm links' wire missing, mm
 * @param shortRingsMm rings' wire missing, mm; the same wire as the links' where it is shared
 */
public record WireStand(
    List<Bar> links,
    Optional<List<Bar>> rings,
    LinksAndRings toCut,
    List<Integer> blanks,
    LinksAndRings missing,
    double shortLinksMm,
    double shortRingsMm) {
  /** More of a kind is not cut for one chain; no cutting is planned for more of both together. */
  private static final int MOST_PIECES = CutOrder.MOST_PIECES / 2;

  /** Less than any saw or cutter leaves, mm; our own choice. */
  private static final double NOTHING_MM = 0.05;

  public WireStand {
    links = List.copyOf(links);
    rings = rings.map(List::copyOf);
    blanks = List.copyOf(blanks);
  }

  /** So many links and rings. */
  public record LinksAndRings(int links, int rings) {
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
   * @param blanks blanks to be cut from it of each size
   * @param ends of the rings, those for the ends of the chain, which come off no coil
   */
  public record Bar(
      double mm,
      double cutMm,
      double lostMm,
      LinksAndRings next,
      double nextLinksMm,
      double nextRingsMm,
      List<Integer> blanks,
      int ends) {
    public Bar {
      blanks = List.copyOf(blanks);
    }

    /** Whether nothing of it can be cut any more. */
    public boolean usedUp() {
      return leftMm() < NOTHING_MM;
    }

    /** What is on hand of it now, mm. */
    public double leftMm() {
      return Math.max(0, mm - cutMm - lostMm);
    }

    /** What will be over, mm. */
    public double overMm() {
      return Math.max(0, leftMm() - nextLinksMm - nextRingsMm);
    }
  }

  /**
   * How the wire of a job stands.
   *
   * @param plan its plan
   * @param left kind of piece → what is still to do
   * @param ledger wire that came and went
   */
  static WireStand of(Plan plan, Map<PieceKind, StillToDo> left, WireLedger ledger) {
    List<WireLengths> links = WireLengths.ofLinks(plan, ledger);
    Optional<List<WireLengths>> rings = WireLengths.ofRings(plan, ledger);
    LinksAndRings toCut =
        new LinksAndRings(
            toCut(left, PieceKind.LINK), plan.rings() == 0 ? 0 : toCut(left, PieceKind.RING));
    int ends = endRings(plan, left, toCut);
    List<Integer> blanks = blanks(plan, left, StillToDo::toCutBySize);
    CutPlan cuts =
        Cutting.plan(
            plan.order(
                new Plan.ToCut(blanks, plan.rings() == 0 ? 0 : toCut.rings() - ends, ends),
                least(plan, left, ends),
                left(links),
                rings.map(lengths -> left(lengths))));
    int sizes = plan.sizes().size();
    return new WireStand(
        bars(plan, links, cuts, false),
        rings.map(lengths -> bars(plan, lengths, cuts, true)),
        toCut,
        blanks,
        new LinksAndRings(
            sum(cuts.shortBlanks().subList(0, sizes)),
            cuts.shortRings() + sum(cuts.shortBlanks().subList(sizes, cuts.shortBlanks().size()))),
        cuts.shortLinksMm(),
        cuts.shortRingsMm());
  }

  /** What would do if no further piece were lost. */
  private static Plan.ToCut least(Plan plan, Map<PieceKind, StillToDo> left, int ends) {
    int rings = least(left, PieceKind.RING);
    int atEnds = Math.min(ends, EndRings.COUNT);
    if (plan.rings() > 0) {
      atEnds = Math.min(atEnds, rings);
    }
    return new Plan.ToCut(
        blanks(plan, left, StillToDo::leastBySize), Math.max(0, rings - atEnds), atEnds);
  }

  /**
   * So many of each size, those named first before what is more than any cutting is planned for.
   */
  private static List<Integer> blanks(
      Plan plan, Map<PieceKind, StillToDo> left, Function<StillToDo, List<Integer>> bySize) {
    StillToDo todo = left.get(PieceKind.LINK);
    List<Integer> blanks = new ArrayList<>();
    int room = MOST_PIECES;
    for (int i = 0; i < plan.sizes().size(); i++) {
      int here = todo == null ? 0 : Math.min(room, bySize.apply(todo).get(i));
      blanks.add(here);
      room -= here;
    }
    return blanks;
  }

  private static int least(Map<PieceKind, StillToDo> left, PieceKind piece) {
    StillToDo todo = left.get(piece);
    return todo == null ? 0 : Math.max(0, todo.more() - todo.inWork());
  }

  private static int sum(List<Integer> counts) {
    return counts.stream().mapToInt(Integer::intValue).sum();
  }

  /** The rings at the ends are cut last; without other rings, until every link is good. */
  private static int endRings(Plan plan, Map<PieceKind, StillToDo> left, LinksAndRings toCut) {
    if (plan.endRings().isEmpty()) {
      return 0;
    }
    StillToDo links = left.get(PieceKind.LINK);
    int ends = plan.endRings().get().toCut();
    return plan.rings() > 0
        ? Math.min(ends, toCut.rings())
        : links == null || links.more() > 0 ? ends : 0;
  }

  private static int toCut(Map<PieceKind, StillToDo> left, PieceKind piece) {
    StillToDo todo = left.get(piece);
    return todo == null ? 0 : Math.min(MOST_PIECES, todo.toCutOrAsMany());
  }

  private static List<Double> left(List<WireLengths> lengths) {
    return lengths.stream().map(WireLengths::leftMm).toList();
  }

  private static List<Bar> bars(
      Plan plan, List<WireLengths> lengths, CutPlan cuts, boolean ofRings) {
    int sizes = plan.sizes().size();
    List<Bar> bars = new ArrayList<>();
    for (int i = 0; i < lengths.size(); i++) {
      int place = i;
      Optional<LengthCut> cut =
          cuts.cuts().stream()
              .filter(each -> each.fromRingStock() == ofRings && each.place() == place)
              .findFirst();
      WireLengths length = lengths.get(i);
      int ends = cut.map(each -> sum(each.blanks().subList(sizes, each.blanks().size()))).orElse(0);
      double endsMm = ends * plan.endRings().map(one -> one.eachMm(plan.wish())).orElse(0.0);
      bars.add(
          new Bar(
              length.mm(),
              length.cutMm(),
              length.lostMm(),
              new LinksAndRings(
                  cut.map(each -> sum(each.blanks().subList(0, sizes))).orElse(0),
                  ends + cut.map(LengthCut::rings).orElse(0)),
              cut.map(each -> Math.max(0, each.piecesMm() + each.kerfsMm() - endsMm)).orElse(0.0),
              endsMm + cut.map(LengthCut::coilMm).orElse(0.0),
              cut.map(each -> each.blanks().subList(0, sizes)).orElse(List.of()),
              ends));
    }
    return bars;
  }

  /** Whether anything was said of wire on hand, so that some can be missed. */
  public boolean known() {
    return !links.isEmpty() || rings.filter(lengths -> !lengths.isEmpty()).isPresent();
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
