package linkwright.plan;

import java.util.ArrayList;
import java.util.List;
import linkwright.link.Eye;
import linkwright.link.Formed;
import linkwright.wire.Strength;

/** The loads at which the chain's elements give way, and the weakest of them. */
final class PullReckoning {
  private PullReckoning() {}

  static Pull of(ChainWish wish, List<LinksOfSize> sizes) {
    List<Pull> pulls = new ArrayList<>();
    wish.ring()
        .ifPresent(
            ring ->
                pulls.add(
                    pull(
                        wish,
                        "ring",
                        ring.wireMm(),
                        ring.ovalInsideMm().orElse(ring.insideMm()),
                        RingLength.insideLengthMm(ring))));
    wish.endRingMm()
        .ifPresent(mm -> pulls.add(pull(wish, "ring at the end", wish.wireMm(), mm, mm)));
    for (LinksOfSize size : sizes) {
      String of = size.name().isEmpty() ? "link" : size.name() + " link";
      for (Eye eye : size.link().formed().map(Formed::eyes).orElse(List.of())) {
        pulls.add(pull(wish, "eye of the " + of, wish.wireMm(), eye.insideMm(), eye.insideMm()));
      }
    }
    return pulls.stream()
        .min((a, b) -> Double.compare(a.buttedN(), b.buttedN()))
        .orElseGet(() -> measured(wish));
  }

  /** A link known by its measures alone is pulled as if it were a ring of its width. */
  private static Pull measured(ChainWish wish) {
    double inside = Math.max(wish.wireMm(), wish.link().widthMm().orElse(4) - 2 * wish.wireMm());
    return pull(wish, "link", wish.wireMm(), inside, inside);
  }

  private static Pull pull(
      ChainWish wish, String what, double wireMm, double acrossMm, double alongMm) {
    return new Pull(
        what,
        Strength.Element.of(what, wireMm, acrossMm, alongMm, wish.metal(), wish.temper(), false)
            .collapseN(),
        Strength.Element.of(what, wireMm, acrossMm, alongMm, wish.metal(), wish.temper(), true)
            .collapseN());
  }
}
