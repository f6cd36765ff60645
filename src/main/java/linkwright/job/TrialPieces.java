package linkwright.job;

import java.util.Map;

/**
 * What became of the pieces of the trial length that is followed, once other rings than those that
 * hung are wished: its rings are opened, and its links wait to be joined with those.
 *
 * @param links size of link → how many of it hung
 * @param ringsAside rings that the chain takes no more
 * @param linksAside size of link → how many of it hung on those rings
 */
public record TrialPieces(
    Map<String, Integer> links, int ringsAside, Map<String, Integer> linksAside) {
  static final TrialPieces NONE = new TrialPieces(Map.of(), 0, Map.of());

  int linksOpened() {
    return linksAside.values().stream().mapToInt(Integer::intValue).sum();
  }
}
