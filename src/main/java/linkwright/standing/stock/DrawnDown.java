package linkwright.standing.stock;

import java.util.List;
import linkwright.quantity.Read;
import linkwright.reference.Metal;
import linkwright.wire.DrawPlan;
import linkwright.wire.Pass;
import linkwright.wire.WireDrawing;
import linkwright.wire.WireMass;
import linkwright.wire.WireSection;

/**
 * What it takes to draw thicker wire down.
 *
 * @param rodMm how much of the thicker wire to begin with, mm
 * @param rodG its mass, g
 * @param anneals how often it is annealed between the passes
 * @param passes the pulls in order
 * @param warnings what to mind, in sentences
 */
public record DrawnDown(
    double rodMm, double rodG, int anneals, List<DrawnPass> passes, List<String> warnings) {
  public DrawnDown {
    passes = List.copyOf(passes);
    warnings = List.copyOf(warnings);
  }

  /**
   * One pull.
   *
   * @param throughMm the hole, mm
   * @param takesOff the share of the section that it takes off
   * @param sinceAnneal the share taken off since the last anneal
   * @param annealBefore whether the wire is annealed before it
   */
  public record DrawnPass(
      double throughMm, double takesOff, double sinceAnneal, boolean annealBefore) {}

  /**
   * Works it out.
   *
   * @param holesMm the plate's holes, mm
   * @param fromMm the wire there is, mm
   * @param toMm the wire wished, mm, no thicker
   * @param lengthMm how much of it is wished, mm
   * @param pointingMm what each pointing costs, mm
   * @return a sentence where the holes do not lead there
   */
  public static Read<DrawnDown> of(
      List<Double> holesMm,
      double fromMm,
      double toMm,
      double lengthMm,
      double pointingMm,
      Metal metal) {
    return WireDrawing.passes(holesMm, fromMm, toMm, metal.reductionShare().value(), pointingMm)
        .map(plan -> of(plan, fromMm, lengthMm, metal));
  }

  private static DrawnDown of(DrawPlan plan, double fromMm, double lengthMm, Metal metal) {
    double rod = plan.rodLengthMm(lengthMm);
    double grams =
        WireMass.grams(WireSection.round(fromMm).areaMm2(), rod, metal.densityGCm3().value());
    return new DrawnDown(
        rod,
        grams,
        plan.annealBeforeMm().size(),
        plan.passes().stream().map(DrawnDown::drawn).toList(),
        plan.warnings());
  }

  private static DrawnPass drawn(Pass pass) {
    return new DrawnPass(
        pass.toMm(), pass.reduction(), pass.cumulativeSinceAnneal(), pass.annealBefore());
  }
}
