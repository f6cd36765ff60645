package linkwright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import linkwright.link.Formed;
import linkwright.link.Pattern;
import linkwright.link.PatternFiles;

/** Makers of one world make test pieces for a wish; beside each an oracle that knows her. */
final class MakersSimulation {
  static final double STEP_MM = 0.5;
  private static final double ROOM_MM = 1;

  private final World world;
  private final Pattern pattern;
  private final Random random;
  private final int pieces;
  private final List<List<Miss>> fitted = new ArrayList<>();
  private final List<List<Miss>> oracle = new ArrayList<>();
  private int asked;

  /** Error of one piece: of its length, as a share, and in how many spreads. */
  private record Miss(double length, double spreads) {}

  MakersSimulation(World world, int pieces, long seed) {
    this.world = world;
    this.pattern = PatternFiles.named(world.patternId());
    this.random = new Random(seed);
    this.pieces = pieces;
    for (int i = 0; i <= pieces; i++) {
      fitted.add(new ArrayList<>());
      oracle.add(new ArrayList<>());
    }
  }

  /** Lets so many makers make their pieces. */
  MakersSimulation run(int makers) {
    for (int i = 0; i < makers; i++) {
      one();
    }
    return this;
  }

  /** Error of the length after so many pieces, at a share of all makers. */
  double error(int after, double share) {
    return quantile(fitted.get(after), share);
  }

  /** The same over the oracle's. */
  double ratio(int after, double share) {
    return error(after, share) / quantile(oracle.get(after), share);
  }

  /** For how many the stated spread held. */
  double holds(int after) {
    return fitted.get(after).stream().filter(miss -> miss.spreads() <= 1).count()
        / (double) fitted.get(after).size();
  }

  String table() {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i <= pieces; i++) {
      text.append(
          String.format(
              Locale.ROOT,
              "%-10s %-18s after %d  %5.2f / %5.2f %%   ratio %4.2f / %4.2f   holds %4.1f %%%n",
              world.patternId(),
              world.name(),
              i,
              100 * error(i, 0.5),
              100 * error(i, 0.9),
              ratio(i, 0.5),
              ratio(i, 0.9),
              100 * holds(i)));
    }
    return text + "  asked about " + asked + " pieces";
  }

  private static double quantile(List<Miss> misses, double share) {
    double[] sorted = misses.stream().mapToDouble(Miss::length).sorted().toArray();
    return sorted[(int) Math.floor(share * sorted.length)];
  }

  private void one() {
    TrueMaker hands = new TrueMaker(pattern, world, random);
    Optional<LinkSize> reached = reached(hands);
    while (reached.isEmpty()) {
      hands = new TrueMaker(pattern, world, random);
      reached = reached(hands);
    }
    LinkSize wish = reached.get();
    TrueMaker maker = hands;
    Oracle knows = new Oracle(maker, world, STEP_MM);
    List<Tried> tried = new ArrayList<>();
    for (int piece = 0; piece <= pieces; piece++) {
      TrueMaker.Slip slip = TrueMaker.Slip.of(random);
      int at = piece;
      Maker believed = Fit.learn(pattern, TrueMaker.WIRE_MM, prior(), tried, wish);
      Proposal proposal =
          Fit.next(pattern, TrueMaker.WIRE_MM, believed, wish, world.owned(), STEP_MM).orThrow();
      Optional<Formed> made = maker.make(proposal.blankMm(), proposal.formersMm(), piece, slip);
      fitted
          .get(piece)
          .add(
              made.map(
                      link ->
                          new Miss(
                              Math.abs(link.lengthMm() / wish.lengthMm() - 1),
                              Math.abs(link.lengthMm() - proposal.expected().lengthMm())
                                  / proposal.expected().lengthSpreadMm()))
                  .orElse(new Miss(1, 100)));
      Optional<Oracle.Choice> known = knows.best(wish, piece);
      Optional<Formed> best = known.flatMap(k -> maker.make(k.blankMm(), k.formersMm(), at, slip));
      oracle
          .get(piece)
          .add(
              new Miss(
                  best.map(link -> Math.abs(link.lengthMm() / wish.lengthMm() - 1)).orElse(1.0),
                  0));
      tried.add(read(made, proposal, piece, wish));
    }
  }

  private Tried read(Optional<Formed> made, Proposal proposal, int piece, LinkSize wish) {
    double noiseL = random.nextGaussian();
    double noiseW = random.nextGaussian();
    double sign = random.nextBoolean() ? 1.5 : -1.5;
    if (made.isEmpty()) {
      return ShortPieces.judged(proposal.blankMm(), proposal.formersMm(), List.of(Verdict.LONGER));
    }
    Formed link = made.get();
    if (world.verdictsOnly()) {
      return ShortPieces.judged(
          proposal.blankMm(),
          proposal.formersMm(),
          verdicts(
              link.lengthMm() / wish.lengthMm() + 0.02 * noiseL,
              link.widthMm() / wish.widthMm() + 0.02 * noiseW));
    }
    double length = link.lengthMm() + 0.1 * noiseL;
    double width = link.widthMm() + 0.1 * noiseW;
    double read = piece == world.misread() ? length + sign : length;
    Tried said = ShortPieces.measured(proposal.blankMm(), proposal.formersMm(), read, width);
    boolean asks =
        proposal.expected().misfitOfLength(said.lengthMm()).isPresent()
            || proposal.expected().misfitOfWidth(said.widthMm()).isPresent();
    asked += asks ? 1 : 0;
    return asks && world.measuredAgain()
        ? ShortPieces.measured(proposal.blankMm(), proposal.formersMm(), length, width)
        : said;
  }

  private static List<Verdict> verdicts(double length, double width) {
    List<Verdict> said = new ArrayList<>();
    if (length < 0.97) {
      said.add(Verdict.LONGER);
    }
    if (length > 1.03) {
      said.add(Verdict.SHORTER);
    }
    if (width < 0.94) {
      said.add(Verdict.WIDER);
    }
    if (width > 1.06) {
      said.add(Verdict.NARROWER);
    }
    return said.isEmpty() ? List.of(Verdict.RIGHT) : said;
  }

  private Maker prior() {
    return Maker.unknown(TrueMaker.STRESS_MPA / TrueMaker.MODULUS_MPA);
  }

  private Optional<LinkSize> reached(TrueMaker hands) {
    for (int i = 0; i < 100; i++) {
      LinkSize wish = wish();
      Optional<Oracle.Choice> known = new Oracle(hands, world, STEP_MM).best(wish, 0);
      if (known.isPresent()
          && Math.abs(known.get().link().lengthMm() / wish.lengthMm() - 1) <= 0.03
          && Math.abs(known.get().link().widthMm() / wish.widthMm() - 1) <= 0.08
          && (pattern.closed()
              || known.get().blankMm() - known.get().link().shortestBlankMm() >= ROOM_MM)) {
        return Optional.of(wish);
      }
    }
    return Optional.empty();
  }

  private LinkSize wish() {
    double length = 12 + 6 * random.nextDouble();
    double width = 4.5 + 1.7 * random.nextDouble();
    return world.isRound() ? new LinkSize(width, width) : new LinkSize(length, width);
  }
}
