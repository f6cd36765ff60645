package linkwright.coach.kernel.drafting;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import linkwright.coach.content.ActMention;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Model;
import linkwright.coach.keys.Act;

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
    if (drafts.isEmpty()) {
      return List.of();
    }
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

  /**
   * At the place where such a form is opened: that something waits in it, and its keys; or none.
   */
  public static List<Part> here(Model model, Form.Purpose purpose, Act opens) {
    return Drafting.waits(model, purpose)
        ? List.of(
            new Prose(
                Prose.Kind.ELSEWHERE,
                "typed, not entered: "
                    + of(purpose)
                    + "; "
                    + ActMention.of(opens)
                    + " goes on, "
                    + ActMention.of(Act.THROW_AWAY)
                    + " throws it away"))
        : List.of();
  }

  /** The badge of a job in which something waits, one line or none. */
  public static List<String> badge(Map<String, Map<String, String>> drafts) {
    List<String> words = waiting(drafts).stream().map(DraftWords::of).toList();
    return words.isEmpty() ? List.of() : List.of("typed, not entered: " + String.join(", ", words));
  }
}
