package linkwright.reference;

import java.util.List;
import java.util.Optional;

/**
 * What one country says of marking one metal's fineness.
 *
 * @param country where it applies
 * @param family the precious metal
 * @param finenesses the finenesses that may be marked, parts in a thousand
 * @param exemptBelowG articles that weigh less than this need no mark, g; empty if there is no such
 *     exemption
 * @param compulsory whether an article has to be marked at all before it is sold as this metal
 * @param date when it was read
 * @param source the law or the office
 * @param note what to mind
 */
public record FinenessRule(
    String country,
    Family family,
    List<Integer> finenesses,
    Optional<Double> exemptBelowG,
    boolean compulsory,
    String date,
    String source,
    String note) {
  /** Copies the list. */
  public FinenessRule {
    finenesses = List.copyOf(finenesses);
  }

  /** Whether an article of this mass has to be marked here before it is sold as this metal. */
  public boolean needsMark(double massG) {
    return compulsory && (exemptBelowG.isEmpty() || massG >= exemptBelowG.get());
  }
}
