package linkwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import linkwright.cli.console.Exit;
import linkwright.coach.form.Field;
import linkwright.coach.form.Measure;
import linkwright.coach.form.PlanHelp;
import linkwright.coach.keys.Act;
import linkwright.coach.settings.SettingsFields;
import linkwright.exchange.PlanFileText;
import linkwright.files.BenchKeys;
import linkwright.plan.WishKeys;
import linkwright.quantity.UnitStyle;
import picocli.CommandLine.Command;

/**
 * {@code linkwright file-keys}: all that can stand in the files that one writes oneself, on one
 * page made from what the program reads and asks.
 */
@Command(
    name = "file-keys",
    mixinStandardHelpOptions = true,
    description = "Tells every key of plan, settings, bench and keys files, on one page.",
    footer = {"", "Example: linkwright file-keys > file-keys.md"})
final class ReferenceCommand implements Callable<Integer> {
  private final Root root;

  ReferenceCommand(Root root) {
    this.root = root;
  }

  @Override
  public Integer call() {
    root.here().out().sayAll(lines());
    return Exit.GOOD;
  }

  static List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add("# What can stand in your files");
    head(lines, "A plan file", "Written by hand, by `linkwright new-plan`, or out of a job.");
    lines.add(row(PlanFileText.ROUTINE, PlanHelp.ROUTINE));
    for (String key : WishKeys.ALL) {
      PlanHelp.FieldHelp entry = PlanHelp.of(key);
      lines.add(
          row(
              key,
              (entry.help() + " " + Field.hintTold(Measure.inUnits(entry.hint(), UnitStyle.METRIC)))
                  .strip()));
    }
    head(lines, "settings.yaml", "In your own folder; changed in the program by its settings.");
    for (SettingsFields.Setting each : SettingsFields.ALL) {
      String words = String.join(", ", each.choices().stream().filter(w -> !w.isEmpty()).toList());
      lines.add(row(each.key(), each.help() + (words.isEmpty() ? "" : " One of: " + words + ".")));
    }
    head(lines, "bench.yaml", "In your own folder: what is yours whatever the job.");
    BenchKeys.ALL.forEach(each -> lines.add(row(each.key(), each.says())));
    head(
        lines,
        "keys.yaml",
        "In your own folder: below `keys:` an act and its keys, as in `redo: [r]`.");
    for (Act act : Act.values()) {
      lines.add(row(act.id(), act.help() + ". Usual: " + String.join(", ", act.keys()) + "."));
    }
    return lines;
  }

  private static void head(List<String> lines, String name, String says) {
    lines.addAll(List.of("", "## " + name, "", says, "", "| key | what it is |", "| --- | --- |"));
  }

  private static String row(String key, String says) {
    return "| `" + key + "` | " + says.replace("|", "\\|") + " |";
  }
}
