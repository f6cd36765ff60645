package linkwright.fit;

import java.util.Map;
import java.util.Optional;
import linkwright.link.Bend;
import linkwright.link.Bending;
import linkwright.link.Formed;
import linkwright.link.Forming;
import linkwright.link.OtherHalf;
import linkwright.link.Pattern;
import linkwright.quantity.Read;

/** The shape of a link pattern in a wire. */
record PatternShape(Pattern pattern, double wireMm) implements Shape {

  /** More wire than any ring takes, in lengths of its formers and its wire. */
  private static final double PLENTY = 10;

  Read<Formed> form(double blankMm, Map<String, Double> formersMm, Bending bending) {
    return Forming.form(pattern, wireMm, blankMm, formersMm, bending);
  }

  /** A ring is as large as its mandrel makes it: it is cut from a coil, not bent from a blank. */
  Read<Formed> formMade(double blankMm, Map<String, Double> formersMm, Bending bending) {
    double round = formersMm.values().stream().mapToDouble(Double::doubleValue).sum() + wireMm;
    return form(pattern.isRing() ? Math.max(blankMm, PLENTY * round) : blankMm, formersMm, bending);
  }

  @Override
  public Optional<FormedSize> size(double blankMm, Map<String, Double> formersMm, Bending bending) {
    return form(blankMm, formersMm, bending).found().map(PatternShape::size);
  }

  @Override
  public Optional<FormedSize> made(double blankMm, Map<String, Double> formersMm, Bending bending) {
    return formMade(blankMm, formersMm, bending).found().map(PatternShape::size);
  }

  private static FormedSize size(Formed link) {
    return new FormedSize(link.lengthMm(), link.widthMm(), link.shortestBlankMm());
  }

  @Override
  public double overlapMm(
      double blankMm, Map<String, Double> formersMm, Bending bending, double deeperThanMm) {
    return form(blankMm, formersMm, bending).found().stream()
        .flatMap(link -> link.crossings(deeperThanMm).stream())
        .mapToDouble(crossing -> -crossing.gapMm())
        .max()
        .orElse(0);
  }

  @Override
  public Map<String, Double> formersMm() {
    return pattern.formersMm();
  }

  @Override
  public int eyes() {
    int eyes =
        (int) pattern.path().stream().filter(bit -> bit instanceof Bend bend && bend.eye()).count();
    return pattern.other() == OtherHalf.NONE ? eyes : 2 * eyes;
  }
}
