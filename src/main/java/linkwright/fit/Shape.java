package linkwright.fit;

import java.util.Map;
import java.util.Optional;
import linkwright.link.Bending;

/** What a blank becomes in a maker's hands. */
interface Shape {
  /**
   * The size of the link.
   *
   * @param blankMm the blank's length
   * @param formersMm inside diameters of the formers, a size for each of {@link #formersMm}
   * @param bending whose hands
   * @return empty if the blank is too short or the bends cannot be made
   */
  Optional<FormedSize> size(double blankMm, Map<String, Double> formersMm, Bending bending);

  /**
   * The size of a piece that was made: where its blank cannot have been too short, it was not,
   * whatever length was entered.
   */
  default Optional<FormedSize> made(
      double blankMm, Map<String, Double> formersMm, Bending bending) {
    return size(blankMm, formersMm, bending);
  }

  /**
   * How deep the wire would press into itself where it crosses, at the deepest place: 0 if nowhere
   * deeper than asked for, the wire's diameter where the centre lines meet.
   */
  double overlapMm(
      double blankMm, Map<String, Double> formersMm, Bending bending, double deeperThanMm);

  /** The diameter of the wire. */
  double wireMm();

  /** The formers by name, each with the size that stands in where the maker names none. */
  Map<String, Double> formersMm();

  /** How many eyes one link has, each turned by hand. */
  int eyes();
}
