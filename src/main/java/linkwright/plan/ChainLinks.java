package linkwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.quantity.Read;

/** Settles every size of link of a chain: the planned one first, then those between. */
final class ChainLinks {
  private ChainLinks() {}

  /**
   * One size of link.
   *
   * @param name what it is called; empty where all are alike
   * @param perRepeat how many one repeat takes
   * @param link the link
   */
  record Sized(String name, int perRepeat, SettledLink link) {}

  static Read<List<Sized>> settle(ChainWish wish, LinkBasis basis) {
    WishedRepeat repeat = wish.repeat();
    List<Read<Sized>> sizes = new ArrayList<>();
    sizes.add(
        new LinkSettling(wish, basis)
            .settle()
            .map(link -> new Sized(repeat.name(), repeat.planned(), link)));
    for (OtherLink other : repeat.others()) {
      ChainWish alone = wish.withLink(other.link());
      sizes.add(
          new LinkSettling(alone, basis.of(other.name(), alone))
              .settle()
              .map(link -> new Sized(other.name(), other.perRepeat(), link)));
    }
    return Read.all(sizes)
        .map(settled -> basis.hung().map(hung -> hung(settled, hung)).orElse(settled));
  }

  /** What the links add in one repeat, mm. */
  static double insideMm(List<Sized> sizes) {
    return sizes.stream().mapToDouble(size -> size.perRepeat() * size.link().insideMm()).sum();
  }

  /** Links of one repeat. */
  static int links(List<Sized> sizes) {
    return sizes.stream().mapToInt(Sized::perRepeat).sum();
  }

  /** A hung length knows the mean of its links alone: what it is off is shared out evenly. */
  private static List<Sized> hung(List<Sized> sizes, HungMean hung) {
    double off = hung.insideMm() - insideMm(sizes) / links(sizes);
    boolean all = sizes.stream().allMatch(size -> size.link().insideMm() + off > 0);
    return all ? sizes.stream().map(size -> hung(size, off, hung.links())).toList() : sizes;
  }

  private static Sized hung(Sized size, double offMm, int links) {
    SettledLink link = size.link();
    return new Sized(
        size.name(),
        size.perRepeat(),
        new SettledLink(
            link.blankMm(),
            link.blankFrom(),
            link.formersMm(),
            link.lengthMm(),
            link.widthMm(),
            link.sizeFrom(),
            link.insideMm() + offMm,
            FigureSource.MEASURED,
            LinkSettling.hungSpreadMm(link.pieceSpreadMm(), links),
            link.pieceSpreadMm(),
            link.formed(),
            link.proposal(),
            true));
  }

  /** The first thing that is wrong with the joining of different links, if anything. */
  static Optional<String> problem(List<Sized> sizes) {
    return sizes.stream()
        .filter(size -> !(size.link().blankMm() > 0) && sizes.size() > 1)
        .findFirst()
        .map(size -> "Give the blank of “" + size.name() + "”, so that its wire can be counted.");
  }
}
