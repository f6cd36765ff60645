package linkwright.disk;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Which programs can be started on this machine. */
public final class Programs {
  private Programs() {}

  /** The folders in which programs are looked for that are named without a path. */
  public static List<String> folders() {
    String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
    return List.of(path.split(File.pathSeparator));
  }

  /** Whether there is one of that name in those folders, or at that path. */
  public static boolean isThere(String program, List<String> folders) {
    boolean path = program.contains("/") || program.contains(File.separator);
    return path ? runs(program) : folders.stream().anyMatch(in -> runs(in, program));
  }

  private static boolean runs(String folder, String program) {
    // Windows adds the ending itself.
    String path = folder + File.separator + program;
    return !folder.isBlank() && (runs(path) || runs(path + ".exe"));
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
