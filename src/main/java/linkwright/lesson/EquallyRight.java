package linkwright.lesson;

import java.util.Locale;
import linkwright.routine.Hazard;
import linkwright.routine.Stage;
import linkwright.routine.Step;

/** What would be right of the one as well as of the other, so that neither hides the other. */
final class EquallyRight {
  private EquallyRight() {}

  /** Whether two steps do the same, or show the same. */
  static boolean steps(Step one, Step other) {
    boolean sameStage = one.stage().values().stream().anyMatch(other.stage().values()::contains);
    boolean sameVerb = verb(one).equals(verb(other));
    boolean sameDoing = !one.does().isEmpty() && one.does().equals(other.does());
    return sameStage || sameVerb || sameDoing || (showsJoints(one) && showsJoints(other));
  }

  /** A good joint looks the same at the flame, out of the pickle and under the loupe. */
  private static boolean showsJoints(Step step) {
    return step.does().contains(Hazard.FLUX_FUMES)
        || step.does().contains(Hazard.PICKLES)
        || step.stage().containsValue(Stage.CHECKED);
  }

  private static String verb(Step step) {
    return step.title().split(" ", 2)[0].toLowerCase(Locale.ROOT);
  }

  /** Whether one does what the other does too, such as anneal: both would help. */
  static boolean remedies(String one, String other, WordStems stems) {
    return stems.of(one).containsAll(stems.of(act(other)))
        || stems.of(other).containsAll(stems.of(act(one)));
  }

  /** The first word, if it is long enough to mean something; else all. */
  private static String act(String text) {
    String word = text.split("[^A-Za-z]", 2)[0];
    return WordStems.taken(word).isEmpty() ? text : word;
  }
}
