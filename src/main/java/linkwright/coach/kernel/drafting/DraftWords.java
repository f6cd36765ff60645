package linkwright.coach.kernel.drafting;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import linkwright.coach.content.ActMention;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Model;
import linkwright.coach.keys.Act;

/** What was typed into forms and waits to be entered, in words. */
public final class DraftWords {
  private static final String OF = " of ";

  private DraftWords() {}

  /** What is typed in such a form, as one would say it; empty if nothing waits in one. */
  public static String of(Form.Purpose purpose) {
    return purpose.waits();
  }

  /** The same of what is thrown away; a bench and a job themselves are not. */
  static String thrown(Form.Purpose purpose) {
    return (purpose.isJobless() ? "what was typed of " : "") + of(purpose);
  }

  /** The same of each thing it is about, in the order in which it would be thrown away. */
  public static List<String> each(Form.Purpose purpose, Map<String, String> texts) {
    List<String> abouts = abouts(texts);
    return abouts.size() < 2
        ? List.of(of(purpose))
        : abouts.stream().map(about -> of(purpose) + told(about)).toList();
  }

  private static String told(String about) {
    return about.isEmpty() ? "" : " (" + about + ")";
  }

  /** What is thrown away of one of several things. */
  static String thrown(Form.Purpose purpose, String about) {
    return thrown(purpose) + told(about);
  }

  /** What something is typed of, in the order of the words for it. */
  public static List<String> abouts(Map<String, String> texts) {
    return texts.entrySet().stream()
        .filter(text -> !text.getValue().isBlank())
        .map(text -> about(text.getKey()))
        .distinct()
        .sorted()
        .toList();
  }

  /** The key of a field of a form, of what that is about. */
  static String key(String field, String about) {
    return about.isEmpty() ? field : field + OF + about;
  }

  /** The names under which what is typed in the fields of such a form is kept. */
  public static Set<String> keys(Form form) {
    return form.texts().keySet().stream()
        .map(field -> key(field, form.about()))
        .collect(Collectors.toSet());
  }

  /** What a key is about; empty for nothing. */
  static String about(String key) {
    int of = key.indexOf(OF);
    return of < 0 ? "" : key.substring(of + OF.length());
  }

  /** The name under which what is typed in such a form is kept. */
  public static String name(Form.Purpose purpose) {
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

  /** The same of that one form: of a lot, a job, a student; thrown away where it is open. */
  public static List<Part> here(Model model, Form form, Act opens) {
    boolean waits =
        Drafting.jobless(model, form).values().stream().anyMatch(text -> !text.isBlank());
    return waits
        ? List.of(
            new Prose(
                Prose.Kind.ELSEWHERE,
                "typed, not entered: "
                    + of(form.purpose())
                    + "; "
                    + ActMention.of(opens)
                    + " goes on, there "
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
