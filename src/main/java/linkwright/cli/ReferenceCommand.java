package linkwright.cli;

import java.util.concurrent.Callable;
import linkwright.cli.console.Exit;
import linkwright.cli.console.FileKeys;
import linkwright.exchange.forms.OutForm;
import linkwright.quantity.Read;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/**
 * {@code linkwright file-keys}: all that can stand in the files that one writes oneself, on one
 * page made from what the program reads and asks.
 */
@Command(
    name = "file-keys",
    mixinStandardHelpOptions = true,
    description = "Tells every key of plan, settings, bench and keys files, on one page.",
    footer = {
      "",
      "Example: linkwright file-keys > file-keys.md",
      "         linkwright file-keys --as json"
    })
final class ReferenceCommand implements Callable<Integer> {
  private final Root root;

  @Option(
      names = "--as",
      paramLabel = "FORM",
      completionCandidates = OutForm.Named.class,
      description = OutForm.SAYS)
  private String form = "text";

  ReferenceCommand(Root root) {
    this.root = root;
  }

  @Override
  public Integer call() {
    Read<OutForm> as = OutForm.named(form);
    if (as instanceof Read.Bad<OutForm> bad) {
      return root.wrong(bad.sentence());
    }
    if (as.orThrow() == OutForm.TEXT) {
      root.here().out().sayAll(FileKeys.lines());
    } else {
      root.here().out().print(as.orThrow().written("file-keys", FileKeys.rows()));
    }
    return Exit.GOOD;
  }
}
