package linkwright.plan;

import java.util.OptionalDouble;

/** The round ring that, ovalled as wished, adds a given length along the pull. */
final class ExactRing {
  private static final int HALVINGS = 60;

  private ExactRing() {}

  /**
   * The inside diameter of that ring, by halving: what an oval of fixed width adds grows with its
   * ring.
   *
   * @param wished the rings as wished; round ones add their own inside diameter
   * @param insideLengthMm what one ring is to add, mm
   * @return mm, to the last digit that counts; empty where no ring of that width adds so little
   */
  static OptionalDouble insideMm(WishedRing wished, double insideLengthMm) {
    if (wished.ovalInsideMm().isEmpty()) {
      return OptionalDouble.of(insideLengthMm);
    }
    double low = Math.max(wished.ovalInsideMm().getAsDouble(), wished.wireMm());
    // An oval is never longer than its ring's wire laid double, so this ring is large enough.
    double high = Math.max(low, 2 * (insideLengthMm + wished.wireMm()));
    if (adds(wished, low) > insideLengthMm) {
      return OptionalDouble.empty();
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (adds(wished, middle) < insideLengthMm) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return OptionalDouble.of((low + high) / 2);
  }

  private static double adds(WishedRing wished, double insideMm) {
    return RingLength.insideLengthMm(
        new WishedRing(insideMm, wished.wireMm(), wished.ovalInsideMm()));
  }
}
