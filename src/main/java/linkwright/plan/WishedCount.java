package linkwright.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.link.ChainCount;
import linkwright.link.Joining;
import linkwright.quantity.Read;

/** How many links and rings a wish comes to, and the lengths beside it. */
record WishedCount(
    int links,
    int rings,
    double lengthMm,
    OptionalDouble oneFewerMm,
    double oneMoreMm,
    OptionalDouble exactRingInsideMm,
    OptionalDouble tightRingInsideMm) {

  /** In whole repeats: each hangs from the next by a ring, as its own links do. */
  static Read<WishedCount> of(
      ChainWish wish, List<ChainLinks.Sized> sizes, RingsCounted rings, Optional<EndRings> ends) {
    boolean ringed = wish.ring().isPresent();
    Joining joining = ringed ? Joining.RING_AT_EACH_END : Joining.EACH_OTHER;
    int each = ChainLinks.links(sizes);
    double insideMm = ChainLinks.insideMm(sizes);
    double beside = wish.claspMm() + ends.map(EndRings::addMm).orElse(0.0);
    return ChainCount.of(
            insideMm + (each - 1) * rings.insideLengthMm(),
            rings.insideLengthMm(),
            wish.finishedMm(),
            beside,
            joining)
        .map(
            count -> {
              int links = Math.toIntExact(count.links() * each);
              int joined = ringed ? links + 1 : 0;
              double lacks = wish.finishedMm() - beside - count.links() * insideMm;
              OptionalDouble adds =
                  each == 1
                      ? count.exactRingInsideMm()
                      : joined > 0 && lacks > 0
                          ? OptionalDouble.of(lacks / joined)
                          : OptionalDouble.empty();
              OptionalDouble ring = exactRing(wish, adds);
              // One that the wires of two links do not pass is none.
              boolean passes = ring.orElse(0) >= 2 * wish.wireMm();
              return new WishedCount(
                  links,
                  joined,
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
