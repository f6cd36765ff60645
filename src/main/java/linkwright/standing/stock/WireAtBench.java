package linkwright.standing.stock;

import java.util.List;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.plan.ChainWish;
import linkwright.plan.Plan;
import linkwright.routine.PieceKind;
import linkwright.wire.WireMass;

/**
 * Wire that came to a job by an entry and is still here by its book: neither cut nor lost, neither
 * given back nor weighed in. Of wire that only its plan names nothing is asked: it came from no
 * account.
 *
 * @param lengthMm how long, mm
 * @param massG how heavy, g
 */
public record WireAtBench(double lengthMm, double massG) {
  /** All of it is told for. */
  public static final WireAtBench NONE = new WireAtBench(0, 0);

  /** What is still here; where wire was weighed in, that is all that there was. */
  public static WireAtBench of(Plan plan, JobState state) {
    boolean told = state.accounts().weighedIn().wireReturnedG().isPresent();
    boolean weighedOut = state.accounts().weighedOutG() > 0;
    if (told || (state.wire().added().isEmpty() && !weighedOut)) {
      return NONE;
    }
    ChainWish wish = plan.wish();
    boolean ofTwo = wish.ringStockMm().isPresent();
    List<WireLengths> rings = WireLengths.ofRings(plan, state.wire()).orElse(List.of());
    double links = leftMm(WireLengths.ofLinks(plan, state.wire()));
    double ringsMm = leftMm(rings);
    if (!weighedOut) {
      double ringsCame = ofTwo ? came(state, true) : 0;
      links = Math.min(links, came(state, false) + (ofTwo ? 0 : came(state, true)));
      ringsMm = Math.min(ringsMm, ringsCame);
    }
    double density = wish.metal().densityGCm3().value();
    return new WireAtBench(
        links + ringsMm,
        WireMass.grams(wish.wireAreaMm2(), links, density)
            + WireMass.grams(wish.ringAreaMm2(), ringsMm, density));
  }

  /**
   * How heavy what was cut or lost is, g, where nothing was weighed out and the plan alone names
   * the wire; 0 else, for that wire is in an account already.
   */
  public static double cutOfPlanG(Plan plan, JobState state) {
    if (!state.wire().added().isEmpty() || state.accounts().weighedOutG() > 0) {
      return 0;
    }
    ChainWish wish = plan.wish();
    double density = wish.metal().densityGCm3().value();
    double links = goneMm(WireLengths.ofLinks(plan, state.wire()));
    double rings = goneMm(WireLengths.ofRings(plan, state.wire()).orElse(List.of()));
    return WireMass.grams(wish.wireAreaMm2(), links, density)
        + WireMass.grams(wish.ringAreaMm2(), rings, density);
  }

  private static double goneMm(List<WireLengths> lengths) {
    return lengths.stream().mapToDouble(length -> length.cutMm() + length.lostMm()).sum();
  }

  /**
   * Whether a link or more could be made of it: what is shorter is scrap that nobody gives back.
   */
  public boolean isWorthAsking(Plan plan) {
    return lengthMm > 0 && lengthMm >= plan.linkEachMm();
  }

  private static double came(JobState state, boolean rings) {
    return state.wire().added().stream()
        .filter(wire -> PieceKind.RING.equals(wire.piece()) == rings)
        .mapToDouble(Fact.WireAdded::lengthMm)
        .sum();
  }

  private static double leftMm(List<WireLengths> lengths) {
    return lengths.stream().mapToDouble(WireLengths::leftMm).sum();
  }
}
