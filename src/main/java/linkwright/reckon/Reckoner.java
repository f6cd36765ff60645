package linkwright.reckon;

import java.util.List;
import java.util.Map;

/** All sums of the bench, by name. */
public final class Reckoner {
  private static final List<Working> WORKINGS =
      List.of(
          new WireSum(),
          new DrawSum(),
          new RingSum(),
          new FormerSum(),
          new LinkSum(),
          new PlanishSum(),
          new BlankSum(),
          new ChainSum(),
          new SpareSum(),
          new CutSum(),
          new SolderSum(),
          new PullSum(),
          new SectionSum(),
          new IngotSum(),
          new AlloySum(),
          new BallSum(),
          new OtherMetalSum(),
          new HeatSum(),
          new BodySum());

  private Reckoner() {}

  /** The sums, in the order of the work. */
  public static List<Sum> sums() {
    return WORKINGS.stream().map(Working::sum).toList();
  }

  /**
   * Works a sum out from what was typed; everything that is wrong is told at once.
   *
   * @param id the name of one of {@link #sums}
   * @param typed key of an ask → what was typed; a key that is missing or blank has no answer
   * @param given what it rests on
   * @throws IllegalArgumentException if there is no such sum
   */
  public static Reckoning reckon(String id, Map<String, String> typed, ReckoningBasis given) {
    Working working =
        WORKINGS.stream()
            .filter(one -> one.sum().id().equals(id))
            .findFirst()
            .orElseThrow(() -> new IllegalArgumentException("id is no sum: " + id));
    Answers answers = new Answers(working.sum(), typed, given);
    Outcome outcome = new Outcome();
    working.work(answers, outcome);
    return outcome.reckoning(answers);
  }
}
