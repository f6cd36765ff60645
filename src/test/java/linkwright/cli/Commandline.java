package linkwright.cli;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import linkwright.cli.console.Surroundings;
import linkwright.cli.console.Teller;
import linkwright.terminal.Environment;

/** Runs commands with streams in memory, a clock that a test moves, and a folder of its own. */
final class Commandline implements InstantSource {
  /** Answers with the next line for what was told since the line before; empty to end. */
  interface Typist extends Function<String, Optional<String>> {}

  private final Path folder;
  private final boolean utf8;
  private Instant now = Instant.parse("2026-11-02T08:00:00Z");
  private ByteArrayOutputStream out = new ByteArrayOutputStream();
  private ByteArrayOutputStream err = new ByteArrayOutputStream();

  Commandline(Path folder) {
    this(folder, true);
  }

  Commandline(Path folder, boolean utf8) {
    this.folder = folder;
    this.utf8 = utf8;
  }

  /** Every look at the clock moves it a little, as at a bench. */
  @Override
  public synchronized Instant instant() {
    now = now.plusMillis(50);
    return now;
  }

  synchronized void wait(Duration time) {
    now = now.plus(time);
  }

  /** Runs with nothing to read. */
  int run(String... arguments) {
    return run(new BufferedReader(new StringReader("")), arguments);
  }

  /** Runs with these lines to read. */
  int typing(List<String> lines, String... arguments) {
    String text = lines.isEmpty() ? "" : String.join("\n", lines) + "\n";
    return run(new BufferedReader(new StringReader(text)), arguments);
  }

  /** Runs with someone who listens before she types. */
  int talking(Typist typist, String... arguments) {
    return run(
        new BufferedReader(new StringReader("")) {
          private int heard;

          @Override
          public String readLine() throws IOException {
            String all = out();
            String since = all.substring(heard);
            heard = all.length();
            return typist.apply(since).orElse(null);
          }
        },
        arguments);
  }

  /** Starts the program with options only, as its beginning does where there is no terminal. */
  int start(StartOptions options) {
    return Starting.run(options, around(new BufferedReader(new StringReader(""))));
  }

  /** The same with more variables of the environment, and with these lines to read. */
  int start(StartOptions options, Map<String, String> more, List<String> lines) {
    String text = String.join("\n", lines) + "\n";
    return Starting.run(options, around(new BufferedReader(new StringReader(text)), more));
  }

  private int run(BufferedReader in, String... arguments) {
    return Commands.run(around(in), arguments);
  }

  private Surroundings around(BufferedReader in) {
    return around(in, Map.of());
  }

  private Surroundings around(BufferedReader in, Map<String, String> more) {
    out = new ByteArrayOutputStream();
    err = new ByteArrayOutputStream();
    Map<String, String> variables = new HashMap<>(more);
    variables.put("LINKWRIGHT_HOME", home().toString());
    variables.put("HOSTNAME", "testbench");
    return new Surroundings(
        new Environment(variables, false, "Linux"),
        folder,
        this,
        this,
        in,
        Teller.of(out, utf8),
        Teller.of(err, utf8));
  }

  Path home() {
    return folder.resolve("home");
  }

  Path file(String name, String text) {
    try {
      Path file = folder.resolve(name);
      Files.createDirectories(file.getParent());
      return Files.writeString(file, text);
    } catch (IOException trouble) {
      throw new java.io.UncheckedIOException(trouble);
    }
  }

  String out() {
    return out.toString(StandardCharsets.UTF_8);
  }

  String err() {
    return err.toString(StandardCharsets.UTF_8);
  }
}
