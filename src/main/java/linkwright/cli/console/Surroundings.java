package linkwright.cli.console;

import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStreamReader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Optional;
import linkwright.files.Home;
import linkwright.shell.SteadyClock;
import linkwright.terminal.Environment;

/**
 * What the program finds around it when it starts.
 *
 * @param environment variables, terminal and system
 * @param userHome the user's home directory
 * @param clock the time
 * @param steady the time by a clock that nobody can set
 * @param in what the user types
 * @param out where results go
 * @param err where problems go
 */
public record Surroundings(
    Environment environment,
    Path userHome,
    InstantSource clock,
    InstantSource steady,
    BufferedReader in,
    Teller out,
    Teller err) {

  /**
   * The surroundings of this very program.
   *
   * @throws java.nio.file.InvalidPathException if the folder that it was started in has a name that
   *     the system's settings cannot express; Java itself could then do little
   */
  public static Surroundings here() {
    Path startedIn = Path.of(System.getProperty("user.dir", "."));
    Environment environment = Environment.here();
    boolean utf8 = environment.isUtf8();
    Charset typed = utf8 ? StandardCharsets.UTF_8 : Charset.defaultCharset();
    return new Surroundings(
        environment,
        startedIn.resolve(System.getProperty("user.home")),
        InstantSource.system(),
        SteadyClock.from(Instant.now()),
        new BufferedReader(new InputStreamReader(System.in, typed)),
        // The system's own streams keep to themselves what could not be written.
        Teller.of(new FileOutputStream(FileDescriptor.out), utf8),
        Teller.of(new FileOutputStream(FileDescriptor.err), utf8));
  }

  /** The user's folder, as asked for or as the environment says. */
  public Home home(Optional<String> asked) {
    return Home.find(asked, environment.variables(), userHome);
  }
}
