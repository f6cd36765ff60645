package linkwright.job;

import java.util.LinkedHashMap;
import java.util.Map;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;

/**
 * Pieces on the way to a stage.
 *
 * @param piece their kind
 * @param to the stage that they reach next
 * @param redo whether they are to be done again
 * @param size which size of link; empty where none was said
 */
public record OnWay(PieceKind piece, Stage to, boolean redo, String size) {
  /** Kind → how many of it, those to be done again or the others. */
  static Map<PieceKind, Integer> counts(Map<OnWay, Integer> ways, boolean redo) {
    Map<PieceKind, Integer> counts = new LinkedHashMap<>();
    ways.forEach(
        (way, count) -> {
          if (way.redo() == redo) {
            counts.merge(way.piece(), count, Integer::sum);
          }
        });
    return counts;
  }

  /** Kind → the stage that it reaches next. */
  static Map<PieceKind, Stage> stages(Map<OnWay, Integer> ways) {
    Map<PieceKind, Stage> stages = new LinkedHashMap<>();
    ways.keySet().forEach(way -> stages.put(way.piece(), way.to()));
    return stages;
  }
}
