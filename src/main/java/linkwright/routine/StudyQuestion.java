package linkwright.routine;

import java.util.List;

/**
 * Something a student can be asked.
 *
 * @param asks the question
 * @param answers the answers, the right one first; they are shuffled when they are shown
 * @param why why it is the right one; may be empty
 */
public record StudyQuestion(String asks, List<String> answers, String why) {
  public StudyQuestion {
    answers = List.copyOf(answers);
  }
}
