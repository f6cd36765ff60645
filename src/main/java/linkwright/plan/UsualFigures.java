package linkwright.plan;

/** What is taken where nothing is typed; the plan and the reckoner take the same. */
public final class UsualFigures {
  /** Flush cutters turn no wire to dust; mm. Common practice, no source. */
  public static final double KERF_MM = 0;

  /** What is held of a coil while it is wound and sawn, mm. Common practice, no source. */
  public static final double COIL_TAIL_MM = 10;

  /**
   * The share of pieces lost for good, where no routine says its own. Common practice, no source.
   */
  public static final double LOSS = 0.05;

  /** The wished chance of having cut enough; this program's choice. */
  public static final double CHANCE = 0.9;

  private UsualFigures() {}
}
