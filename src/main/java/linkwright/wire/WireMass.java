package linkwright.wire;

/** Mass from length and length from mass. */
public final class WireMass {
  private WireMass() {}

  /**
   * Mass of a length of wire.
   *
   * <p>m = A·L·ρ/1000
   *
   * @param areaMm2 area of its section, mm², above 0
   * @param lengthMm length, mm, not below 0
   * @param densityGCm3 density, g/cm³, above 0
   * @return g, not below 0
   * @throws IllegalArgumentException if an argument is out of its domain or the mass overflows
   */
  public static double grams(double areaMm2, double lengthMm, double densityGCm3) {
    Domain.above0("areaMm2", areaMm2);
    Domain.notBelow0("lengthMm", lengthMm);
    Domain.above0("densityGCm3", densityGCm3);
    return Domain.result("mass", areaMm2 * lengthMm * densityGCm3 / 1000);
  }

  /**
   * Length of wire that has a mass.
   *
   * <p>L = 1000·m/(A·ρ)
   *
   * @param areaMm2 area of its section, mm², above 0
   * @param grams mass, g, not below 0
   * @param densityGCm3 density, g/cm³, above 0
   * @return mm, not below 0
   * @throws IllegalArgumentException if an argument is out of its domain or the length overflows
   */
  public static double lengthMm(double areaMm2, double grams, double densityGCm3) {
    Domain.above0("areaMm2", areaMm2);
    Domain.notBelow0("grams", grams);
    Domain.above0("densityGCm3", densityGCm3);
    return Domain.result("length", 1000 * grams / (areaMm2 * densityGCm3));
  }
}
