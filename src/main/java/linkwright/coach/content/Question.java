package linkwright.coach.content;

import java.util.List;

/**
 * A question with its answers.
 *
 * @param asks the question
 * @param answers what can be answered
 */
public record Question(String asks, List<Answer> answers) implements Part {
  public Question {
    answers = List.copyOf(answers);
  }

  /**
   * One answer.
   *
   * @param key what is pressed or typed for it
   * @param says the answer
   * @param means what it means or leads to; empty for nothing
   */
  public record Answer(String key, String says, String means) {}

  @Override
  public <R> R answer(PartCases<R> cases) {
    return cases.question(this);
  }
}
