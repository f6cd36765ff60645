package linkwright.disk;

import java.util.List;
import java.util.Optional;

/** Whether the command that is to say sentences aloud is there on this machine. */
public final class SpeechCommand {
  /** Programs that say the sentence that is their last word. */
  private static final List<String> KNOWN = List.of("espeak-ng", "spd-say", "say", "espeak");

  private static final int LONGEST = 60;

  private SpeechCommand() {}

  /** What is wrong with it here, and what would do; empty where it can be started. */
  public static Optional<String> trouble(String command) {
    return trouble(command, Programs.folders());
  }

  /**
   * The same with folders of programs.
   *
   * @param command the command and its first words; blank for silence
   */
  static Optional<String> trouble(String command, List<String> folders) {
    String program = command.strip().split("\\s+", 2)[0];
    if (program.isEmpty() || Programs.isThere(program, folders)) {
      return Optional.empty();
    }
    List<String> here = KNOWN.stream().filter(known -> Programs.isThere(known, folders)).toList();
    String shown = program.length() <= LONGEST ? program : program.substring(0, LONGEST) + "…";
    return Optional.of(
        "There is no program “"
            + shown.replaceAll("\\p{Cntrl}", "?")
            + "” here, so nothing is said aloud. "
            + offered(here));
  }

  private static String offered(List<String> here) {
    return here.isEmpty()
        ? String.join(", ", KNOWN) + " are such commands; none of them is on this machine."
        : "On this machine there is " + String.join(" and ", here) + ".";
  }
}
