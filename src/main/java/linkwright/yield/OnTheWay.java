package linkwright.yield;

import java.util.List;
import java.util.OptionalInt;

/**
 * Pieces that have come part of their way: each has only the stages before it left to fail at.
 *
 * <p>Of w pieces that have yet to come through the stages from j on, all with the share M of those
 * stages, w·E[M] come good with the variance w·E[M(1 − M)] + w²·Var M, and those of two stages vary
 * together by what they have still before them in common. What is told is the Beta of which a
 * beta-binomial count over all pieces has that mean and variance, so that it narrows as fewer
 * stages and pieces are left.
 *
 * @param usual the usual share lost of the whole way, 0 to 1
 * @param stages what each stage did so far, up to the one where pieces are judged
 * @param waiting pieces that have yet to come through each of these stages, as many numbers
 */
public record OnTheWay(double usual, List<StagePassed> stages, List<Integer> waiting) {
  /** As good as certain: of a larger weight no piece more or less would come. */
  private static final double MOST_WEIGHT = 1e6;

  /** Checks and copies the lists. */
  public OnTheWay {
    stages = List.copyOf(stages);
    waiting = List.copyOf(waiting);
    if (stages.isEmpty() || stages.size() != waiting.size()) {
      throw new IllegalArgumentException("stages and waiting must be alike: " + stages + waiting);
    }
    waiting.forEach(count -> Yield.requireCount("waiting", count));
  }

  /**
   * Further blanks to cut, with what is believed of all pieces then.
   *
   * @param further how many; empty if no number is enough
   * @param loss the share lost of these and of the pieces that are on their way
   */
  public record Further(OptionalInt further, Rate loss) {}

  /**
   * The fewest further blanks so that of each size enough come good.
   *
   * @param lacking good pieces that each size still lacks
   * @param confidence the wished chance, above 0, at most 1
   */
  public Further further(List<Integer> lacking, double confidence) {
    int there = waiting.stream().mapToInt(Integer::intValue).sum();
    int further = Math.max(0, lacking.stream().mapToInt(Integer::intValue).sum() - there);
    while (true) {
      Rate loss = loss(further);
      int blanks = -there;
      for (int more : lacking) {
        if (!(Yield.cut(more, loss, confidence) instanceof BlanksToCut.Blanks enough)) {
          return new Further(OptionalInt.empty(), loss);
        }
        blanks += enough.blanks();
      }
      if (blanks <= further) {
        return new Further(OptionalInt.of(further), loss);
      }
      // New ones have all of the way before them: each makes more be believed lost, never less.
      further = blanks;
    }
  }

  /**
   * What is believed of the share lost among the pieces on their way and so many new ones.
   *
   * @param fresh pieces that are yet to be cut, 0 or more
   */
  public Rate loss(int fresh) {
    List<Rate> each = LossOnTheWay.byStage(usual, stages);
    int count = each.size();
    double[] pieces = new double[count];
    double[] mean = new double[count + 1];
    double[] square = new double[count + 1];
    mean[count] = 1;
    square[count] = 1;
    double all = 0;
    double good = 0;
    double spread = 0;
    for (int i = count - 1; i >= 0; i--) {
      Rate stage = each.get(i);
      double passes = stage.successes();
      double seen = passes + stage.failures();
      mean[i] = mean[i + 1] * passes / seen;
      square[i] = square[i + 1] * passes * (passes + 1) / (seen * (seen + 1));
      pieces[i] = waiting.get(i) + (i == 0 ? fresh : 0);
      all += pieces[i];
      good += pieces[i] * mean[i];
      spread += pieces[i] * (mean[i] - square[i]);
    }
    for (int early = 0; early < count; early++) {
      for (int late = early; late < count; late++) {
        double between = mean[late] > 0 ? mean[early] / mean[late] : 0;
        double together = between * square[late] - mean[early] * mean[late];
        spread += (early == late ? 1 : 2) * pieces[early] * pieces[late] * together;
      }
    }
    double share = all > 0 ? good / all : 0;
    if (all < 2 || share <= 0 || share >= 1) {
      return LossOnTheWay.seen(usual, stages);
    }
    double likeness = (spread / (all * share * (1 - share)) - 1) / (all - 1);
    double weight = likeness > 1 / MOST_WEIGHT ? 1 / likeness - 1 : MOST_WEIGHT;
    return new Rate(weight * (1 - share), weight * share);
  }
}
