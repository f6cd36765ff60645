package linkwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import linkwright.cli.console.Choices;
import linkwright.coach.form.Field;
import linkwright.coach.form.Measure;
import linkwright.coach.form.PlanHelp;
import linkwright.exchange.PlanFileText;
import linkwright.plan.WishKeys;
import linkwright.quantity.Read;
import linkwright.quantity.UnitStyle;
import linkwright.text.Text;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code linkwright new-plan FILE}: a commented plan file to start from. */
@Command(
    name = "new-plan",
    mixinStandardHelpOptions = true,
    description = "Writes a commented plan file to start from; it never writes over a file.",
    footer = {"", "Example: linkwright new-plan my-plan.yaml"})
final class NewPlanCommand implements Callable<Integer> {
  private static final int WIDTH = 96;

  /**
   * What stands in the file from the start: a plan that comes out; the rest stands as a comment.
   */
  private static final Map<String, String> BEGUN =
      Map.of(
          WishKeys.JOB, "My own chain",
          WishKeys.METAL, "sterling",
          WishKeys.WIRE, "0.9 mm",
          WishKeys.LINK_PATTERN, "scroll",
          WishKeys.LINK_LENGTH, "16 mm",
          WishKeys.LINK_WIDTH, "5.4 mm",
          WishKeys.RING_INSIDE, "3 mm",
          WishKeys.FINISHED, "45 cm");

  private final Root root;

  @Parameters(paramLabel = "FILE", description = "The plan file; it must not be there yet.")
  private String file = "";

  NewPlanCommand(Root root) {
    this.root = root;
  }

  @Override
  public Integer call() {
    Read<Path> path = Root.path(file.matches(".*\\.ya?ml") ? file : file + ".yaml");
    UnitStyle units = Choices.load(root.home()).user().units();
    return path.problem()
        .map(root::wrong)
        .orElseGet(() -> NewFile.write(root.here(), path.orThrow(), text(units)));
  }

  /**
   * The file: each key with what it is, an example in the user's units, and a value to begin with.
   */
  static String text(UnitStyle units) {
    StringBuilder text = new StringBuilder("format: 1\n");
    comment(text, "", PlanHelp.ROUTINE);
    text.append("# ").append(PlanFileText.ROUTINE).append(":\n");
    String group = "";
    for (String key : WishKeys.ALL) {
      PlanHelp.FieldHelp entry = PlanHelp.of(key);
      int dot = key.indexOf('.');
      String own = dot < 0 ? "" : key.substring(0, dot);
      if (!own.equals(group) && !own.isEmpty()) {
        boolean any = BEGUN.keySet().stream().anyMatch(begun -> begun.startsWith(own + "."));
        text.append(any ? "" : "# ").append(own).append(":\n");
      }
      group = own;
      String indent = own.isEmpty() ? "" : "  ";
      comment(text, indent, entry.help());
      String example = Measure.inUnits(entry.hint(), units);
      boolean begun = BEGUN.containsKey(key);
      if (!begun) {
        comment(text, indent, Field.hintTold(example));
      }
      String name = dot < 0 ? key : key.substring(dot + 1);
      text.append(indent)
          .append(begun ? "" : "# ")
          .append(name)
          .append(": ")
          .append(begun ? BEGUN.get(key) : "")
          .append('\n');
    }
    return text.toString();
  }

  private static void comment(StringBuilder text, String indent, String says) {
    List<String> lines = Text.wrap(says, WIDTH);
    lines.forEach(line -> text.append(indent).append("# ").append(line).append('\n'));
  }
}
