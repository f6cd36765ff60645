package linkwright.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import linkwright.quantity.Read;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code linkwright new-pattern ID}: a commented link pattern to start from. */
@Command(
    name = "new-pattern",
    mixinStandardHelpOptions = true,
    description = "Writes a commented link pattern to start from; it never writes over a file.",
    footer = {"", "Example: linkwright new-pattern my-link"})
final class NewPatternCommand implements Callable<Integer> {
  private static final String TEXT =
      """
      format: 1
      # The pattern's own name: small letters, digits and hyphens, as the file's.
      pattern: %s
      # One sentence that lets a jeweller picture it.
      says: A bar with an eye at each end, turned opposite ways.
      # What the wire is bent over, by its inside diameter; your own formers take their place by name.
      formers:
        eye: 2.5 mm
      # From the tip to the middle of the blank. A bend goes over a former by so many degrees to the
      # left or the right as one walks from the tip; eye says that it holds the next link or ring. A
      # run is straight: a length, or the rest of the blank, once.
      half:
      - bend: {over: eye, turn: 300, side: left, eye: true}
      - bend: {over: eye, turn: 30, side: right}
      - run: rest
      # How the other half follows: turned (half a turn about the middle) or mirrored. What is not
      # symmetric is written whole, in place of half and other.
      other: turned
      # The places to solder on one link.
      joints:
      - join: tip to body
      - join: tip to body
      """;

  private final Root root;

  @Parameters(paramLabel = "ID", description = "Its name: small letters, digits and hyphens.")
  private String id = "";

  @Option(
      names = "--to",
      paramLabel = "DIR",
      description = "The folder to write it into; else shared/patterns in your own folder.")
  private Optional<String> to = Optional.empty();

  NewPatternCommand(Root root) {
    this.root = root;
  }

  @Override
  public Integer call() {
    if (!id.matches("[a-z][a-z0-9]*(-[a-z0-9]+)*")) {
      return root.wrong(
          "“" + id + "” cannot be a pattern's name: small letters, digits and single hyphens.");
    }
    Path own = root.home().folder().resolve("shared").resolve("patterns");
    Read<Path> folder = to.map(Root::path).orElseGet(() -> Read.good(own));
    return folder
        .problem()
        .map(root::wrong)
        .orElseGet(
            () ->
                NewFile.write(
                    root.here(),
                    folder.orThrow().resolve(id + ".yaml"),
                    TEXT.formatted("\"" + id + "\"")));
  }
}
