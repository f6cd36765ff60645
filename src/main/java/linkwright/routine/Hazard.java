package linkwright.routine;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What a step does that can hurt someone; each needs a caution that covers it. */
public enum Hazard {
  HEATS("heats"),
  BURNS_GAS("burns-gas"),
  FLUX_FUMES("flux-fumes"),
  PICKLES("pickles"),
  QUENCHES("quenches"),
  CUTS("cuts"),
  HAMMERS("hammers"),
  DRAWS("draws"),
  ROLLS("rolls"),
  SPINS("spins"),
  DRILLS("drills"),
  DUST("dust"),
  TUMBLES("tumbles"),
  DIPS("dips"),
  CHEMICALS("chemicals"),
  LIGHTS("lights"),
  MELTS("melts"),
  POURS("pours"),
  FILES("files"),
  TWISTS("twists"),
  PULLS("pulls");

  private final String word;

  Hazard(String word) {
    this.word = word;
  }

  /** The word that stands for it in routine and caution files. */
  public String word() {
    return word;
  }

  /** The hazard that a word of a file stands for; empty if none does. */
  public static Optional<Hazard> of(String word) {
    return Arrays.stream(values()).filter(hazard -> hazard.word.equals(word)).findFirst();
  }

  /** All words, in order, for messages that name the nearest one. */
  public static List<String> words() {
    return Arrays.stream(values()).map(Hazard::word).toList();
  }
}
