package linkwright.job;

import java.util.List;
import java.util.Map;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;

/** Where the pieces of a routine can stand, in its own order; the routine says so, not the job. */
@FunctionalInterface
public interface StagesByKind {
  /**
   * The stages of each kind of piece, in order; empty for a routine that is not known any more.
   *
   * @param routine the routine's id
   */
  Map<PieceKind, List<Stage>> of(String routine);
}
