package linkwright.yield;

/**
 * What one stage did to the pieces that came to it.
 *
 * @param passed pieces that came through it, those too that were lost later on; 0 or more
 * @param lost pieces that were lost at it, 0 or more
 */
public record StagePassed(int passed, int lost) {
  /**
   * Checks the counts.
   *
   * @throws IllegalArgumentException if one is negative
   */
  public StagePassed {
    Yield.requireCount("passed", passed);
    Yield.requireCount("lost", lost);
  }
}
