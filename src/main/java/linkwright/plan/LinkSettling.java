package linkwright.plan;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.fit.Fit;
import linkwright.fit.Proposal;
import linkwright.fit.Reach;
import linkwright.link.Formed;
import linkwright.link.Pattern;
import linkwright.quantity.Read;

/**
 * Settles the link: a followed trial length's inside, else the sample's own measures and blank,
 * else what test pieces taught, else springback. A blank that is typed is bent by the same hands as
 * one that is found, so that a found blank typed back gives the same chain.
 */
final class LinkSettling {
  /** A size read with calipers, one standard deviation, mm. This program's choice. */
  private static final double CALIPER_MM = 0.1;

  /** A hung length read against a rule, one standard deviation, mm. This program's choice. */
  static final double HUNG_MM = 0.3;

  /** How links differ at the least, cut and bent by hand, mm. Common practice, no source. */
  private static final double LEAST_PIECE_SPREAD_MM = 0.1;

  private final ChainWish wish;
  private final LinkBasis basis;

  LinkSettling(ChainWish wish, LinkBasis basis) {
    this.wish = wish;
    this.basis = basis;
  }

  Read<SettledLink> settle() {
    return wish.link().pattern().map(this::patterned).orElseGet(this::measuresAlone);
  }

  private Read<SettledLink> measuresAlone() {
    WishedLink link = wish.link();
    Optional<MeasuredLink> followed = basis.followed();
    OptionalDouble length = first(followed.map(MeasuredLink::lengthMm), link.lengthMm());
    OptionalDouble known = first(followed.map(MeasuredLink::insideMm), link.insideMm());
    double inside = known.orElse(length.orElse(0) - 2 * wish.wireMm());
    if (!(inside > 0)) {
      return Read.bad("The link is no longer than its wire is thick twice over: check its length.");
    }
    OptionalDouble blank = first(followed.map(MeasuredLink::blankMm), link.blankMm());
    return Read.good(
        new SettledLink(
            blank.orElse(0),
            followed.isPresent() ? FigureSource.MEASURED : FigureSource.HERS,
            link.formersMm(),
            length,
            first(followed.map(MeasuredLink::widthMm), link.widthMm()),
            followed.isPresent() ? FigureSource.MEASURED : FigureSource.HERS,
            inside,
            followed.flatMap(LinkSettling::insideOf).isPresent()
                ? FigureSource.MEASURED
                : FigureSource.HERS,
            commonMm(LEAST_PIECE_SPREAD_MM),
            LEAST_PIECE_SPREAD_MM,
            Optional.empty(),
            Optional.empty(),
            followed.isPresent()));
  }

  private static Optional<Double> insideOf(MeasuredLink link) {
    return link.insideMm().isPresent()
        ? Optional.of(link.insideMm().getAsDouble())
        : Optional.empty();
  }

  private static OptionalDouble first(Optional<OptionalDouble> best, OptionalDouble next) {
    return best.filter(OptionalDouble::isPresent).orElse(next);
  }

  /** A blank with the formers to bend it over. */
  private record Blank(
      double mm, Map<String, Double> formersMm, FigureSource from, Optional<Proposal> proposal) {}

  private Read<SettledLink> patterned(Pattern pattern) {
    return blank(pattern)
        .flatMap(
            blank -> {
              Read<Formed> formed =
                  LinkInHands.form(
                      pattern, wish.wireMm(), basis.hands(), blank.mm(), blank.formersMm());
              return formed.isGood() || measuredInside().isPresent()
                  ? Read.good(settled(pattern, blank, formed.found()))
                  : formed.map(any -> settled(pattern, blank, Optional.of(any)));
            })
        .flatMap(
            link ->
                link.insideMm() > 0 || woven().isEmpty()
                    ? Read.good(link)
                    : Read.bad(
                        "So small a ring cannot be folded round its neighbours: take a larger one,"
                            + " or thinner wire."));
  }

  private Read<Blank> blank(Pattern pattern) {
    WishedLink link = wish.link();
    Optional<MeasuredLink> cut =
        basis.followed().filter(followed -> followed.blankMm().isPresent());
    if (cut.isPresent()) {
      Map<String, Double> formers = new HashMap<>(link.formersMm());
      formers.putAll(cut.get().formersMm());
      return Read.good(
          new Blank(
              cut.get().blankMm().getAsDouble(), formers, FigureSource.MEASURED, Optional.empty()));
    }
    if (link.blankMm().isPresent()) {
      double mm = link.blankMm().getAsDouble();
      Map<String, Double> over =
          FormersOwned.closedBy(link)
              ? FormersOwned.closedBy(pattern, wish.wireMm(), basis.hands(), mm)
              : link.formersMm();
      return Read.good(new Blank(mm, over, FigureSource.HERS, Optional.empty()));
    }
    return link.lengthMm().isPresent() ? found(pattern, link) : overItsMandrel(pattern, link);
  }

  /** A round link takes what goes round its mandrel, to the next step of the cutters. */
  private Read<Blank> overItsMandrel(Pattern pattern, WishedLink link) {
    double plenty =
        2 * Math.PI * (wish.wireMm() + link.formersMm().values().stream().reduce(0.0, Double::sum));
    return LinkInHands.form(pattern, wish.wireMm(), basis.hands(), plenty, link.formersMm())
        .map(
            formed -> {
              double steps = formed.shortestBlankMm() / Planning.BLANK_STEP_MM;
              double mm = Math.ceil(steps - 1e-6) * Planning.BLANK_STEP_MM;
              return new Blank(mm, link.formersMm(), reckoned(), Optional.empty());
            });
  }

