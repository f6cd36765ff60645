package linkwright.yield;

import java.util.List;

/**
 * The chance that several lots all come good that are lost at one unknown rate: the hand that
 * spoils the small links spoils the large ones too, yet a small one more makes up for no large one.
 *
 * <p>Given the share lost, the lots are independent; the mean over what is believed of the share is
 * the integral over its Beta distribution. With p = 1/(1 + e⁻ˣ) its density is p^a(1 − p)^b over x,
 * smooth and vanishing at both ends, so that plain steps are exact to six digits and more. Checked
 * in the tests against {@link Losses} for one lot and by simulation for several.
 */
public final class Together {
  /** Beyond that, |x|, a share is 0 or 1 to eleven digits, and is taken as that. */
  private static final double END = 25;

  private static final double WIDEST_STEP = 0.1;

  private Together() {}

  /**
   * The chance that the first lots need exactly i further blanks in all and the second exactly j.
   *
   * @param first lots that share their further blanks
   * @param second lots that share theirs, lost at the same unknown rate; none for none
   * @param loss what is believed of that rate
   * @param mostFirst the most further blanks of the first that are asked about, 0 or more
   * @param mostSecond the same of the second
   * @return [i][j], i from 0 to mostFirst, j from 0 to mostSecond
   */
  public static double[][] further(
      List<SizeLot> first, List<SizeLot> second, Rate loss, int mostFirst, int mostSecond) {
    double[][] all = new double[mostFirst + 1][mostSecond + 1];
    if (loss.failures() == 0 || loss.successes() == 0) {
      add(all, first, second, loss.failures() == 0 ? 0 : 1, 1);
      return all;
    }
    double a = loss.failures();
    double b = loss.successes();
    int steps = (int) Math.ceil(2 * END / Math.min(WIDEST_STEP, Math.sqrt(1 / a + 1 / b) / 4));
    double step = 2 * END / steps;
    double peak = log(Math.log(a / b), a, b);
    double sum = 0;
    for (int i = 0; i <= steps; i++) {
      double x = -END + i * step;
      double inside = i == 0 || i == steps ? 0.5 : 1;
      double weight = inside * Math.exp(log(x, a, b) - peak) * step;
      sum += weight;
      if (weight > 1e-14) {
        add(all, first, second, 1 / (1 + Math.exp(-x)), weight);
      }
    }
    double none = Math.exp(-a * END - peak) / a;
    double every = Math.exp(-b * END - peak) / b;
    add(all, first, second, 0, none);
    add(all, first, second, 1, every);
    for (double[] row : all) {
      for (int j = 0; j < row.length; j++) {
        row[j] /= sum + none + every;
      }
    }
    return all;
  }

  private static double log(double x, double a, double b) {
    // Written so that neither end overflows.
    return x < 0
        ? a * x - (a + b) * Math.log1p(Math.exp(x))
        : -b * x - (a + b) * Math.log1p(Math.exp(-x));
  }

  private static void add(
      double[][] all, List<SizeLot> first, List<SizeLot> second, double lost, double weight) {
    double[] ofFirst = together(first, lost, all.length - 1);
    double[] ofSecond = together(second, lost, all[0].length - 1);
    for (int i = 0; i < ofFirst.length; i++) {
      for (int j = 0; j < ofSecond.length; j++) {
        all[i][j] += weight * ofFirst[i] * ofSecond[j];
      }
    }
  }

  private static double[] together(List<SizeLot> lots, double lost, int most) {
    double[] sum = new double[most + 1];
    sum[0] = 1;
    for (SizeLot lot : lots) {
      double[] one = lot.further(lost, most);
      double[] both = new double[most + 1];
      for (int i = 0; i <= most; i++) {
        for (int j = 0; sum[i] > 0 && i + j <= most; j++) {
          both[i + j] += sum[i] * one[j];
        }
      }
      sum = both;
    }
    return sum;
  }
}
