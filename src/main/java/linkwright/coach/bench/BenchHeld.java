package linkwright.coach.bench;

import java.util.Optional;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.PlaceId;
import linkwright.routine.Remedy;

/**
 * The bench.
 *
 * @param digits the number typed for "how many"
 * @param ask what the bench asks before it goes on
 * @param part which part of the step's texts is shown; counts on, the drawing goes round
 * @param remedy the remedy of the last redo, shown until the next piece
 * @param cardPage the page of the caution that is to be seen
 * @param drawn which drawing of the step is shown in place of its texts, from 1; 0 for none
 */
public record BenchHeld(
    String digits, BenchAsk ask, int part, Optional<Remedy> remedy, int cardPage, int drawn)
    implements Held {
  @Override
  public PlaceId place() {
    return PlaceId.BENCH;
  }

  /** The pages of a caution that is to be seen turn apart from the step's texts. */
  @Override
  public int turned() {
    return cardPage > 0 ? cardPage : part;
  }

  public static final BenchHeld PLAIN =
      new BenchHeld("", new BenchAsk.Nothing(), 0, Optional.empty(), 0, 0);
}
