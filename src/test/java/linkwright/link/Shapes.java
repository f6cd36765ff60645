package linkwright.link;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.quantity.Read;

/** Patterns small enough to be computed by hand, and short ways to form them. */
final class Shapes {
  private Shapes() {}

  static Pattern of(
      Map<String, Double> formers,
      OtherHalf other,
      boolean closed,
      List<Joint> joints,
      PatternPart... path) {
    return new Pattern(
        "shape", "A shape.", formers, List.of(path), other, closed, joints, Optional.empty());
  }

  static Pattern half(double eyeMm, OtherHalf other, PatternPart... path) {
    return of(Map.of("eye", eyeMm), other, false, List.of(), path);
  }

  static Pattern whole(double eyeMm, List<Joint> joints, PatternPart... path) {
    return of(Map.of("eye", eyeMm), OtherHalf.NONE, false, joints, path);
  }

  static Read<Formed> read(Pattern pattern, double wireMm, double blankMm) {
    return Forming.form(pattern, wireMm, blankMm, Map.of(), Bending.TRUE);
  }

  static Formed form(Pattern pattern, double wireMm, double blankMm) {
    return read(pattern, wireMm, blankMm).orThrow();
  }

  /** The shipped pattern at its usual sizes. */
  static Formed usual(Pattern pattern) {
    UsualSizes usual = pattern.usual().orElseThrow();
    return form(pattern, usual.wireMm(), usual.blankMm());
  }
}
