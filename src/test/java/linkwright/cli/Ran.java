package linkwright.cli;

import java.nio.file.Path;
import java.util.Map;
import linkwright.cli.reckon.ReckonCommand;
import linkwright.files.Home;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import picocli.CommandLine;

/** One run of {@code reckon} as a shell would start it, and what it wrote. */
record Ran(int exit, String out, String err) {
  /** A folder that is not there: the shipped data alone. */
  static final Path NOWHERE = Path.of("target", "no-such-home");

  static Ran reckon(String... arguments) {
    return reckon(NOWHERE, arguments);
  }

  static Ran reckon(Path home, String... arguments) {
    StringBuilder out = new StringBuilder();
    StringBuilder err = new StringBuilder();
    CommandLine command =
        ReckonCommand.of(
            () -> new Home(home),
            Root::path,
            line -> out.append(line).append('\n'),
            line -> err.append(line).append('\n'));
    int exit = command.execute(arguments);
    return new Ran(exit, out.toString(), err.toString());
  }

  /** What was written, read back as YAML. */
  Map<String, Object> yaml() {
    return new Yaml(new SafeConstructor(new LoaderOptions())).load(out);
  }

  double number(String key) {
    return ((Number) yaml().get(key)).doubleValue();
  }
}
