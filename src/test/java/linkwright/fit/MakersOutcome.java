package linkwright.fit;

import java.util.List;
import java.util.Locale;

/**
 * What came of a simulation.
 *
 * @param fitted errors of all makers after 0, 1, 2 … measured pieces
 * @param oracle errors of the oracle's pieces, all together: it has nothing to learn
 * @param unmade pieces that the blank was too short for
 * @param outOfReach makers drawn for whom the formers reach no wish
 */
record MakersOutcome(List<Errors> fitted, Errors oracle, int unmade, int outOfReach) {
  /** Error of one piece: relative error of the true length, and how many spreads it was off. */
  record Miss(double length, double width, double spreads) {}

  /** Errors of all makers at one stage. */
  record Errors(List<Double> length, List<Double> width, double withinOneSpread) {
    static Errors of(List<Miss> misses) {
      return new Errors(
          misses.stream().map(Miss::length).toList(),
          misses.stream().map(Miss::width).toList(),
          misses.stream().filter(miss -> miss.spreads() <= 1).count() / (double) misses.size());
    }

    static double quantile(List<Double> values, double share) {
      double[] sorted = values.stream().mapToDouble(Double::doubleValue).sorted().toArray();
      return sorted[(int) Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
    }

    double median() {
      return quantile(length, 0.5);
    }

    double ninth() {
      return quantile(length, 0.9);
    }
  }

  String table(String title) {
    StringBuilder text = new StringBuilder(title).append('\n');
    text.append("  pieces   length error, median and 90 %   oracle's           ratios\n");
    for (int i = 0; i < fitted.size(); i++) {
      text.append(
          String.format(
              Locale.ROOT,
              "  %d        %5.2f %%  %5.2f %%   %5.2f %%  %5.2f %%  %5.2f  %5.2f"
                  + "   width %5.2f %% (%5.2f %%)  in one spread %4.1f %% (%4.1f %%)%n",
              i,
              100 * fitted.get(i).median(),
              100 * fitted.get(i).ninth(),
              100 * oracle.median(),
              100 * oracle.ninth(),
              fitted.get(i).median() / oracle.median(),
              fitted.get(i).ninth() / oracle.ninth(),
              100 * Errors.quantile(fitted.get(i).width(), 0.5),
              100 * Errors.quantile(oracle.width(), 0.5),
              100 * fitted.get(i).withinOneSpread(),
              100 * oracle.withinOneSpread()));
    }
    return text.append("  pieces that the blank was too short for: ")
        .append(unmade)
        .append("; makers for whom no wish was in reach: ")
        .append(outOfReach)
        .toString();
  }
}
