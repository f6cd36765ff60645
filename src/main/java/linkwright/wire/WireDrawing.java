package linkwright.wire;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import linkwright.quantity.Read;
import linkwright.quantity.UnitStyle;

/**
 * Round wire drawn from one diameter to another, its volume kept.
 *
 * @param fromMm diameter before, mm, above 0
 * @param toMm diameter after, mm, above 0 and not above the first
 * @param startMm length before, mm, not below 0
 */
public record WireDrawing(double fromMm, double toMm, double startMm) {
  /**
   * A hole is the wished size when it is no farther off than this, mm: less than a caliper shows.
   */
  private static final double SAME_HOLE_MM = 0.005;

  /** Lets a reduction that is exactly the limit pass, rounding aside. */
  private static final double ROUNDING = 1e-9;

  /** Sizes out of their domain are the programmer's fault; {@link #of} tells the user's. */
  public WireDrawing {
    Domain.above0("fromMm", fromMm);
    Domain.above0("toMm", toMm);
    Domain.notBelow0("startMm", startMm);
    if (toMm > fromMm) {
      throw new IllegalArgumentException("toMm " + toMm + " is above fromMm " + fromMm);
    }
  }

  /**
   * A drawing; a sentence if the wire would have to become thicker.
   *
   * @param fromMm diameter before, mm, above 0
   * @param toMm diameter after, mm, above 0
   * @param lengthMm length before, mm, not below 0
   * @throws IllegalArgumentException if a size is not above 0, or no number
   */
  public static Read<WireDrawing> of(double fromMm, double toMm, double lengthMm) {
    Domain.above0("fromMm", fromMm);
    Domain.above0("toMm", toMm);
    return toMm > fromMm
        ? Read.bad(thicker(fromMm, toMm))
        : Read.good(new WireDrawing(fromMm, toMm, lengthMm));
  }

  /**
   * Length after drawing: L₁ = L₀·(d₀/d₁)².
   *
   * @return mm
   * @throws IllegalArgumentException if it overflows
   */
  public double lengthMm() {
    double ratio = fromMm / toMm;
    return Domain.result("length", startMm * ratio * ratio);
  }

  /** Share of the area taken off: 1 − (d₁/d₀)², from 0 to 1. */
  public double reduction() {
    return reduction(fromMm, toMm);
  }

  /** As the longer {@code passes}, for wire that is annealed as it comes. */
  public static Read<DrawPlan> passes(
      List<Double> holesMm,
      double fromMm,
      double toMm,
      double reductionLimit,
      double pointingLossMm) {
    return passes(holesMm, fromMm, toMm, reductionLimit, pointingLossMm, fromMm);
  }

  /**
   * The pulls through a plate, with the anneals between: before a pass that would carry the
   * reduction since the last anneal beyond the limit, the wire is annealed.
   *
   * @param holesMm the plate's holes in any order, mm, each above 0; those thicker than the wire
   *     and thinner than the wish are left out
   * @param fromMm the wire as it is, mm, above 0
   * @param toMm the wire wished, mm, above 0; there must be a hole for it
   * @param reductionLimit share of the area that the metal takes between anneals, above 0, at most
   *     1
   * @param pointingLossMm length lost at each pass where the end was pointed, mm, not below 0
   * @param annealedAtMm diameter at which the wire was annealed last, mm, not below fromMm
   * @return the plan; a sentence if the plate can't do it
   * @throws IllegalArgumentException if an argument is out of its domain
   */
  public static Read<DrawPlan> passes(
      List<Double> holesMm,
      double fromMm,
      double toMm,
      double reductionLimit,
      double pointingLossMm,
      double annealedAtMm) {
    holesMm.forEach(hole -> Domain.above0("hole", hole));
    Domain.above0("fromMm", fromMm);
    Domain.above0("toMm", toMm);
    Domain.notBelow0("pointingLossMm", pointingLossMm);
    if (!(reductionLimit > 0 && reductionLimit <= 1)) {
      throw new IllegalArgumentException(
          "reductionLimit must be above 0 and at most 1, not " + reductionLimit);
    }
    if (!(annealedAtMm >= fromMm && annealedAtMm <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException(
          "annealedAtMm must not be below fromMm " + fromMm + ", not " + annealedAtMm);
    }
    if (toMm > fromMm) {
      return Read.bad(thicker(fromMm, toMm));
    }
    boolean nothingToDo = fromMm - toMm <= SAME_HOLE_MM;
    if (!nothingToDo && holesMm.stream().noneMatch(hole -> same(hole, toMm))) {
      return Read.bad(noHole(holesMm, toMm));
    }
    List<Double> holes =
        holesMm.stream()
            .filter(hole -> fromMm - hole > SAME_HOLE_MM && (hole > toMm || same(hole, toMm)))
            .distinct()
            .sorted(Comparator.reverseOrder())
            .toList();
    List<Pass> passes =
        nothingToDo ? List.of() : annealed(holes, fromMm, reductionLimit, annealedAtMm);
    return Read.good(new DrawPlan(passes, reductionLimit, pointingLossMm));
  }

  /** Share of the area between two diameters, mm. */
  static double reduction(double fromMm, double toMm) {
    double ratio = toMm / fromMm;
    return 1 - ratio * ratio;
  }

  private static List<Pass> annealed(
      List<Double> holes, double fromMm, double limit, double annealedAtMm) {
    List<Pass> passes = new ArrayList<>();
    double before = fromMm;
    double softAt = annealedAtMm;
    for (double hole : holes) {
      boolean tooMuch = reduction(softAt, hole) > limit + ROUNDING;
      // Wire that is soft already gains nothing by another anneal.
      boolean anneal = tooMuch && softAt > before;
      softAt = anneal ? before : softAt;
      passes.add(new Pass(before, hole, reduction(before, hole), reduction(softAt, hole), anneal));
      before = hole;
    }
    return passes;
  }

  private static boolean same(double holeMm, double toMm) {
    return Math.abs(holeMm - toMm) <= SAME_HOLE_MM;
  }

  private static String thicker(double fromMm, double toMm) {
    return "A drawplate only makes wire thinner: "
        + UnitStyle.METRIC.wire(fromMm)
        + " can't become "
        + UnitStyle.METRIC.wire(toMm)
        + ". Start from thicker wire.";
  }

  private static String noHole(List<Double> holesMm, double toMm) {
    List<String> near =
        holesMm.stream()
            .sorted(Comparator.comparingDouble(hole -> Math.abs(hole - toMm)))
            .limit(2)
            .map(UnitStyle.METRIC::wire)
            .toList();
    String hint =
        near.isEmpty()
            ? "Write the plate's holes, as in 1.2 mm,1.1 mm,1 mm."
            : "The nearest: " + String.join(", ", near) + ".";
    return "The plate has no hole of " + UnitStyle.METRIC.wire(toMm) + ". " + hint;
  }
}
