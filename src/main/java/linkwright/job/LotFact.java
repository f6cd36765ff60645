package linkwright.job;

import java.util.OptionalDouble;
import linkwright.routine.PieceKind;

/**
 * What can be entered of wire, solder and other metal by lot. Arrivals and what the scale says are
 * the drawer's; taking and returning are a job's and name the lot.
 */
public sealed interface LotFact extends Fact
    permits LotFact.LotArrived,
        LotFact.LotCounted,
        LotFact.LotTurned,
        LotFact.StockTaken,
        LotFact.StockReturned {

  /** What a lot is: wire, solder, sheet, scrap; its metal or solder by id; how it came. */
  record LotArrived(
      String lot,
      String what,
      String metal,
      OptionalDouble wireMm,
      String temper,
      String batch,
      OptionalDouble lengthMm,
      OptionalDouble massG,
      String note)
      implements LotFact {}

  /** A lot was weighed or measured as it lies there. */
  record LotCounted(String lot, OptionalDouble lengthMm, OptionalDouble massG, String note)
      implements LotFact {}

  /** A lot was drawn down, rolled or melted into another, as far as that goes. */
  record LotTurned(
      String lot,
      String into,
      OptionalDouble wireMm,
      OptionalDouble lengthMm,
      OptionalDouble massG,
      String note)
      implements LotFact {}

  /** Wire or solder was taken out of a lot for this job, for a kind of piece if it was said. */
  record StockTaken(
      String lot, PieceKind piece, OptionalDouble lengthMm, OptionalDouble massG, String note)
      implements LotFact {}

  /** What was left came back into a lot. */
  record StockReturned(
      String lot, PieceKind piece, OptionalDouble lengthMm, OptionalDouble massG, String note)
      implements LotFact {}
}
