package linkwright.plan;

import java.util.Optional;
import linkwright.link.Coil;
import linkwright.link.Oval;
import linkwright.link.Ring;
import linkwright.quantity.Read;

/**
 * The rings of a chain as they will be counted; all 0 where links join each other.
 *
 * @param blankMm one ring's blank, mm
 * @param turnMm wire of one turn of the coil, mm
 * @param insideLengthMm what one ring adds along the pull, mm
 * @param remark what to mind about them
 */
record RingsCounted(double blankMm, double turnMm, double insideLengthMm, Optional<String> remark) {
  private static final RingsCounted NONE = new RingsCounted(0, 0, 0, Optional.empty());

  static Read<RingsCounted> of(ChainWish wish) {
    return wish.ring().map(ring -> of(ring, wish)).orElseGet(() -> Read.good(NONE));
  }

  private static Read<RingsCounted> of(WishedRing wished, ChainWish wish) {
    Read<Ring> ring = Ring.of(wished.insideMm(), wish.ringWireNow());
    return ring.flatMap(
        round -> Coil.of(round, wish.kerfMm()).flatMap(coil -> of(wished, wish, round, coil)));
  }

  private static Read<RingsCounted> of(WishedRing wished, ChainWish wish, Ring round, Coil coil) {
    if (wished.ovalInsideMm().isEmpty()) {
      return Read.good(
          new RingsCounted(round.blankMm(), coil.turnMm(), round.insideMm(), Optional.empty()));
    }
    return Oval.squeeze(round, wished.ovalInsideMm().getAsDouble())
        .map(
            oval ->
                new RingsCounted(
                    round.blankMm(),
                    coil.turnMm(),
                    oval.insideLengthMm(),
                    oval.told(wish.wireMm())));
  }
}
