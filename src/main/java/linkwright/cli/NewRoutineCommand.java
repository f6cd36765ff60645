package linkwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import linkwright.files.Library;
import linkwright.quantity.Read;
import linkwright.text.Slug;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code linkwright new-routine ID}: a commented file from which one writes a routine. */
@Command(
    name = "new-routine",
    mixinStandardHelpOptions = true,
    description = "Writes a commented routine to start from; it never writes over a file.",
    footer = {"", "Example: linkwright new-routine my-own-chain"})
final class NewRoutineCommand implements Callable<Integer> {
  private static final String TEMPLATE = "/linkwright/new-routine.yaml";
  private static final String TEMPLATE_ID = "routine: my-routine ";
  private static final String TEMPLATE_TITLE = "title: My own chain ";

  private final Root root;

  @Parameters(paramLabel = "ID", description = "Its name: small letters, digits and hyphens.")
  private String id = "";

  @Option(
      names = "--to",
      paramLabel = "DIR",
      description = "The folder to write it into; else routines in your own folder.")
  private Optional<String> to = Optional.empty();

  NewRoutineCommand(Root root) {
    this.root = root;
  }

  @Override
  public Integer call() throws IOException {
    if (!id.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
      return root.wrong(
          "\""
              + id
              + "\" cannot be a routine's name: it has small letters, digits and single hyphens,"
              + " such as "
              + Slug.of(id, taken -> false)
              + ".");
    }
    Read<Path> folder =
        to.map(Root::path).orElseGet(() -> Read.good(root.home().folder().resolve("routines")));
    if (folder instanceof Read.Bad<Path> bad) {
      return root.wrong(bad.sentence());
    }
    return write(folder.orThrow().resolve(id + ".yaml"));
  }

  private int write(Path file) throws IOException {
    String[] more =
        Library.load(root.home()).routines().containsKey(id)
            ? new String[] {"A routine " + id + " is known already; yours takes its place."}
            : new String[0];
    return NewFile.write(root.here(), file, text(), more);
  }

  private String text() throws IOException {
    try (InputStream in = NewRoutineCommand.class.getResourceAsStream(TEMPLATE)) {
      if (in == null) {
        throw new IOException("The program was packed without " + TEMPLATE);
      }
      String title = Character.toUpperCase(id.charAt(0)) + id.substring(1).replace('-', ' ');
      // A title of digits alone would be read as a number; in quotes it is text whatever it is.
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .replace(TEMPLATE_ID, "routine: \"" + id + "\" ")
          .replace(TEMPLATE_TITLE, "title: \"" + title + "\" ");
    }
  }
}
