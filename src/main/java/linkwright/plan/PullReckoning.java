package linkwright.plan;

import java.util.ArrayList;
import java.util.List;
import linkwright.link.Eye;
import linkwright.link.Formed;
import linkwright.reference.Temper;
import linkwright.wire.Strength;
import linkwright.wire.WireSection;

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
                        wish.ringWireNow(),
                        ring.ovalInsideMm().orElse(ring.insideMm()))));
    wish.endRingMm()
        .ifPresent(mm -> pulls.add(pull(wish, "ring at the end", wish.wire(), mm)));
    for (LinksOfSize size : sizes) {
      String of = size.name().isEmpty() ? "link" : size.name() + " link";
      for (Eye eye : size.link().formed().map(Formed::eyes).orElse(List.of())) {
        pulls.add(pull(wish, "eye of the " + of, wish.wire(), eye.insideMm()));
      }
    }
    return pulls.stream()
        .min((a, b) -> Double.compare(a.buttedN(), b.buttedN()))
        .orElseGet(() -> measured(wish));
  }

  /** A link known by its measures alone is pulled as if it were a ring of its width. */
  private static Pull measured(ChainWish wish) {
    double inside = Math.max(wish.wireMm(), wish.link().widthMm().orElse(4) - 2 * wish.wireMm());
    return pull(wish, "link", wish.wire(), inside);
  }

  private static Pull pull(ChainWish wish, String what, WireSection wire, double acrossMm) {
    // Soldering anneals: what is soldered holds as soft wire does.
    return new Pull(
        what,
        Strength.buttedN(wire, acrossMm, wish.metal().yieldMpa(wish.temper())),
        Strength.solderedN(wire, acrossMm, wish.metal().yieldMpa(Temper.SOFT)));
  }
}
