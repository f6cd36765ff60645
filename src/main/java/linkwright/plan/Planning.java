package linkwright.plan;

import java.util.List;
import java.util.Optional;
import linkwright.cutting.BlankWish;
import linkwright.cutting.CutOrder;
import linkwright.cutting.CutPlan;
import linkwright.cutting.Cutting;
import linkwright.cutting.RingWish;
import linkwright.fit.Fit;
import linkwright.fit.Maker;
import linkwright.fit.Proposal;
import linkwright.link.Bending;
import linkwright.link.Formed;
import linkwright.link.Forming;
import linkwright.quantity.Read;
import linkwright.reference.Metal;
import linkwright.wire.JointKind;
import linkwright.wire.SolderNeed;
import linkwright.wire.WireMass;
import linkwright.wire.WireSection;
import linkwright.yield.BlanksToCut;
import linkwright.yield.Yield;

/** Works a wish out: the one reckoning behind the plan screen, the bench and the plan command. */
public final class Planning {
  /** A joint that closes well: the middle of what solder bridges. Common practice, no source. */
  private static final double JOINT_GAP_MM = 0.05;

  /** A usual strip of hard silver solder, 1 mm by 0.3 mm. Common practice, no source. */
  private static final double STRIP_WIDTH_MM = 1;

  /** Its thickness. */
  private static final double STRIP_THICKNESS_MM = 0.3;

  /** The step that blanks are cut to when the program finds their length. */
  private static final double BLANK_STEP_MM = 0.1;

  /** How long the best cutting is looked for before the best found is taken. */
  private static final long STEPS = 200_000;

  private Planning() {}

  /**
   * The plan for a wish, or a sentence that says what cannot be.
   *
   * <p>Links are as many as come nearest the finished length, the clasp's length taken off first.
   * Wire for links is links × (blank + kerf); for rings rings × turn + tail; spares apart. Masses
   * are of finished pieces: blank × section × density.
   */
  public static Read<Plan> plan(ChainWish wish) {
    return link(wish).flatMap(link -> plan(wish, link));
  }

  /** The link as it will be counted. */
  private record CountedLink(double blankMm, double insideMm, Optional<Formed> formed) {}

  private static Read<CountedLink> link(ChainWish wish) {
    WishedLink link = wish.link();
    if (link.pattern().isEmpty()) {
      double length = link.lengthMm().orElse(0);
      double inside = link.insideMm().orElse(length - 2 * wish.wireMm());
      return inside > 0
          ? Read.good(new CountedLink(link.blankMm().orElse(0), inside, Optional.empty()))
          : Read.bad("The link is no longer than its wire is thick twice over: check its length.");
    }
    return link.blankMm().isPresent() ? formed(wish) : found(wish);
  }

  private static Read<CountedLink> formed(ChainWish wish) {
    WishedLink link = wish.link();
    double blank = link.blankMm().getAsDouble();
    return Forming.form(
            link.pattern().orElseThrow(), wish.wireMm(), blank, link.formersMm(), Bending.TRUE)
        .map(
            formed ->
                new CountedLink(
                    blank, link.insideMm().orElse(formed.insideLengthMm()), Optional.of(formed)));
  }

  /** The blank is not given: it is found for the wished length, springback reckoned with. */
  private static Read<CountedLink> found(ChainWish wish) {
    return proposal(wish)
        .flatMap(
            proposal ->
                Forming.form(
                        wish.link().pattern().orElseThrow(),
                        wish.wireMm(),
                        proposal.blankMm(),
                        proposal.formersMm(),
                        maker(wish).bending())
                    .map(
                        formed ->
                            new CountedLink(
                                proposal.blankMm(),
                                wish.link().insideMm().orElse(formed.insideLengthMm()),
                                Optional.of(formed))));
  }

  private static Read<Proposal> proposal(ChainWish wish) {
    WishedLink link = wish.link();
    double length = link.lengthMm().orElse(0);
    double width = link.widthMm().orElse(length / 2);
    return Fit.next(
        link.pattern().orElseThrow(),
        wish.wireMm(),
        maker(wish),
        new linkwright.fit.LinkSize(length, width),
        FormersOwned.of(link),
        BLANK_STEP_MM);
  }

  /** A maker of whom nothing is known yet but the metal and its temper. */
  public static Maker maker(ChainWish wish) {
    return Maker.unknown(wish.metal().bendingShare(wish.temper()));
  }

  private static Read<Plan> plan(ChainWish wish, CountedLink link) {
    return RingsCounted.of(wish)
        .flatMap(
            rings ->
                Counted.of(wish, link.insideMm(), rings)
                    .flatMap(count -> cut(wish, link, rings, count)));
  }

