package linkwright.job;

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
public record OnWay(PieceKind piece, Stage to, boolean redo, String size) {}
