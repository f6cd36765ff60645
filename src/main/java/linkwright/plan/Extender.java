package linkwright.plan;

import java.util.Optional;

/**
 * The end of a chain of which the clasp takes any link: it closes from the shorter length to the
 * whole. Its links are links of the chain, counted, cut and weighed with it.
 *
 * @param links how many links it has
 * @param lengthMm what they add, mm
 * @param closesFromMm the shortest length to which the chain closes, mm
 */
public record Extender(int links, double lengthMm, double closesFromMm) {
  /** The whole links, or whole repeats, that come nearest to what was wished; empty without one. */
  static Optional<Extender> of(Plan plan) {
    double wishedMm = plan.wish().extenderMm();
    if (wishedMm == 0) {
      return Optional.empty();
    }
    double eachMm = plan.oneMoreMm() - plan.lengthMm();
    int each = plan.linksPerRepeat();
    int most = plan.links() / each - 1;
    int repeats = (int) Math.max(0, Math.min(most, Math.round(wishedMm / eachMm)));
    double lengthMm = repeats * eachMm;
    return Optional.of(new Extender(repeats * each, lengthMm, plan.lengthMm() - lengthMm));
  }
}
