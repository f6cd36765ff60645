package linkwright.drawer;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.LotFact;
import linkwright.job.Strikes;

/**
 * What a job took out of a lot, or gave back.
 *
 * @param job the name of its book
 * @param at when
 * @param lot the lot
 * @param lengthMm how long; empty where it was weighed, mm
 * @param massG how heavy; empty where it was measured, g
 * @param back whether it came back
 */
public record Taking(
    String job,
    Instant at,
    String lot,
    OptionalDouble lengthMm,
    OptionalDouble massG,
    boolean back) {

  /**
   * All that a job's book says of lots; struck entries count no more. Wire that was weighed in goes
   * back into the lot that was taken from last, unless she said herself what went back.
   */
  public static List<Taking> in(String job, List<Entry> entries) {
    Strikes strikes = Strikes.in(entries);
    List<Taking> takings = new ArrayList<>();
    String last = "";
    Optional<Taking> weighed = Optional.empty();
    for (Entry entry : entries) {
      Fact fact = entry.fact();
      if (strikes.has(entry)) {
        continue;
      }
      if (fact instanceof Fact.WireAdded wire && !wire.lot().isEmpty()) {
        last = wire.lot();
        OptionalDouble length = OptionalDouble.of(wire.lengthMm());
        takings.add(new Taking(job, entry.at(), wire.lot(), length, OptionalDouble.empty(), false));
      }
      if (fact instanceof LotFact.StockTaken taken) {
        takings.add(
            new Taking(job, entry.at(), taken.lot(), taken.lengthMm(), taken.massG(), false));
      }
      if (fact instanceof LotFact.StockReturned back) {
        takings.add(new Taking(job, entry.at(), back.lot(), back.lengthMm(), back.massG(), true));
      }
      if (fact instanceof Fact.WeighedIn in && !last.isEmpty()) {
        Taking back =
            new Taking(job, entry.at(), last, OptionalDouble.empty(), in.wireReturnedG(), true);
        weighed = Optional.of(back).filter(any -> in.wireReturnedG().isPresent());
      }
    }
    if (takings.stream().noneMatch(Taking::back)) {
      weighed.ifPresent(takings::add);
    }
    return takings;
  }
}
