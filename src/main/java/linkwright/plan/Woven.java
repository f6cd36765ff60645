package linkwright.plan;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import linkwright.quantity.Decimals;

/**
 * What a link adds along the pull where it is folded or turned into its neighbours: so much of its
 * inside and so many thicknesses of its wire. First order, until a trial length is hung.
 *
 * @param ofInside share of the inside
 * @param ofWire thicknesses of the wire; below 0 where they are taken off
 * @param off how far that may be off, as a share of it, one standard deviation, above 0, below 1
 */
public record Woven(double ofInside, double ofWire, double off) {
  private static final Pattern HELD =
      Pattern.compile("(\\S+) of the inside, (\\S+) wires, (\\S+) off");

  /**
   * What such a link adds.
   *
   * @param insideMm its inside before it is folded or turned, mm
   * @param wireMm its wire, mm
   * @return mm; 0 or less where the link is too small for its wire
   */
  public double addsMm(double insideMm, double wireMm) {
    return ofInside * insideMm + ofWire * wireMm;
  }

  /** As a kept plan holds it. */
  public String held() {
    return "%s of the inside, %s wires, %s off"
        .formatted(Decimals.exactly(ofInside), Decimals.exactly(ofWire), Decimals.exactly(off));
  }

  /** Read from what is held; a book may hold anything, and what is none counts as not held. */
  static Optional<Woven> read(String held) {
    Matcher parts = HELD.matcher(held);
    if (!parts.matches()) {
      return Optional.empty();
    }
    return Decimals.read(parts.group(1))
        .flatMap(
            inside ->
                Decimals.read(parts.group(2))
                    .flatMap(
                        wire ->
                            Decimals.read(parts.group(3))
                                .filter(off -> off > 0 && off < 1)
                                .map(off -> new Woven(inside, wire, off))))
        .filter(woven -> Double.isFinite(woven.ofInside + woven.ofWire));
  }
}
