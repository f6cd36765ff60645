package linkwright.yield;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/**
 * What is believed of the share of pieces lost while many are still on their way.
 *
 * <p>A piece that is lost is known at once, one that will come good only at the end: counting those
 * two alone, half way through a run, takes every loss and hardly a success. So each stage is judged
 * by those that came to it. The usual Beta(a, b) of the whole way is parted into one for each stage
 * so that, nothing seen, their product is that same Beta: the share that passes the last is Beta(b,
 * a₁), the last but one Beta(b + a₁, a₂), and so on; each stage then adds its own passes and
 * losses. When no piece is on its way any more the product is the plain Beta(a + lost, b + good).
 *
 * <p>The product is told as the Beta with its mean and spread.
 *
 * <p>Source: S. Walker, P. Muliere, Beta-Stacy processes and a generalization of the Pólya-urn
 * scheme, The Annals of Statistics 25 (1997) 1762 (from memory). That half of what is usually lost
 * is seen at the last stage, where the pieces are judged, and the rest at the others alike, is a
 * choice of this program.
 */
public final class LossOnTheWay {
  private static final double SEEN_LAST = 0.5;

  private LossOnTheWay() {}

  /**
   * What is believed after that was seen.
   *
   * @param usual the usual share lost, 0 to 1
   * @param stages the stages in order up to the one where pieces are judged, one or more
   * @throws IllegalArgumentException if the share lies outside or there is no stage
   */
  public static Rate seen(double usual, List<StagePassed> stages) {
    if (stages.isEmpty()) {
      throw new IllegalArgumentException("stages is empty");
    }
    double mean = 1;
    double square = 1;
    for (Rate stage : byStage(usual, stages)) {
      double passes = stage.successes();
      double all = passes + stage.failures();
      mean *= all > 0 ? passes / all : 0;
      square *= all > 0 ? passes * (passes + 1) / (all * (all + 1)) : 0;
    }
    double spread = square - mean * mean;
    if (mean <= 0 || mean >= 1 || spread <= 0) {
      int lost = stages.stream().mapToInt(StagePassed::lost).sum();
      return Rate.usual(usual).seen(stages.get(stages.size() - 1).passed(), lost);
    }
    double weight = mean * (1 - mean) / spread - 1;
    return new Rate(weight * (1 - mean), weight * mean);
  }

  /** What is believed of each stage alone. */
  static List<Rate> byStage(double usual, List<StagePassed> stages) {
    Rate believed = Rate.usual(usual);
    int earlier = stages.size() - 1;
    Deque<Rate> each = new ArrayDeque<>();
    double left = believed.successes();
    for (int i = earlier; i >= 0; i--) {
      double share = earlier == 0 ? 1 : i == earlier ? SEEN_LAST : (1 - SEEN_LAST) / earlier;
      double lost = believed.failures() * share;
      each.addFirst(new Rate(lost + stages.get(i).lost(), left + stages.get(i).passed()));
      left += lost;
    }
    return List.copyOf(each);
  }
}
