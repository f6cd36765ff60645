package linkwright.cli;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import linkwright.cli.console.Exit;
import linkwright.exchange.forms.JsonOut;
import linkwright.quantity.Nearest;
import linkwright.schema.FileSchemas;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code linkwright schema KIND}: what may stand in a sort of file, for editors and programs. */
@Command(
    name = "schema",
    mixinStandardHelpOptions = true,
    description = "Writes the JSON Schema of a sort of file, by which an editor checks it.",
    footer = {"", "Example: linkwright schema routine > routine.schema.json"})
final class SchemaCommand implements Callable<Integer> {
  private final Root root;

  @Parameters(
      paramLabel = "KIND",
      description =
          "plan, routine, caution, pattern, book, settings, keys, bench, drawer, students or"
              + " student.")
  private String kind = "";

  SchemaCommand(Root root) {
    this.root = root;
  }

  @Override
  public Integer call() {
    Optional<Map<String, Object>> schema = FileSchemas.of(kind);
    if (schema.isEmpty()) {
      return root.wrong(
          "“"
              + kind
              + "” is no sort of file that is known here. There are: "
              + String.join(", ", FileSchemas.kinds())
              + "."
              + Nearest.of(kind, FileSchemas.kinds())
                  .map(near -> " Did you mean " + near + "?")
                  .orElse(""));
    }
    root.here().out().print(JsonOut.of(schema.get()));
    return Exit.GOOD;
  }
}
