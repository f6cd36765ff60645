package linkwright.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.fit.Maker;
import linkwright.link.Pattern;

/** The formers that a wish names or asks for, as a choice of one each. */
public final class FormersOwned {
  /** Mandrels are told to this, mm. */
  private static final double STEP_MM = 0.1;

  /** No wire springs back so far that its mandrel is less than this share of the link's inside. */
  private static final double LEAST_SHARE = 0.6;

  private FormersOwned() {}

  /**
   * Name → the size there is: the formers named; of a round link with a length and no mandrel, the
   * one that gives the length in those hands.
   */
  public static Map<String, List<Double>> of(ChainWish wish, Maker hands) {
    Map<String, List<Double>> owned = new LinkedHashMap<>();
    wish.link().formersMm().forEach((name, mm) -> owned.put(name, List.of(mm)));
    if (found(wish.link())) {
      owned.putAll(
          mandrel(
              wish.link().pattern().orElseThrow(),
              wish.wireMm(),
              hands,
              wish.link().lengthMm().orElseThrow()));
    }
    return owned;
  }

  /** Whether the mandrel was found for the wish, so that it has to be told. */
  public static boolean found(WishedLink link) {
    return link.formersMm().isEmpty()
        && link.blankMm().isEmpty()
        && link.lengthMm().isPresent()
        && link.pattern().filter(Pattern::isRing).isPresent();
  }

  /**
   * The mandrel, to a tenth of a millimetre, over which a round link comes as long as wished.
   *
   * @param pattern a ring
   * @param wireMm its wire, mm
   * @param hands whose hands
   * @param wishedMm the length wished, mm
   * @return its name → the size; empty where none does
   */
  public static Map<String, List<Double>> mandrel(
      Pattern pattern, double wireMm, Maker hands, double wishedMm) {
    String name = pattern.formersMm().keySet().iterator().next();
    double inside = wishedMm - 2 * wireMm;
    double best = 0;
    double nearest = Double.POSITIVE_INFINITY;
    int last = (int) Math.floor(inside / STEP_MM + 1e-9);
    for (int step = (int) Math.ceil(LEAST_SHARE * inside / STEP_MM); step <= last; step++) {
      double mm = step / (1 / STEP_MM);
      OptionalDouble comes = lengthMm(pattern, wireMm, hands, Map.of(name, mm), wishedMm);
      if (comes.isPresent() && Math.abs(comes.getAsDouble() - wishedMm) < nearest) {
        nearest = Math.abs(comes.getAsDouble() - wishedMm);
        best = mm;
      }
    }
    return best > 0 ? Map.of(name, List.of(best)) : Map.of();
  }

  /** Whether the mandrel follows from the blank that was typed, so that it has to be told. */
  public static boolean closedBy(WishedLink link) {
    return link.formersMm().isEmpty()
        && link.blankMm().isPresent()
        && link.pattern().filter(Pattern::isRing).isPresent();
  }

  /**
   * The mandrel, to a tenth of a millimetre, round which a blank closes: the widest that it goes
   * round.
   *
   * @return its name → the size; empty where it goes round none
   */
  static Map<String, Double> closedBy(Pattern pattern, double wireMm, Maker hands, double blankMm) {
    String name = pattern.formersMm().keySet().iterator().next();
    for (int step = (int) (blankMm / Math.PI / STEP_MM); step * STEP_MM >= wireMm; step--) {
      Map<String, Double> over = Map.of(name, step / (1 / STEP_MM));
      if (LinkInHands.form(pattern, wireMm, hands, blankMm, over).isGood()) {
        return over;
      }
    }
    return Map.of();
  }

  private static OptionalDouble lengthMm(
      Pattern pattern, double wireMm, Maker hands, Map<String, Double> formers, double lengthMm) {
    // A ring is as long as its mandrel makes it; the blank only has to be long enough.
    return LinkInHands.form(pattern, wireMm, hands, 2 * Math.PI * lengthMm, formers)
        .found()
        .map(link -> OptionalDouble.of(link.lengthMm()))
        .orElse(OptionalDouble.empty());
  }
}
