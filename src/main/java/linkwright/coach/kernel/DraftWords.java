package linkwright.coach.kernel;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import linkwright.coach.form.Form;

/** What was typed into forms and waits to be entered, in words. */
public final class DraftWords {
  private DraftWords() {}

  /** What is typed in such a form, as one would say it; empty if nothing waits in one. */
  public static String of(Form.Purpose purpose) {
    return switch (purpose) {
      case PLAN -> "the plan";
      case MAKE_AGAIN -> "the job made again";
      case RETURN_WIRE -> "wire back into the drawer";
      case TEST_PIECE -> "a test piece";
      case TRIAL_LENGTH -> "a trial length";
      case ADD_WIRE -> "wire that came";
      case CUT_WIRE -> "wire that was cut";
      case DISCARD_WIRE -> "wire that is lost";
      case PILE -> "where a piece lies";
      case NOTE -> "a note";
      case STRIKE -> "why a line is struck";
      case JOINTS -> "joints";
      case TIMER -> "a timer";
      case END_WAIT -> "why a wait ended";
      case WEIGH_IN -> "the weighing in";
      case WEIGH_OUT -> "the weighing out";
      case PRICES -> "prices";
      case HOURS -> "hours put right";
      case CLOSE -> "the closing";
      case CARD -> "the job card";
      case TAKE_SOLDER -> "solder taken";
      case NEW_JOB,
          OWN_BENCH,
          VARIANTS,
          LOT_CAME,
          LOT_COUNTED,
          DRAW_LOT,
          WHAT_THERE_IS,
          WRITE_OUT,
          TAKE_ROWS,
          DRAW_DOWN,
          SEARCH,
          PERSON,
          NEW_STUDENT,
          SIGN_STEP,
          STUDY_PIECE,
          SET_PRACTICE,
          RECKON,
          SETTINGS ->
          "";
    };
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

  /** The badge of a job in which something waits, one line or none. */
  public static List<String> badge(Map<String, Map<String, String>> drafts) {
    List<String> words = waiting(drafts).stream().map(DraftWords::of).toList();
    return words.isEmpty() ? List.of() : List.of("typed, not entered: " + String.join(", ", words));
  }
}
