package linkwright.walks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import linkwright.Main;

/**
 * The program as it is shipped, started as its start script starts it: the jar, with its classes
 * laid ready so that a thousand starts take minutes. Without a jar, the classes of this build.
 */
final class ShippedProgram {
  private static final List<String> QUICK =
      List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xmx256m");

  private final List<String> command;

  private ShippedProgram(List<String> command) {
    this.command = command;
  }

  /**
   * The program, ready to be started often.
   *
   * @param home a folder in which it may lay what it needs
   */
  static ShippedProgram in(Path home) throws IOException {
    String jar = System.getProperty("linkwright.jar", "");
    if (jar.isEmpty() || !Files.exists(Path.of(jar))) {
      return new ShippedProgram(List.of(WalkedProgram.java(Main.class)));
    }
    Path ready = home.resolve("classes.jsa");
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(QUICK);
    List<String> laying = new ArrayList<>(command);
    laying.addAll(List.of("-XX:ArchiveClassesAtExit=" + ready, "-jar", jar, "--home"));
    laying.addAll(List.of(home.resolve("none").toString(), "check"));
    run(laying, home);
    if (Files.exists(ready)) {
      command.add("-XX:SharedArchiveFile=" + ready);
    }
    command.addAll(List.of("-jar", jar));
    return new ShippedProgram(command);
  }

  /** A class of this build in its place, started with these arguments before all others. */
  static ShippedProgram of(Class<?> main, String... first) {
    return new ShippedProgram(List.of(WalkedProgram.java(main, first)));
  }

  private static void run(List<String> command, Path home) throws IOException {
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(home.resolve("laying.txt").toFile())
            .start();
    try {
      if (!process.waitFor(Workbench.LONG, TimeUnit.SECONDS)) {
        process.toHandle().destroyForcibly();
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new AssertionError("Interrupted", stopped);
    }
  }

  /** The command that starts it. */
  String[] with(String... arguments) {
    List<String> all = new ArrayList<>(command);
    all.addAll(List.of(arguments));
    return all.toArray(String[]::new);
  }
}