  private Read<Blank> found(Pattern pattern, WishedLink link) {
    double length = link.lengthMm().orElse(0);
    Read<Proposal> proposal =
        proposal(pattern, length, link.widthMm().orElse(pattern.isRing() ? length : length / 2));
    boolean anyWidth = link.widthMm().isEmpty();
    if (anyWidth && proposal.found().filter(next -> next.reach() != Reach.REACHED).isPresent()) {
      // No width was wished: whatever comes of the length is none that was missed.
      proposal = proposal(pattern, length, proposal.orThrow().expected().widthMm());
    }
    return proposal.map(
        next -> new Blank(next.blankMm(), next.formersMm(), reckoned(), Optional.of(next)));
  }

  /** Whether a link comes as wished over the formers there are, and no wire presses into wire. */
  boolean reaches() {
    WishedLink link = wish.link();
    return link.pattern().isEmpty()
        || link.blankMm().isPresent()
        || link.lengthMm().isEmpty()
        || found(link.pattern().get(), link)
            .found()
            .flatMap(Blank::proposal)
            .filter(next -> next.reach() == Reach.REACHED && next.overlapMm() == 0)
            .isPresent();
  }

  /** Formers that would do where those there are do not; empty where none would. */
  Optional<Map<String, Double>> instead() {
    return wish.link()
        .pattern()
        .flatMap(pattern -> found(pattern, wish.link()).found())
        .flatMap(Blank::proposal)
        .flatMap(Proposal::instead);
  }

  private Read<Proposal> proposal(Pattern pattern, double lengthMm, double widthMm) {
    return Fit.next(
        pattern,
        wish.wireMm(),
        basis.hands(),
        new linkwright.fit.LinkSize(lengthMm, widthMm),
        basis.ownedMm(),
        Planning.BLANK_STEP_MM);
  }

  private FigureSource reckoned() {
    return basis.taught() ? FigureSource.LEARNED : FigureSource.RECKONED;
  }

  private SettledLink settled(Pattern pattern, Blank blank, Optional<Formed> formed) {
    Optional<MeasuredLink> followed = basis.followed();
    OptionalDouble length = first(followed.map(MeasuredLink::lengthMm), of(formed, true));
    boolean measured =
        followed.map(MeasuredLink::lengthMm).filter(OptionalDouble::isPresent).isPresent();
    LinkInHands.LengthSpread spread =
        LinkInHands.spread(pattern, wish.wireMm(), basis.hands(), blank.mm(), blank.formersMm());
    double piece = Math.max(LEAST_PIECE_SPREAD_MM, spread.pieceMm());
    Inside inside = inside(formed, length, measured);
    return new SettledLink(
        blank.mm(),
        blank.from(),
        blank.formersMm(),
        length,
        first(followed.map(MeasuredLink::widthMm), of(formed, false)),
        measured ? FigureSource.MEASURED : reckoned(),
        inside.mm(),
        inside.from(),
        inside.from() == FigureSource.MEASURED || inside.from() == FigureSource.HERS
            ? commonMm(piece)
            : Math.hypot(spread.commonMm(), inside.mm() * woven().map(Woven::off).orElse(0.0)),
        piece,
        formed,
        blank.proposal(),
        followed.isPresent());
  }

  private static OptionalDouble of(Optional<Formed> formed, boolean length) {
    return formed
        .map(link -> OptionalDouble.of(length ? link.lengthMm() : link.widthMm()))
        .orElse(OptionalDouble.empty());
  }

  private record Inside(double mm, FigureSource from) {}

  private Inside inside(Optional<Formed> formed, OptionalDouble lengthMm, boolean measured) {
    if (insideKnown().isPresent()) {
      return new Inside(insideKnown().getAsDouble(), FigureSource.MEASURED);
    }
    if (measured) {
      double ends =
          formed.map(link -> link.lengthMm() - link.insideLengthMm()).orElse(2 * wish.wireMm());
      double inside = lengthMm.orElseThrow() - ends;
      return woven()
          .map(woven -> new Inside(woven.addsMm(inside, wish.wireMm()), reckoned()))
          .orElseGet(() -> new Inside(inside, FigureSource.MEASURED));
    }
    if (wish.link().insideMm().isPresent()) {
      return new Inside(wish.link().insideMm().getAsDouble(), FigureSource.HERS);
    }
    double inside = formed.orElseThrow().insideLengthMm();
    return new Inside(
        woven().map(woven -> woven.addsMm(inside, wish.wireMm())).orElse(inside), reckoned());
  }

  /** What a link adds by its routine; not where she says herself what it adds. */
  private Optional<Woven> woven() {
    return wish.link().woven().filter(known -> wish.link().insideMm().isEmpty());
  }

  private OptionalDouble insideKnown() {
    return first(basis.followed().map(MeasuredLink::insideMm), OptionalDouble.empty());
  }

  /** Whether something but the shape says what the link adds. */
  private OptionalDouble measuredInside() {
    return first(
        Optional.of(insideKnown()),
        first(basis.followed().map(MeasuredLink::lengthMm), wish.link().insideMm()));
  }

  /** The doubt that all links share once one, or a hung length of them, was measured. */
  private double commonMm(double pieceMm) {
    int hung = basis.followed().map(MeasuredLink::hungLinks).orElse(0);
    return hung > 0 ? hungSpreadMm(pieceMm, hung) : Math.hypot(CALIPER_MM, pieceMm);
  }

  /** The doubt of one link's inside, from so many of them hung and measured together. */
  static double hungSpreadMm(double pieceMm, int links) {
    return Math.hypot(HUNG_MM / links, pieceMm / Math.sqrt(links));
  }
}
