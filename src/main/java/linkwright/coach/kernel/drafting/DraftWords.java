package linkwright.coach.kernel.drafting;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Model;

/** What was typed into forms and waits to be entered, in words. */
public final class DraftWords {
  private DraftWords() {}

  /** What is typed in such a form, as one would say it; empty if nothing waits in one. */
  public static String of(Form.Purpose purpose) {
    return purpose.waits();
  }

  /** The same of what is thrown away; a bench and a job themselves are not. */
  static String thrown(Form.Purpose purpose) {
    return (purpose.isJobless() ? "what was typed of " : "") + of(purpose);
  }

  /** The name under which what is typed in such a form is kept. */
  static String name(Form.Purpose purpose) {
    return purpose.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The forms in which something waits, of all that is kept by their names. */
  public static List<Form.Purpose> waiting(Map<String, Map<String, String>> drafts) {
    return Arrays.stream(Form.Purpose.values())
        .filter(purpose -> !of(purpose).isEmpty())
        .filter(
            purpose ->
                drafts.getOrDefault(name(purpose), Map.of()).values().stream()
                    .anyMatch(text -> !text.isBlank()))
        .toList();
  }

  /** What was typed that is no job's and waits, form → field → text. */
  public static Map<String, Map<String, String>> jobless(Model model) {
    return model.bench().mind().typed().orElse(Map.of());
  }

  /** The badge of a job in which something waits, one line or none. */
  public static List<String> badge(Map<String, Map<String, String>> drafts) {
    List<String> words = waiting(drafts).stream().map(DraftWords::of).toList();
    return words.isEmpty() ? List.of() : List.of("typed, not entered: " + String.join(", ", words));
  }
}
