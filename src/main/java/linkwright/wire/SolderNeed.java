package linkwright.wire;

import java.util.ArrayList;
import java.util.List;
import linkwright.quantity.UnitStyle;

/**
 * What one joint takes of solder.
 *
 * @param leastPieceMm length of strip that holds just that, mm
 * @param pieceMm length to cut in practice, mm
 * @param massG mass of the solder that fills the joint, g
 * @param placedG mass of the piece that is cut and stays in the chain, g
 * @param warnings what to mind, in sentences
 */
public record SolderNeed(
    double leastPieceMm, double pieceMm, double massG, double placedG, List<String> warnings) {
  /**
   * How many times as much a flat end against the side of round wire takes as two flat ends: the
   * gap is wider beside the place where they touch. On wire of 1 mm and a gap of 0.05 mm the mean
   * gap is 0.126 mm.
   */
  static final double SIDE_TIMES = 2.5;

  /** More solder than this many times what fills a joint floods it; this program's choice. */
  private static final double FLOODS = 6;

  /**
   * Solder is best in gaps of 0.001 to 0.005 in (0.025 to 0.127 mm). Source: Industrial Heating,
   * column on brazing, "How much filler metal do I need".
   */
  public static final double WIDEST_GAP_MM = 0.127;

  /**
   * Solder around the joint as a share of that in the gap, where nobody says otherwise. Source: the
   * same column takes one and a half times the gap's volume.
   */
  public static final double USUAL_FILLET_SHARE = 0.5;

  /** A piece is rarely cut longer. Common practice, no source. */
  private static final double LONGEST_PIECE_MM = 1;

  /** Copies the list. */
  public SolderNeed {
    warnings = List.copyOf(warnings);
  }

  /**
   * Solder for one joint of round wire.
   *
   * <p>V = A·gap·(1 + fillet), 2.5 times as much for a tip against the side of a wire. The least
   * piece is V/(w·t); in practice a piece is as long as the wire is thick, at most 1 mm, and never
   * less than the least (common practice, no source). What is placed is that piece, and all of it
   * stays in the chain.
   *
   * @param wireMm diameter of the wire, mm, above 0
   * @param gapMm gap of the joint where the two are nearest, mm, not below 0
   * @param filletShare solder around the joint as a share of that in the gap, not below 0
   * @param stripWidthMm width of the solder strip or chip, mm, above 0
   * @param stripThicknessMm thickness of the solder, mm, above 0
   * @param densityGCm3 density of the solder, g/cm³, above 0
   * @param joint how the two meet
   * @throws IllegalArgumentException if an argument is out of its domain or a result overflows
   */
  public static SolderNeed of(
      double wireMm,
      double gapMm,
      double filletShare,
      double stripWidthMm,
      double stripThicknessMm,
      double densityGCm3,
      JointKind joint) {
    Domain.notBelow0("gapMm", gapMm);
    Domain.notBelow0("filletShare", filletShare);
    double area = WireSection.round(wireMm).areaMm2();
    double stripArea = WireSection.strip(stripWidthMm, stripThicknessMm).areaMm2();
    double times = joint == JointKind.SIDE ? SIDE_TIMES : 1;
    double volume = Domain.result("volume", times * area * gapMm * (1 + filletShare));
    double least = Domain.result("leastPieceMm", volume / stripArea);
    double piece = Math.max(least, Math.min(wireMm, LONGEST_PIECE_MM));
    double mass = WireMass.grams(stripArea, least, densityGCm3);
    double placed = WireMass.grams(stripArea, piece, densityGCm3);
    return new SolderNeed(least, piece, mass, placed, warnings(gapMm, least, piece));
  }

  private static List<String> warnings(double gapMm, double leastPieceMm, double pieceMm) {
    List<String> warnings = new ArrayList<>();
    if (gapMm > WIDEST_GAP_MM) {
      warnings.add(
          "The gap of "
              + UnitStyle.METRIC.length(gapMm)
              + " is wider than solder bridges well (up to about 0.13 mm): close the joint first.");
    }
    if (leastPieceMm > LONGEST_PIECE_MM) {
      warnings.add(
          "The joint needs at least "
              + UnitStyle.METRIC.length(leastPieceMm)
              + " of this strip, more than the 1 mm that is usual: close the joint,"
              + " or take thicker or wider solder.");
    }
    if (leastPieceMm > 0 && pieceMm > FLOODS * leastPieceMm) {
      warnings.add(
          "A piece of "
              + UnitStyle.METRIC.length(pieceMm)
              + " is "
              + Math.round(pieceMm / leastPieceMm)
              + " times what fills the joint and floods it: cut it from narrower or thinner solder.");
    }
    return warnings;
  }
}
