package linkwright.coach.form;

import java.util.Map;
import java.util.Optional;

/**
 * Puts a question beside its field once; the same form kept again with it standing there is yes.
 */
public final class Asking {
  private Asking() {}

  /**
   * The form with the questions that were not put yet; empty when all of them stand there already,
   * or there is none.
   */
  public static Optional<Form> first(Form form, Map<String, String> questions) {
    boolean put =
        questions.entrySet().stream()
            .allMatch(
                asked ->
                    form.fields().stream()
                        .filter(field -> field.id().equals(asked.getKey()))
                        .allMatch(field -> field.trouble().equals(Optional.of(asked.getValue()))));
    return put ? Optional.empty() : Optional.of(form.withTroubles(questions));
  }

  /** Ends what is told beneath a form that asks. */
  public static final String ONCE_MORE = "Keep it once more if it is so.";

  /** The same of a form whose one field has its question before her eyes: not said twice. */
  public static String sentence(Form form, Map<String, String> questions) {
    return form.fields().size() == 1 ? ONCE_MORE : sentence(questions);
  }

  /** What is told beneath the form that asks. */
  public static String sentence(Map<String, String> questions) {
    return questions.values().iterator().next() + " " + ONCE_MORE;
  }
}
