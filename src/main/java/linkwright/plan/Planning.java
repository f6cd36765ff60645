package linkwright.plan;

import java.util.List;
import java.util.Optional;
import linkwright.fit.Maker;
import linkwright.quantity.Read;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Metal;
import linkwright.wire.JointKind;
import linkwright.wire.SolderNeed;
import linkwright.wire.WireMass;
import linkwright.yield.BlanksToCut;
import linkwright.yield.Yield;

/** Works a wish out, whatever wire is on hand: how many, how long, how much of everything. */
public final class Planning {
  /** A joint that closes well: the middle of what solder bridges. Common practice, no source. */
  static final double JOINT_GAP_MM = 0.05;

  /** A usual strip of hard silver solder, 1 mm by 0.3 mm. Common practice, no source. */
  static final double STRIP_WIDTH_MM = 1;

  /** Its thickness. */
  static final double STRIP_THICKNESS_MM = 0.3;

  /** The step that blanks are cut to, mm; a stop at the cutters is set no finer. */
  public static final double BLANK_STEP_MM = 0.1;

  private Planning() {}

  /**
   * The plan for a wish, or a sentence that says what cannot be.
   *
   * <p>Links are as many as come nearest the finished length, the clasp's length taken off first.
   * Wire for links is links × (blank + kerf); for rings rings × turn + tail; spares apart. Masses
   * are of finished pieces: blank × section × density.
   */
  public static Read<Plan> plan(ChainWish wish) {
    return plan(wish, LinkBasis.untried(wish));
  }

  /** The plan for a wish, with what is known of the link beyond it. */
  public static Read<Plan> plan(ChainWish wish, LinkBasis basis) {
    return ChainLinks.settle(wish, basis)
        .flatMap(
            sizes ->
                ChainLinks.problem(sizes)
                    .map(sentence -> Read.<Plan>bad(sentence))
                    .orElseGet(() -> plan(wish, basis, sizes)));
  }

  /** A maker of whom nothing is known yet but the metal and its temper. */
  public static Maker maker(ChainWish wish) {
    return Maker.unknown(wish.metal().bendingShare(wish.temper()));
  }

  private static Read<Plan> plan(ChainWish wish, LinkBasis basis, List<ChainLinks.Sized> sizes) {
    return RingsCounted.of(wish)
        .flatMap(
            rings ->
                endRings(wish)
                    .flatMap(
                        ends ->
                            WishedCount.of(wish, sizes, rings, ends)
                                .flatMap(
                                    count -> counted(wish, basis, sizes, rings, ends, count))));
  }

  private static Read<Optional<EndRings>> endRings(ChainWish wish) {
    return wish.endRingMm().isEmpty()
        ? Read.good(Optional.empty())
        : EndRings.of(wish, wish.endRingMm().getAsDouble()).map(Optional::of);
  }

  /** Sizes that no wire can be cut to are told here, whatever wire there is. */
  private static Read<Plan> counted(
      ChainWish wish,
      LinkBasis basis,
      List<ChainLinks.Sized> sizes,
      RingsCounted rings,
      Optional<EndRings> ends,
      WishedCount count) {
    if (Yield.cut(count.links(), 0, 0, wish.usualLoss(), wish.confidence())
        instanceof BlanksToCut.OutOfReach never) {
      return Read.bad(never.sentence());
    }
    Plan plan = plan(wish, basis, sizes, rings, ends, count);
    List<String> problems = Cuttable.problems(plan);
    return problems.isEmpty() ? Read.good(plan) : Read.bad(String.join(" ", problems));
  }

  private static Plan plan(
      ChainWish wish,
      LinkBasis basis,
      List<ChainLinks.Sized> settled,
      RingsCounted rings,
      Optional<EndRings> ends,
      WishedCount count) {
    double density = wish.metal().densityGCm3().value();
    int repeats = count.links() / ChainLinks.links(settled);
    List<LinksOfSize> sizes =
        settled.stream()
            .map(
                size ->
                    LinksOfSize.of(
                        wish,
                        size.name(),
                        size.perRepeat(),
                        size.perRepeat() * repeats,
                        toCut(wish, size.perRepeat() * repeats),
                        size.link()))
            .toList();
    int ringsToCut = toCut(wish, count.rings());
    double wireRings = count.rings() == 0 ? 0 : count.rings() * rings.turnMm() + wish.coilTailMm();
    double massLinks = sizes.stream().mapToDouble(LinksOfSize::massG).sum();
    double massRings =
        (count.rings() == 0
                ? 0
                : WireMass.grams(wish.ringAreaMm2(), count.rings() * rings.blankMm(), density))
            + ends.map(EndRings::massG).orElse(0.0);
    SolderOfChain solder = SolderOfChain.of(wish, sizes, count.rings(), ends);
    return new Plan(
        wish,
        count.links(),
        count.rings(),
        count.lengthMm(),
        LengthDoubt.ofChain(sizes),
        LengthDoubt.afterTrial(sizes, basis),
        count.oneFewerMm(),
        count.oneMoreMm(),
        count.exactRingInsideMm(),
        count.tightRingInsideMm(),
        sizes,
        ends,
        rings.blankMm(),
        rings.turnMm(),
        rings.insideLengthMm(),
        sizes.stream().mapToInt(LinksOfSize::toCut).sum(),
        ringsToCut,
        sizes.stream().mapToDouble(size -> size.links() * size.eachMm(wish)).sum(),
        wireRings,
        sizes.stream().mapToDouble(size -> (size.toCut() - size.links()) * size.eachMm(wish)).sum(),
        (ringsToCut - count.rings()) * rings.turnMm(),
        massLinks,
        massRings,
        solder.fillsG(),
        solder.placedG(),
        massLinks + massRings + solder.placedG() + wish.claspG(),
        solder.joints(),
        solder(wish.wire().roundOfAreaMm(), wish.metal()),
        PullReckoning.of(wish, sizes),
        Remarks.of(wish, sizes, rings, UnitStyle.METRIC));
  }

  /** What one butted joint of that wire takes. */
  static SolderNeed solder(double wireMm, Metal metal) {
    return SolderNeed.of(
        wireMm,
        JOINT_GAP_MM,
        SolderNeed.USUAL_FILLET_SHARE,
        STRIP_WIDTH_MM,
        STRIP_THICKNESS_MM,
        metal.densityGCm3().value(),
        JointKind.BUTT);
  }

  /** Pieces so that enough of them come good with the wished chance; as many if none is enough. */
  static int toCut(ChainWish wish, int wanted) {
    return toCut(wanted, wish.usualLoss(), wish.confidence());
  }

  /**
   * The same with a loss of its own.
   *
   * @param lossShare the share that is lost, 0 to 1
   * @param confidence the chance wished that enough come good, 0 to 1
   */
  static int toCut(int wanted, double lossShare, double confidence) {
    return Yield.cut(wanted, 0, 0, lossShare, confidence) instanceof BlanksToCut.Blanks enough
        ? enough.blanks()
        : wanted;
  }
}