  private static Read<Plan> cut(
      ChainWish wish, CountedLink link, RingsCounted rings, Counted count) {
    CutOrder order = order(wish, link.blankMm(), blanksToCut(wish, count.links()), rings, count);
    return order.problems().isEmpty()
        ? Read.good(plan(wish, link, rings, count, Cutting.plan(order, new Steps(STEPS)::usedUp)))
        : Read.bad(String.join(" ", order.problems()));
  }

  private static Plan plan(
      ChainWish wish, CountedLink link, RingsCounted rings, Counted count, CutPlan cuts) {
    double density = wish.metal().densityGCm3().value();
    double each = link.blankMm() + wish.kerfMm();
    int blanks = blanksToCut(wish, count.links());
    double wireRings = count.rings() == 0 ? 0 : count.rings() * rings.turnMm() + wish.coilTailMm();
    double area = WireSection.round(wish.wireMm()).areaMm2();
    double massLinks = WireMass.grams(area, count.links() * link.blankMm(), density);
    double massRings =
        count.rings() == 0
            ? 0
            : WireMass.grams(
                WireSection.round(rings.wireMm()).areaMm2(),
                count.rings() * rings.blankMm(),
                density);
    SolderNeed solder = solder(wish.wireMm(), wish.metal());
    int perLink =
        wish.link().pattern().map(pattern -> Math.max(1, pattern.joints().size())).orElse(1);
    int joints = count.links() * perLink + count.rings();
    double massSolder = joints * solder.massG();
    return new Plan(
        wish,
        count.links(),
        count.rings(),
        count.lengthMm(),
        count.oneFewerMm(),
        count.oneMoreMm(),
        count.exactRingInsideMm(),
        link.blankMm(),
        link.insideMm(),
        link.formed(),
        rings.blankMm(),
        rings.turnMm(),
        rings.insideLengthMm(),
        blanks,
        count.links() * each,
        wireRings,
        (blanks - count.links()) * each,
        massLinks,
        massRings,
        massSolder,
        massLinks + massRings + massSolder + wish.claspG(),
        joints,
        solder,
        cuts,
        shortMm(wish, link.blankMm(), blanks, rings, count, cuts),
        PullReckoning.of(wish, link.formed()),
        Remarks.of(wish, link.formed(), rings));
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

  /**
   * Wire lacking. Rings of another wire are counted by themselves: without them no link makes
   * chain, so the plan cuts none, but the links' wire on hand is not lacking for that.
   */
  private static double shortMm(
      ChainWish wish, double blankMm, int blanks, RingsCounted rings, Counted count, CutPlan cuts) {
    if (cuts.complete() || count.rings() == 0 || wish.ringStockMm().isEmpty()) {
      return cuts.shortMm();
    }
    CutOrder links =
        CutOrder.of(
            wish.stockMm(),
            List.of(new BlankWish(blankMm, blanks)),
            Optional.empty(),
            wish.kerfMm());
    CutOrder coils =
        CutOrder.of(
            wish.ringStockMm().get(),
            List.of(),
            Optional.of(RingWish.atBothEnds(rings.turnMm(), wish.coilTailMm(), count.rings())),
            wish.kerfMm());
    return Cutting.plan(links, new Steps(STEPS)::usedUp).shortLinksMm()
        + Cutting.plan(coils, new Steps(STEPS)::usedUp).shortRingsMm();
  }

  private static int blanksToCut(ChainWish wish, int links) {
    return Yield.cut(links, 0, 0, wish.usualLoss(), wish.confidence())
            instanceof BlanksToCut.Blanks enough
        ? enough.blanks()
        : links;
  }

  private static CutOrder order(
      ChainWish wish, double blankMm, int blanks, RingsCounted rings, Counted count) {
    Optional<RingWish> ring =
        count.rings() == 0
            ? Optional.empty()
            : Optional.of(RingWish.atBothEnds(rings.turnMm(), wish.coilTailMm(), count.rings()));
    CutOrder order =
        CutOrder.of(wish.stockMm(), List.of(new BlankWish(blankMm, blanks)), ring, wish.kerfMm());
    return ring.isPresent() ? wish.ringStockMm().map(order::withRingStock).orElse(order) : order;
  }

  /** A budget of steps in place of a clock, which the core has not. */
  private static final class Steps {
    private long left;

    Steps(long allowed) {
      left = allowed;
    }

    boolean usedUp() {
      left--;
      return left < 0;
    }
  }
}
