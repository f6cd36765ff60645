package linkwright.yield;

/** The answer to "how many blanks shall I cut": a number, or why there is none. */
public sealed interface BlanksToCut {
  /**
   * So many blanks are enough.
   *
   * @param blanks the fewest further blanks, 0 if none are wanted
   * @param chance the chance that enough of them come good, at least the one that was asked for
   */
  record Blanks(int blanks, double chance) implements BlanksToCut {}

  /**
   * No number of blanks gives the chance that was asked for.
   *
   * @param sentence why, and what would help, for the user to read
   */
  record OutOfReach(String sentence) implements BlanksToCut {}
}
