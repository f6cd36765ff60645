package linkwright.job;

import java.util.Map;

/**
 * What was taken in hand and has not come through yet.
 *
 * @param stage the stage it was taken for; empty when nothing is in hand
 * @param pieces kind of piece → how many
 * @param redo whether they come from the redo pile
 */
public record InHand(String stage, Map<String, Integer> pieces, boolean redo) {
  public static final InHand EMPTY = new InHand("", Map.of(), false);

  /** How many of that kind are in hand for that stage. */
  public int holds(String piece, String atStage) {
    return stage.equals(atStage) ? pieces.getOrDefault(piece, 0) : 0;
  }
}
