package linkwright.link;

import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.quantity.Read;

/**
 * How many links make a chain of a wished length. Wires hook, so along the pull each element adds
 * its inside length: L(n) = n·link + rings(n)·ring + clasp. The n is the one whose length is
 * nearest the wish; of two as near, the longer chain.
 *
 * @param joining what joins the links
 * @param links how many links, at least 1
 * @param rings how many rings
 * @param lengthMm the finished length, in millimetres
 * @param oneFewerMm the finished length with one link fewer; empty where that leaves none
 * @param oneMoreMm the finished length with one link more
 * @param exactRingInsideMm the ring's inside length that makes {@code links} come out exactly, in
 *     millimetres; empty where no ring does
 */
public record ChainCount(
    Joining joining,
    long links,
    long rings,
    double lengthMm,
    OptionalDouble oneFewerMm,
    double oneMoreMm,
    OptionalDouble exactRingInsideMm) {
  /** More links than this are a slip of the unit. */
  private static final double MOST = 1e6;

  /**
   * The count, or a sentence: a size that can't be, or a wish shorter than one link.
   *
   * @param linkInsideMm what a link adds, in millimetres, above 0
   * @param ringInsideMm what a ring adds, in millimetres, above 0; not looked at for {@link
   *     Joining#EACH_OTHER}
   * @param wishedMm the finished length wished for, clasp and all, in millimetres
   * @param claspMm the clasp's length with its own rings, inside end to inside end, pulled, in
   *     millimetres; 0 for none
   * @param joining what joins the links
   */
  public static Read<ChainCount> of(
      double linkInsideMm, double ringInsideMm, double wishedMm, double claspMm, Joining joining) {
    boolean ringed = joining != Joining.EACH_OTHER;
    Optional<String> fault =
        SizeFault.first(
            SizeFault.faultUnlessPositive("The link's inside length", linkInsideMm),
            ringed
                ? SizeFault.faultUnlessPositive("The ring's inside length", ringInsideMm)
                : Optional.empty(),
            SizeFault.faultIfNegative("The clasp's length", claspMm),
            SizeFault.faultUnlessPositive("The finished length", wishedMm));
    if (fault.isPresent()) {
      return Read.bad(fault.get());
    }
    double ringMm = ringed ? ringInsideMm : 0;
    double oneMm = linkInsideMm + joining.rings(1) * ringMm + claspMm;
    if (wishedMm < linkInsideMm + claspMm - Repeat.AS_WRITTEN_MM) {
      return Read.bad(
          "A finished length of "
              + Sizes.mm(wishedMm)
              + " is shorter than one link"
              + (claspMm > 0 ? " and the clasp" : "")
              + ": the shortest chain is "
              + Sizes.mm(oneMm)
              + ".");
    }
    double real = 1 + (wishedMm - oneMm) / (linkInsideMm + ringMm);
    if (real > MOST) {
      return Read.bad(
          "A finished length of "
              + Sizes.mm(wishedMm)
              + " takes more than a million links of "
              + Sizes.mm(linkInsideMm)
              + ": look at the units.");
    }
    // A hair is added so that a tie broken by rounding still goes to the longer chain.
    long links = Math.max(1, (long) Math.floor(real + 0.5 + 1e-9));
    return Read.good(counted(links, linkInsideMm, ringMm, wishedMm, claspMm, joining));
  }

  private static ChainCount counted(
      long links, double linkMm, double ringMm, double wishedMm, double claspMm, Joining joining) {
    long rings = joining.rings(links);
    double exactMm = rings == 0 ? 0 : (wishedMm - claspMm - links * linkMm) / rings;
    return new ChainCount(
        joining,
        links,
        rings,
        lengthMm(links, linkMm, ringMm, claspMm, joining),
        links == 1
            ? OptionalDouble.empty()
            : OptionalDouble.of(lengthMm(links - 1, linkMm, ringMm, claspMm, joining)),
        lengthMm(links + 1, linkMm, ringMm, claspMm, joining),
        exactMm > 0 ? OptionalDouble.of(exactMm) : OptionalDouble.empty());
  }

  /** The finished length of a chain of so many links, in millimetres. */
  public static double lengthMm(
      long links, double linkInsideMm, double ringInsideMm, double claspMm, Joining joining) {
    return links * linkInsideMm + joining.rings(links) * ringInsideMm + claspMm;
  }

  /**
   * How many of the links are closed and soldered before any are joined, where links hook into each
   * other: every second one, so that each of the others closes on two that are whole.
   */
  public long closedFirst() {
    return joining == Joining.EACH_OTHER ? links / 2 : 0;
  }
}
