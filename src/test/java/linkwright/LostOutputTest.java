package linkwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Map;
import linkwright.cli.console.Surroundings;
import linkwright.cli.console.Teller;
import linkwright.terminal.Environment;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a full disk did not take is no success; who stops listening has heard enough. */
class LostOutputTest {
  @TempDir private Path folder;
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @ParameterizedTest
  @ValueSource(
      strings = {"jobs", "export drawer", "man", "schema plan", "routines", "check", "--version"})
  void fullDiskIsTold(String command) {
    int status = run("No space left on device", command);

    assertThat(err.toString(StandardCharsets.UTF_8)).contains("The disk is full");
    assertThat(status).isEqualTo(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"jobs", "man"})
  void closedPipeIsNoTrouble(String command) {
    int status = run("Broken pipe", command);

    assertThat(err.toString(StandardCharsets.UTF_8)).isEmpty();
    assertThat(status).isZero();
  }

  private int run(String refusal, String command) {
    OutputStream refusing =
        new OutputStream() {
          @Override
          public void write(int sign) throws IOException {
            throw new IOException(refusal);
          }
        };
    Map<String, String> variables =
        Map.of("LINKWRIGHT_HOME", folder.resolve("home").toString(), "HOSTNAME", "testbench");
    InstantSource noon = InstantSource.fixed(Instant.parse("2026-11-02T12:00:00Z"));
    return Main.run(
        new Surroundings(
            new Environment(variables, false, "Linux"),
            folder,
            noon,
            noon,
            new BufferedReader(new StringReader("")),
            Teller.of(refusing, true),
            Teller.of(err, true)),
        command.split(" ", -1));
  }
}
