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

  static List<String> of(ChainWish wish, SettledLink settled, RingsCounted rings) {
    List<String> remarks = new ArrayList<>();
    Optional<Formed> formed = settled.formed();
    if (!settled.followed()) {
      formed.ifPresent(link -> gaps(remarks, link));
      if (settled.proposal().isPresent()) {
        // What was looked for says itself what cannot be had, and what can.
        settled.proposal().get().shortfall(UnitStyle.METRIC).ifPresent(remarks::add);
      } else {
        formed.ifPresent(link -> crossings(remarks, link));
      }
      if (FormersOwned.found(wish.link())) {
        settled
            .formersMm()
            .forEach(
                (name, mm) ->
                    remarks.add(
                        "No mandrel is named: over "
                            + UnitStyle.METRIC.length(mm)
                            + " the link comes as long as wished."));
      }
    }
    rings.remark().ifPresent(remarks::add);
    wish.ring()
        .ifPresent(
            ring ->
                formed.ifPresent(
                    link ->
                        Passage.of(link, ring.insideMm(), ring.wireMm())
                            .forEach(passage -> remarks.addAll(passage.troubles()))));
    remarks.addAll(wish.metal().warnings());
    // Both eyes of a link give the same sentence.
    return remarks.stream().distinct().toList();
  }

  private static void gaps(List<String> remarks, Formed link) {
    for (JointGap gap : link.jointGaps()) {
      if (gap.gapMm() > JointGap.FILLS_MM) {
        remarks.add(
            "A tip stands %.1f mm off the wire it meets: close it, solder will not bridge it."
                .formatted(gap.gapMm()));
      }
    }
  }

  private static void crossings(List<String> remarks, Formed link) {
    for (Crossing crossing : link.crossings()) {
      remarks.add(
          "The wire crosses itself %.1f mm and %.1f mm along the blank: take a longer blank or"
                  .formatted(crossing.atMm(), crossing.andMm())
              + " other formers.");
    }
  }
}
