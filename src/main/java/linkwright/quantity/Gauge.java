package linkwright.quantity;

import java.util.OptionalInt;

/** The two wire gauges of the trade, in millimetres. */
public final class Gauge {
  /** 4/0, the thickest of the American gauge. */
  static final double THICKEST_AWG = -3;

  /** The thinnest of the American gauge. */
  static final double THINNEST_AWG = 56;

  /** 7/0, the thickest of the British gauge, as 1/0 is 0, 2/0 is −1 and so on. */
  private static final int FIRST_SWG = -6;

  /** Inches for 7/0 to 50. Source: BS 3737:1964; it is a list, there is no formula. */
  private static final double[] SWG_INCHES = {
    .500,
    .464,
    .432,
    .400,
    .372,
    .348, // 7/0 to 2/0
    .324,
    .300,
    .276,
    .252,
    .232,
    .212,
    .192,
    .176, // 0 to 7
    .160,
    .144,
    .128,
    .116,
    .104,
    .092,
    .080,
    .072, // 8 to 15
    .064,
    .056,
    .048,
    .040,
    .036,
    .032,
    .028,
    .024, // 16 to 23
    .022,
    .020,
    .018,
    .0164,
    .0148,
    .0136,
    .0124,
    .0116, // 24 to 31
    .0108,
    .0100,
    .0092,
    .0084,
    .0076,
    .0068,
    .0060,
    .0052, // 32 to 39
    .0048,
    .0044,
    .0040,
    .0036,
    .0032,
    .0028,
    .0024,
    .0020, // 40 to 47
    .0016,
    .0012,
    .0010 // 48 to 50
  };

  private Gauge() {}

  /**
   * Diameter of an American (Brown and Sharpe) gauge number, not rounded.
   *
   * <p>d = 0.127 mm × 92^((36 − n)/39)
   *
   * @param number the gauge number, from −3 (4/0) to 56; need not be whole
   * @return diameter in mm, from 11.68 down to 0.0124
   * @throws IllegalArgumentException if the number is outside the gauge. Source: ASTM B258.
   */
  public static double awgMm(double number) {
    if (!(number >= THICKEST_AWG && number <= THINNEST_AWG)) {
      throw new IllegalArgumentException("number must be from -3 to 56, not " + number);
    }
    return 0.127 * Math.pow(92, (36 - number) / 39);
  }

  /**
   * Diameter of a British standard gauge number, −6 (7/0) to 50, in mm; for another number a
   * sentence. Source: BS 3737:1964.
   */
  public static Read<Double> swgMm(int number) {
    int last = FIRST_SWG + SWG_INCHES.length - 1;
    if (number < FIRST_SWG || number > last) {
      return Read.bad(
          number
              + " SWG is not in the list, which runs from 7/0 to "
              + last
              + ". Write the size, as in 0.9 mm.");
    }
    return Read.good(SWG_INCHES[number - FIRST_SWG] * 25.4);
  }

  /**
   * The American gauge number of a diameter, as a number with decimals: the inverse of {@link
   * #awgMm}.
   *
   * @param diameterMm diameter in mm, above 0
   * @throws IllegalArgumentException if the diameter is not above 0 or not finite
   */
  public static double nearestAwg(double diameterMm) {
    if (!(diameterMm > 0 && diameterMm <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException("diameterMm must be above 0, not " + diameterMm);
    }
    return 36 - 39 * Math.log(diameterMm / 0.127) / Math.log(92);
  }

  /**
   * The whole American gauge number whose diameter differs by no more than a share.
   *
   * @param diameterMm diameter in mm, above 0
   * @param share how far it may be off, as a share of the gauge's diameter: 0.01 for 1 %
   */
  public static OptionalInt awgWithin(double diameterMm, double share) {
    int number = (int) Math.round(nearestAwg(diameterMm));
    if (number < THICKEST_AWG || number > THINNEST_AWG) {
      return OptionalInt.empty();
    }
    double off = Math.abs(diameterMm / awgMm(number) - 1);
    return off <= share ? OptionalInt.of(number) : OptionalInt.empty();
  }
}
