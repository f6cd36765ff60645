package linkwright.wire;

import java.util.List;
import linkwright.quantity.Read;
import linkwright.quantity.UnitStyle;

/**
 * The pulls that take wire from one size to another.
 *
 * @param passes in order, thickest hole first; empty if the wire has the wished size already
 * @param reductionLimit share of the area that the metal takes between anneals
 * @param pointingLossMm length lost at each pass where the end was pointed, mm
 */
public record DrawPlan(List<Pass> passes, double reductionLimit, double pointingLossMm) {
  /** Copies the list. */
  public DrawPlan {
    passes = List.copyOf(passes);
  }

  /** The holes before which the wire is annealed, mm. */
  public List<Double> annealBeforeMm() {
    return passes.stream().filter(Pass::annealBefore).map(Pass::toMm).toList();
  }

  /**
   * Length of wire from a rod: at each pass the pointed end is lost, the rest grows by (d₀/d₁)².
   *
   * @param rodMm length to begin with, mm, not below 0
   * @return mm; a sentence if the rod is used up by pointing
   * @throws IllegalArgumentException if the length is below 0, no number, or overflows
   */
  public Read<Double> lengthMm(double rodMm) {
    double length = Domain.notBelow0("rodMm", rodMm);
    for (Pass pass : passes) {
      length -= pointingLossMm;
      if (length <= 0) {
        return Read.bad(
            "A rod of "
                + UnitStyle.METRIC.length(rodMm)
                + " is used up by pointing before the hole of "
                + UnitStyle.METRIC.wire(pass.toMm())
                + ". Start with more than "
                + UnitStyle.METRIC.length(rodLengthMm(0))
                + ".");
      }
      length = new WireDrawing(pass.fromMm(), pass.toMm(), length).lengthMm();
    }
    return Read.good(length);
  }

  /**
   * Rod to begin with for a wished length of wire: the inverse of {@link #lengthMm}.
   *
   * @param wishedMm length of finished wire, mm, not below 0
   * @return mm
   * @throws IllegalArgumentException if the length is below 0, no number, or overflows
   */
  public double rodLengthMm(double wishedMm) {
    double length = Domain.notBelow0("wishedMm", wishedMm);
    for (int i = passes.size() - 1; i >= 0; i--) {
      length = length * (1 - passes.get(i).reduction()) + pointingLossMm;
    }
    return Domain.result("rod", length);
  }

  /** What to mind: passes that take off more at once than the metal bears between two anneals. */
  public List<String> warnings() {
    return passes.stream()
        .filter(pass -> pass.reduction() > reductionLimit + 1e-9)
        .map(this::tooMuchAtOnce)
        .toList();
  }

  private String tooMuchAtOnce(Pass pass) {
    return "From "
        + UnitStyle.METRIC.wire(pass.fromMm())
        + " to "
        + UnitStyle.METRIC.wire(pass.toMm())
        + " in one pass takes "
        + Math.round(pass.reduction() * 100)
        + " % off the area; this metal takes "
        + Math.round(reductionLimit * 100)
        + " % between anneals. Find a hole between them.";
  }
}
