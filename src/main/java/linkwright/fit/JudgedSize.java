package linkwright.fit;

/**
 * What a verdict says of a size: the slope of −log of its chance with the size and its curvature,
 * per mm and mm². She sees a size with some noise, normal, and says "longer" below what is near
 * enough to the wish, "shorter" above, "right" between.
 *
 * @param slope above 0 where the verdict draws to a smaller size
 * @param curvature never below 0: the chance is log-concave
 */
record JudgedSize(double slope, double curvature) {

  /** "It is below that limit": of chance Φ((limit − size)/spread). */
  static JudgedSize below(double sizeMm, double limitMm, double spreadMm) {
    double lean = (limitMm - sizeMm) / spreadMm;
    double hazard = NormalTail.hazard(lean);
    return new JudgedSize(hazard / spreadMm, hazard * (hazard + lean) / (spreadMm * spreadMm));
  }

  /**
   * "It is within reach of the wish": of chance Φ((reach − off)/spread) − Φ((−reach − off)/spread).
   */
  static JudgedSize near(double offMm, double reachMm, double spreadMm) {
    if (offMm < 0) {
      return near(-offMm, reachMm, spreadMm).mirrored();
    }
    double upper = (reachMm - offMm) / spreadMm;
    double lower = (-reachMm - offMm) / spreadMm;
    double outside = Math.exp(NormalTail.logLowerTail(lower) - NormalTail.logLowerTail(upper));
    double above = NormalTail.hazard(upper) / (1 - outside);
    double below = NormalTail.hazard(lower) * outside / (1 - outside);
    double pull = above - below;
    return new JudgedSize(
        pull / spreadMm,
        Math.max(0, pull * pull + upper * above - lower * below) / (spreadMm * spreadMm));
  }

  /** The same said of the size with its sign turned. */
  JudgedSize mirrored() {
    return new JudgedSize(-slope, curvature);
  }
}
