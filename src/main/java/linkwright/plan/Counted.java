package linkwright.plan;

import java.util.OptionalDouble;
import linkwright.link.ChainCount;
import linkwright.link.Joining;
import linkwright.quantity.Read;

/** How many links and rings a wish comes to, and the lengths beside it. */
record Counted(
    int links,
    int rings,
    double lengthMm,
    OptionalDouble oneFewerMm,
    double oneMoreMm,
    OptionalDouble exactRingInsideMm,
    OptionalDouble tightRingInsideMm) {

  static Read<Counted> of(ChainWish wish, double linkInsideMm, RingsCounted rings) {
    Joining joining = wish.ring().isPresent() ? Joining.RING_AT_EACH_END : Joining.EACH_OTHER;
    return ChainCount.of(
            linkInsideMm, rings.insideLengthMm(), wish.finishedMm(), wish.claspMm(), joining)
        .map(
            count -> {
              OptionalDouble ring = exactRing(wish, count.exactRingInsideMm());
              // One that the wires of two links do not pass is none.
              boolean passes = ring.orElse(0) >= 2 * wish.wireMm();
              return new Counted(
                  Math.toIntExact(count.links()),
                  Math.toIntExact(count.rings()),
                  count.lengthMm(),
                  count.oneFewerMm(),
                  count.oneMoreMm(),
                  passes ? ring : OptionalDouble.empty(),
                  passes ? OptionalDouble.empty() : ring);
            });
  }

  /** The count tells what a ring should add; which ring does so depends on its squeezing. */
  private static OptionalDouble exactRing(ChainWish wish, OptionalDouble addsMm) {
    if (addsMm.isEmpty() || wish.ring().isEmpty()) {
      return OptionalDouble.empty();
    }
    return ExactRing.insideMm(wish.ring().get(), addsMm.getAsDouble());
  }
}
