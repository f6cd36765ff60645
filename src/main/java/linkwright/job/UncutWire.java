package linkwright.job;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * What pieces of a trial length were made of, as it stood when it was chosen: a plan that is kept
 * later changes nothing of wire that is gone.
 *
 * @param blankMm the blank of its links, mm; empty where no sample says it
 * @param ringInsideMm the inside of its rings, mm
 * @param rings rings that came so
 * @param links links that came so
 */
public record UncutWire(OptionalDouble blankMm, double ringInsideMm, int rings, int links) {
  /** What a chosen length's pieces were made of; no pieces yet. */
  static UncutWire of(Fact.TrialChosen choice, Trials trials, Map<String, String> wish) {
    Fact.TrialMeasured hung = trials.lengths().get(choice.trial());
    OptionalDouble blank =
        trials
            .samplePiece()
            .filter(any -> link(trials.wishAtSample()).equals(link(wish)))
            .map(piece -> OptionalDouble.of(piece.blankMm()))
            .orElse(OptionalDouble.empty());
    return new UncutWire(blank, hung == null ? 0 : hung.ringInsideMm(), 0, 0);
  }

  UncutWire with(int moreLinks, int moreRings) {
    return new UncutWire(blankMm, ringInsideMm, moreRings, moreLinks);
  }

  private static Map<String, String> link(Map<String, String> wish) {
    Map<String, String> link = new TreeMap<>(wish);
    link.keySet().removeIf(key -> !key.startsWith("link.") && !key.equals("wire"));
    return link;
  }
}
