package linkwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.link.Eye;
import linkwright.link.Formed;
import linkwright.wire.Strength;

/** The loads at which the chain's elements give way, and the weakest of them. */
final class PullReckoning {
  private PullReckoning() {}

  static Pull of(ChainWish wish, Optional<Formed> formed) {
    double yield = wish.metal().yieldMpa(wish.temper());
    List<Pull> pulls = new ArrayList<>();
    wish.ring().ifPresent(ring -> pulls.add(pull("ring", ring.wireMm(), ring.insideMm(), yield)));
    formed.ifPresent(
        link -> {
          for (Eye eye : link.eyes()) {
            pulls.add(pull("eye of the link", wish.wireMm(), eye.insideMm(), yield));
          }
        });
    return pulls.stream()
        .min((a, b) -> Double.compare(a.buttedN(), b.buttedN()))
        .orElseGet(
            () ->
                pull(
                    "link",
                    wish.wireMm(),
                    Math.max(wish.wireMm(), wish.link().widthMm().orElse(4) - 2 * wish.wireMm()),
                    yield));
  }

  private static Pull pull(String what, double wireMm, double insideMm, double yieldMpa) {
    return new Pull(
        what,
        Strength.buttedN(wireMm, insideMm, yieldMpa),
        Strength.solderedN(wireMm, insideMm, yieldMpa));
  }
}
