package linkwright.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Formers that would reach a wish where those owned do not: looked for in even steps from the
 * wire's thickness to the wished width, coarser where there are more of them.
 */
final class OtherFormers {
  /** About so many choices are gone through. */
  private static final int MOST_CHOICES = 150;

  /** A former is told to this. */
  private static final double STEP_MM = 0.1;

  /** Of how many it is looked up whether they cross. */
  private static final int LOOKED_AT = 6;

  private OtherFormers() {}

  /**
   * The formers whose link comes nearest to the wish.
   *
   * @param search how the best blank over formers is found
   */
  static Optional<Map<String, Double>> reaching(Shape shape, LinkSize wish, NextBlank search) {
    List<NextBlank.Choice> reached = new ArrayList<>();
    for (Map<String, Double> formers : choices(shape, wish)) {
      search
          .blank(formers)
          .filter(choice -> Reach.of(choice.size(), wish) == Reach.REACHED)
          .ifPresent(reached::add);
    }
    reached.sort(Comparator.comparingDouble(search::miss));
    return reached.stream()
        .limit(LOOKED_AT)
        .filter(choice -> search.overlapMm(choice) == 0)
        .findFirst()
        .map(NextBlank.Choice::formersMm);
  }

  private static List<Map<String, Double>> choices(Shape shape, LinkSize wish) {
    List<String> names = List.copyOf(shape.formersMm().keySet());
    List<Double> sizes = sizes(shape.wireMm(), wish.widthMm(), names.size());
    List<Map<String, Double>> choices = List.of(Map.of());
    for (String name : names) {
      List<Map<String, Double>> longer = new ArrayList<>();
      for (Map<String, Double> begun : choices) {
        for (double mm : sizes) {
          Map<String, Double> choice = new LinkedHashMap<>(begun);
          choice.put(name, mm);
          longer.add(choice);
        }
      }
      choices = longer;
    }
    return choices;
  }

  private static List<Double> sizes(double wireMm, double mostMm, int formers) {
    int each = (int) Math.max(2, Math.floor(Math.pow(MOST_CHOICES, 1.0 / Math.max(1, formers))));
    double step = Math.max(STEP_MM, STEP_MM * Math.ceil((mostMm - wireMm) / each / STEP_MM));
    List<Double> sizes = new ArrayList<>();
    for (double mm = STEP_MM * Math.ceil(wireMm / STEP_MM); mm <= mostMm; mm += step) {
      sizes.add(STEP_MM * Math.rint(mm / STEP_MM));
    }
    return sizes;
  }
}
