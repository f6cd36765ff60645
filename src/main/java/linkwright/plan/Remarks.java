package linkwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.link.Crossing;
import linkwright.link.Formed;
import linkwright.link.JointGap;
import linkwright.link.Passage;

/** What to mind about a plan, in sentences. */
final class Remarks {
  /** Shares by which a link may miss its wish before it is told; common practice, no source. */
  private static final double LENGTH_OFF = 0.03;

  private static final double WIDTH_OFF = 0.08;

  private Remarks() {}

  static List<String> of(ChainWish wish, SettledLink settled, RingsCounted rings) {
    List<String> remarks = new ArrayList<>();
    Optional<Formed> formed = settled.formed();
    if (!settled.followed()) {
      formed.ifPresent(link -> link(remarks, link));
      formed
          .filter(link -> wish.link().blankMm().isEmpty())
          .ifPresent(link -> unlikeTheWish(remarks, link, wish.link()));
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

  /** A blank that was found comes as near as the formers let it; how far off is to be told. */
  private static void unlikeTheWish(List<String> remarks, Formed link, WishedLink wished) {
    double length = link.lengthMm() / wished.lengthMm().orElse(link.lengthMm()) - 1;
    double width = link.widthMm() / wished.widthMm().orElse(link.widthMm()) - 1;
    if (Math.abs(length) > LENGTH_OFF) {
      remarks.add(
          "With these formers the link comes %.0f %% %s than wished: name %s ones."
              .formatted(
                  100 * Math.abs(length),
                  length < 0 ? "shorter" : "longer",
                  length < 0 ? "larger" : "smaller"));
    }
    if (Math.abs(width) > WIDTH_OFF) {
      remarks.add(
          "With these formers the link comes %.0f %% %s than wished: name %s ones."
              .formatted(
                  100 * Math.abs(width),
                  width < 0 ? "narrower" : "wider",
                  width < 0 ? "larger" : "smaller"));
    }
  }

  private static void link(List<String> remarks, Formed link) {
    for (JointGap gap : link.jointGaps()) {
      if (gap.gapMm() > JointGap.FILLS_MM) {
        remarks.add(
            "A tip stands %.1f mm off the wire it meets: close it, solder will not bridge it."
                .formatted(gap.gapMm()));
      }
    }
    for (Crossing crossing : link.crossings()) {
      remarks.add(
          "The wire crosses itself %.1f mm and %.1f mm along the blank: take a longer blank or"
                  .formatted(crossing.atMm(), crossing.andMm())
              + " smaller formers.");
    }
  }
}
