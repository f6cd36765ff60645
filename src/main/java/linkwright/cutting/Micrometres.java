package linkwright.cutting;

/** Millimetres as whole micrometres: pieces rounded up, stock rounded down, never the other way. */
final class Micrometres {
  /** Far below a micrometre, far above what a double errs on a kilometre. */
  private static final double SLACK = 1e-6;

  private Micrometres() {}

  static long up(double mm) {
    return (long) Math.ceil(mm * 1000 - SLACK);
  }

  static long down(double mm) {
    return (long) Math.floor(mm * 1000 + SLACK);
  }

  static double mm(long micrometres) {
    return micrometres / 1000.0;
  }
}
