package linkwright.files;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import linkwright.quantity.Nearest;

/** Whether the command that is to say sentences aloud is there on this machine. */
public final class SpeechCommand {
  /** Programs that say the sentence that is their last word. */
  private static final List<String> KNOWN = List.of("espeak-ng", "spd-say", "say", "espeak");

  private SpeechCommand() {}

  /** What is wrong with it here, and what would do; empty where it can be started. */
  public static Optional<String> trouble(String command) {
    List<String> path =
        Arrays.stream(
                Optional.ofNullable(System.getenv("PATH")).orElse("").split(File.pathSeparator))
            .toList();
    return trouble(command, path);
  }

  /**
   * The same with folders of programs.
   *
   * @param command the command and its first words; blank for silence
   * @param folders where programs are looked for that are named without a path
   */
  static Optional<String> trouble(String command, List<String> folders) {
    String program = command.strip().split("\\s+", 2)[0];
    if (program.isEmpty() || isThere(program, folders)) {
      return Optional.empty();
    }
    List<String> here = KNOWN.stream().filter(known -> isThere(known, folders)).toList();
    String likely =
        Nearest.of(program, here)
            .map(near -> "Did you mean " + near + "?")
            .orElseGet(
                () ->
                    here.isEmpty()
                        ? String.join(", ", KNOWN)
                            + " are such commands; none of them is on this machine."
                        : "On this machine there is " + String.join(" and ", here) + ".");
    return Optional.of(
        "There is no program “"
            + ProblemList.excerpt(program)
            + "” here, so nothing is said aloud. "
            + likely);
  }

  private static boolean isThere(String program, List<String> folders) {
    boolean isPath = program.contains("/") || program.contains(File.separator);
    return isPath ? runs(program) : folders.stream().anyMatch(in -> runs(in, program));
  }

  private static boolean runs(String folder, String program) {
    // Windows adds the ending itself.
    return !folder.isBlank()
        && (runs(folder + File.separator + program)
            || runs(folder + File.separator + program + ".exe"));
  }

  private static boolean runs(String program) {
    try {
      Path path = Path.of(program);
      return Files.isRegularFile(path) && Files.isExecutable(path);
    } catch (InvalidPathException none) {
      return false;
    }
  }
}
