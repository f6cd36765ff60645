package linkwright.yield;

/**
 * The chance that enough pieces come good from so many blanks, out of the very losses by which
 * {@link Yield} counts blanks: so that they can be held against published values.
 */
public final class ChanceOfEnough {
  private ChanceOfEnough() {}

  public static double of(int more, int blanks, Rate loss) {
    if (more == 0) {
      return 1;
    }
    if (blanks < more || loss.successes() == 0) {
      return 0;
    }
    Losses losses = new Losses(more, loss);
    while (more + losses.count() < blanks) {
      losses.oneMore();
    }
    return losses.chanceOfNoMore();
  }
}
