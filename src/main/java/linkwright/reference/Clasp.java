package linkwright.reference;

/**
 * A clasp.
 *
 * @param id the short word that names it in files and commands
 * @param name its name for reading
 * @param insideLengthMm from inside end to inside end, pulled, mm
 * @param massG its mass, g
 * @param springInside whether there is a spring in it: never heat or pickle it then
 * @param source where its figures come from
 */
public record Clasp(
    String id,
    String name,
    double insideLengthMm,
    double massG,
    boolean springInside,
    String source) {
  /** Refuses sizes below nothing. */
  public Clasp {
    if (!(insideLengthMm >= 0) || !(massG >= 0)) {
      throw new IllegalArgumentException(
          "insideLengthMm " + insideLengthMm + " and massG " + massG + " must not be negative");
    }
  }
}
