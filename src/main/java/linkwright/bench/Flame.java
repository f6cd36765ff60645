package linkwright.bench;

/**
 * A torch and what it burns.
 *
 * @param torch what she calls the torch; may be empty
 * @param fuel propane, butane, acetylene and the like; empty if it was not said
 * @param oxygen whether it burns with oxygen from a bottle or a concentrator
 */
public record Flame(String torch, String fuel, boolean oxygen) {
  /** Nothing was said. */
  public static final Flame NOT_SAID = new Flame("", "", false);
}
