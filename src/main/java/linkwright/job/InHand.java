package linkwright.job;

import java.util.Map;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;

/**
 * What was taken in hand and has not come through yet.
 *
 * @param stage the stage it was taken for; none when nothing is in hand
 * @param pieces kind of piece → how many
 * @param redo whether they come from the redo pile
 * @param size which size of link; empty where none was said
 */
public record InHand(Stage stage, Map<PieceKind, Integer> pieces, boolean redo, String size) {
  public static final InHand EMPTY = new InHand(Stage.NONE, Map.of(), false, "");

  /** How many of that kind are in hand for that stage. */
  public int holds(PieceKind piece, Stage atStage) {
    return stage.equals(atStage) ? pieces.getOrDefault(piece, 0) : 0;
  }
}
