package linkwright.lesson;

import java.util.ArrayList;
import java.util.List;
import linkwright.reference.Picture;

/**
 * A question as it is put: its answers in the order in which they are shown.
 *
 * @param asks the question
 * @param answers the answers, shuffled
 * @param right which of them is right, from 0
 * @param after what is said once it is answered: the working, or why; may be empty
 * @param drawn the picture of which the answers tell the states, in their order; empty for none
 */
public record Asked(
    String asks, List<String> answers, int right, String after, List<Picture> drawn) {
  public Asked {
    answers = List.copyOf(answers);
    drawn = List.copyOf(drawn);
  }

  /** One without a picture. */
  Asked(String asks, List<String> answers, int right, String after) {
    this(asks, answers, right, after, List.of());
  }

  /** One whose answers a seed shuffles. */
  static Asked shuffled(
      String asks, String right, List<String> wrong, String after, Chance chance) {
    List<String> all = new ArrayList<>(wrong);
    all.add(right);
    List<String> shown = chance.shuffled(all);
    return new Asked(asks, shown, shown.indexOf(right), after);
  }

  /** The right answer. */
  public String rightAnswer() {
    return answers.get(right);
  }
}
