package linkwright.hands;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linkwright.job.Entry;
import linkwright.job.Fact;

/**
 * What came of the pieces at one stage.
 *
 * @param through pieces that came through
 * @param returned how many of those were sent back to it from a later stage
 * @param again reason → pieces sent back
 * @param lost reason → pieces scrapped
 */
public record StageResult(
    int through, int returned, Map<String, Integer> again, Map<String, Integer> lost) {
  static final StageResult NONE = new StageResult(0, 0, Map.of(), Map.of());

  /** Copies the counts. */
  public StageResult {
    again = Map.copyOf(again);
    lost = Map.copyOf(lost);
  }

  /** Kind of piece and stage → what came of them, by entries that all count. */
  static Map<String, StageResult> of(List<Entry> entries) {
    Map<String, StageResult> results = new LinkedHashMap<>();
    for (Entry entry : entries) {
      if (entry.fact() instanceof Fact.PiecesThrough come) {
        come.pieces()
            .forEach(
                (kind, count) ->
                    results.merge(
                        kind + " " + come.stage(),
                        new StageResult(count, 0, Map.of(), Map.of()),
                        StageResult::and));
      }
      if (entry.fact() instanceof Fact.PiecesSentBack back) {
        results.merge(
            back.piece() + " " + back.to(),
            new StageResult(
                0,
                back.from().equals(back.to()) ? 0 : back.count(),
                Map.of(back.reason(), back.count()),
                Map.of()),
            StageResult::and);
      }
      if (entry.fact() instanceof Fact.PiecesScrapped gone) {
        results.merge(
            gone.piece() + " " + gone.stage(),
            new StageResult(0, 0, Map.of(), Map.of(gone.reason(), gone.count())),
            StageResult::and);
      }
    }
    return results;
  }

  /** Both together. */
  public StageResult and(StageResult more) {
    return new StageResult(
        through + more.through,
        returned + more.returned,
        sum(again, more.again),
        sum(lost, more.lost));
  }

  private static Map<String, Integer> sum(Map<String, Integer> one, Map<String, Integer> other) {
    Map<String, Integer> both = new LinkedHashMap<>(one);
    other.forEach((reason, count) -> both.merge(reason, count, Integer::sum));
    return both;
  }

  /** Pieces sent back, whatever the reason. */
  public int sentBack() {
    return again.values().stream().mapToInt(Integer::intValue).sum();
  }

  /** Pieces that came through and were not sent back to it later. */
  int stayed() {
    return Math.max(0, through - returned);
  }

  /** Pieces lost, whatever the reason. */
  public int scrapped() {
    return lost.values().stream().mapToInt(Integer::intValue).sum();
  }
}
