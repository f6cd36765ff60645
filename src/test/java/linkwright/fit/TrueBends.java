package linkwright.fit;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import linkwright.link.Bending;
import linkwright.link.Formed;
import linkwright.link.Forming;
import linkwright.link.Pattern;

/** Forms bends whose radii are given, not their formers. */
final class TrueBends {
  /** Lets a radius be given that no former of the wire's thickness would leave. */
  private static final double INTO = 0.5;

  private TrueBends() {}

  static Optional<Formed> form(
      Pattern pattern, double wireMm, double blankMm, Map<String, Double> radiiMm) {
    Map<String, Double> formers = new LinkedHashMap<>();
    radiiMm.forEach((name, mm) -> formers.put(name, 2 * (mm + INTO * wireMm) - wireMm));
    return Forming.form(pattern, wireMm, blankMm, formers, new Bending(0, -INTO, 0, 0)).found();
  }
}
