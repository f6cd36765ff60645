package linkwright.hands;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import linkwright.fit.Verdict;
import linkwright.job.Fact;
import linkwright.job.Trials;
import linkwright.link.Pattern;

/**
 * A ring is as large as its mandrel makes it, and its blank only closes it: whoever wants the next
 * one larger needs a larger mandrel, not more wire over the same.
 */
public final class OtherMandrel {
  private static final double STEP_MM = 0.1;

  /** So many steps are tried from the mandrel that was taken. */
  private static final int MOST_STEPS = 10;

  private OtherMandrel() {}

  /**
   * The formers to choose from for the next piece: those owned, but for a ring that was to be
   * larger or smaller, those owned that are so; where none is, sizes in steps of 0.1 mm.
   *
   * @param ownedMm former → the inside diameters owned, mm
   * @param trials what was tried
   * @param wireMm the links' wire, mm
   * @param size which link of the chain; the planned one has no name
   */
  public static Map<String, List<Double>> orOwned(
      Pattern pattern,
      Map<String, List<Double>> ownedMm,
      Trials trials,
      double wireMm,
      String size) {
    if (!pattern.isRing() || pattern.formersMm().size() != 1) {
      return ownedMm;
    }
    Optional<Fact.TestPieceTried> last =
        trials.lastOf(wireMm).filter(piece -> piece.size().equals(size));
    String former = pattern.formersMm().keySet().iterator().next();
    int way = last.map(piece -> way(Verdicts.of(piece.verdicts()))).orElse(0);
    Optional<Double> takenMm = last.map(piece -> piece.formersMm().get(former));
    return way == 0 || takenMm.isEmpty()
        ? ownedMm
        : Map.of(former, beyond(ownedMm.getOrDefault(former, List.of()), takenMm.get(), way));
  }

  /** Above 0 for a larger ring, below 0 for a smaller one, 0 where that is not said. */
  private static int way(List<Verdict> verdicts) {
    boolean larger = verdicts.contains(Verdict.LONGER) || verdicts.contains(Verdict.WIDER);
    boolean smaller = verdicts.contains(Verdict.SHORTER) || verdicts.contains(Verdict.NARROWER);
    return Boolean.compare(larger, smaller);
  }

  private static List<Double> beyond(List<Double> ownedMm, double takenMm, int way) {
    List<Double> owned = ownedMm.stream().filter(mm -> way * (mm - takenMm) > STEP_MM / 2).toList();
    return owned.isEmpty()
        ? IntStream.rangeClosed(1, MOST_STEPS)
            .mapToObj(step -> STEP_MM * Math.rint((takenMm + way * step * STEP_MM) / STEP_MM))
            .filter(mm -> mm > 0)
            .toList()
        : owned;
  }
}
