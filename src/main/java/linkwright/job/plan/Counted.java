package linkwright.job.plan;

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
    OptionalDouble exactRingInsideMm) {

  static Read<Counted> of(Wish wish, double linkInsideMm, RingsCounted rings) {
    Joining joining = wish.ring().isPresent() ? Joining.RING_AT_EACH_END : Joining.EACH_OTHER;
    return ChainCount.of(
            linkInsideMm, rings.insideLengthMm(), wish.finishedMm(), wish.claspMm(), joining)
        .map(
            count ->
                new Counted(
                    Math.toIntExact(count.links()),
                    Math.toIntExact(count.rings()),
                    count.lengthMm(),
                    count.oneFewerMm(),
                    count.oneMoreMm(),
                    count.exactRingInsideMm()));
  }
}
