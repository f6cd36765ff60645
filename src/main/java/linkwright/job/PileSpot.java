package linkwright.job;

import linkwright.routine.PieceKind;
import linkwright.routine.Stage;

/**
 * Which pile.
 *
 * @param piece the kind of piece
 * @param stage the stage that its pieces have reached; of those to be done again, the one that they
 *     go back to
 * @param redo whether they are to be done again
 * @param size which size of link; empty where none was said
 */
public record PileSpot(PieceKind piece, Stage stage, boolean redo, String size) {}
