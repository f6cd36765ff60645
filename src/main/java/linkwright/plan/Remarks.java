package linkwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.link.Crossing;
import linkwright.link.Formed;
import linkwright.link.JointGap;
import linkwright.link.Passage;
import linkwright.quantity.UnitStyle;

/** What to mind about a plan, in sentences. */
final class Remarks {
  private Remarks() {}

  static List<String> of(
      ChainWish wish, List<LinksOfSize> sizes, RingsCounted rings, UnitStyle units) {
    List<String> remarks = new ArrayList<>();
    for (int i = 0; i < sizes.size(); i++) {
      WishedLink link = i == 0 ? wish.link() : wish.repeat().others().get(i - 1).link();
      String of = sizes.size() == 1 ? "" : sizes.get(i).name() + ": ";
      of(wish, link, sizes.get(i).link(), units).forEach(each -> remarks.add(of + each));
      if (wish.ring().isEmpty()
          && sizes.get(i).link().freeInsideMm(wish.wireMm()) < 2 * wish.wireMm() - 1e-9) {
        remarks.add(
            of
                + "The wires of its two neighbors do not pass this link: it needs "
                + units.length(2 * wish.wireMm())
                + " inside.");
      }
    }
    rings.remark().ifPresent(remarks::add);
    wish.endRingMm()
        .ifPresent(
            mm -> {
              if (mm < 2 * wish.wireMm()) {
                remarks.add(
                    "The wires of two links do not pass the jump ring at the end: it needs "
                        + units.length(2 * wish.wireMm())
                        + " inside.");
              }
            });
    remarks.addAll(wish.metal().warnings());
    // Both eyes of a link give the same sentence.
    return remarks.stream().distinct().toList();
  }

  private static List<String> of(
      ChainWish wish, WishedLink wished, SettledLink settled, UnitStyle units) {
    List<String> remarks = new ArrayList<>();
    Optional<Formed> formed = settled.formed();
    if (!settled.followed()) {
      formed.ifPresent(link -> gaps(remarks, link, units));
      if (settled.proposal().isPresent()) {
        // What was looked for says itself what cannot be had, and what can.
        settled.proposal().get().shortfall(units).ifPresent(remarks::add);
      } else {
        formed.ifPresent(link -> crossings(remarks, link, units));
      }
      if (FormersOwned.found(wished)) {
        settled
            .formersMm()
            .forEach(
                (name, mm) ->
                    remarks.add(
                        "No former is named: over "
                            + units.length(mm)
                            + " the link comes "
                            + (asWished(wished, settled) ? "as long as wished." : "nearest.")));
      }
    }
    if (!settled.followed() && FormersOwned.closedBy(wished)) {
      settled.formersMm().values().forEach(mm -> remarks.add(closed(wished, settled, mm, units)));
    }
    wish.ring()
        .ifPresent(
            ring ->
                formed.ifPresent(
                    link ->
                        Passage.of(link, ring.insideMm(), ring.wireMm())
                            .forEach(passage -> remarks.addAll(passage.troubles()))));
    return remarks;
  }

  private static String closed(
      WishedLink wished, SettledLink settled, double formerMm, UnitStyle units) {
    String says =
        "No former is named: a blank of "
            + units.length(settled.blankMm())
            + " closes over "
            + units.length(formerMm);
    return wished.lengthMm().isEmpty() || asWished(wished, settled)
        ? says + "."
        : says
            + ", to a link "
            + units.length(settled.lengthMm().orElse(0))
            + " long, not the "
            + units.length(wished.lengthMm().orElse(0))
            + " wished: leave the blank empty for that length.";
  }

  private static boolean asWished(WishedLink wished, SettledLink settled) {
    double mm = wished.lengthMm().orElse(0);
    return Math.abs(settled.lengthMm().orElse(mm) - mm) <= Planning.BLANK_STEP_MM;
  }

  private static void gaps(List<String> remarks, Formed link, UnitStyle units) {
    for (JointGap gap : link.jointGaps()) {
      if (gap.gapMm() > JointGap.FILLS_MM) {
        remarks.add(
            "A tip stands "
                + units.length(gap.gapMm())
                + " off the wire it meets: close it, solder will not bridge it.");
      }
    }
  }

  private static void crossings(List<String> remarks, Formed link, UnitStyle units) {
    for (Crossing crossing : link.crossings()) {
      remarks.add(
          "The wire crosses itself "
              + units.length(crossing.atMm())
              + " and "
              + units.length(crossing.andMm())
              + " along the blank: take a longer blank or other formers.");
    }
  }
}
