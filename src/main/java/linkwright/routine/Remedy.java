package linkwright.routine;

import java.util.List;

/**
 * Something that may go wrong at a step, and what to do.
 *
 * @param sees what is seen, in the words one would use at the bench
 * @param means why it happens
 * @param remedy what to do
 * @param then what becomes of the piece
 * @param backTo for a redo, the stage that is to be reached again; none otherwise
 * @param reason one of {@link #REASONS}, for the redo pile; empty when nothing is redone or lost
 */
public record Remedy(
    String sees, String means, String remedy, AfterFault then, Stage backTo, String reason) {
  /** The reasons by which redone and scrapped pieces are told apart. */
  public static final List<String> REASONS =
      List.of(
          "gap",
          "dirty",
          "too cool",
          "flooded",
          "melted",
          "stuck to its neighbour",
          "twisted",
          "size",
          "cracked",
          "other");
}
