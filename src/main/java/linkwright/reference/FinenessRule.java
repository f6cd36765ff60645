package linkwright.reference;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What one country says of marking one metal's fineness.
 *
 * @param country where it applies
 * @param family the precious metal
 * @param finenesses the finenesses that may be marked, parts in a thousand
 * @param exemptBelowG articles that weigh less than this need no mark, g; empty if there is no such
 *     exemption
 * @param ofContained whether that weight is the precious metal's own, not its alloy's
 * @param anyFineness whether any fineness may be marked, not only those listed
 * @param solderAtLeast fineness marked → the least fineness of its solder, parts in a thousand; 0
 *     stands for whatever is marked; empty if none is known
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
    boolean ofContained,
    boolean anyFineness,
    Map<Integer, Integer> solderAtLeast,
    boolean compulsory,
    String date,
    String source,
    String note) {
  private static final int WHATEVER = 0;

  /** Copies the collections. */
  public FinenessRule {
    finenesses = List.copyOf(finenesses);
    solderAtLeast = Collections.unmodifiableMap(new TreeMap<>(solderAtLeast));
  }

  /**
   * The fineness that an alloy is marked with here: its own where any may be, else the highest
   * listed that it reaches; empty if it reaches none.
   */
  public Optional<Integer> markedAs(int permille) {
    return anyFineness
        ? Optional.of(permille)
        : finenesses.stream().filter(listed -> listed <= permille).max(Comparator.naturalOrder());
  }

  /** The least fineness of solder on what is marked so, parts in a thousand; empty if not known. */
  public Optional<Integer> solderAtLeast(int marked) {
    Integer all = solderAtLeast.get(WHATEVER);
    Integer least = solderAtLeast.get(marked);
    return Optional.ofNullable(least == null ? all : least);
  }

  /** What of an article of that mass and fineness counts against the exemption, g. */
  public double weighedG(double massG, int permille) {
    return ofContained ? massG * permille / 1000 : massG;
  }

  /** Whether an article of this mass and fineness has to be marked here. */
  public boolean needsMark(double massG, int permille) {
    return needsMark(weighedG(massG, permille));
  }

  /** Whether what weighs so much has to be marked here before it is sold as this metal. */
  public boolean needsMark(double massG) {
    return compulsory && (exemptBelowG.isEmpty() || massG >= exemptBelowG.get());
  }
}
