package linkwright.cli.console;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linkwright.coach.form.Field;
import linkwright.coach.form.Measure;
import linkwright.coach.form.PlanHelp;
import linkwright.coach.keys.Act;
import linkwright.coach.settings.SettingsFields;
import linkwright.exchange.PlanFileText;
import linkwright.files.BenchKeys;
import linkwright.plan.WishKeys;
import linkwright.quantity.UnitStyle;

/**
 * All that can stand in the files that one writes oneself, from what the program reads and asks.
 */
public final class FileKeys {
  private FileKeys() {}

  /**
   * A sort of file.
   *
   * @param name what it is called
   * @param says where it lies and how it comes about
   * @param keys its keys and what each is
   */
  private record Kind(String name, String says, Map<String, String> keys) {}

  private static List<Kind> kinds() {
    return List.of(
        new Kind(
            "A plan file", "Written by hand, by `linkwright new-plan`, or out of a job.", ofPlan()),
        new Kind(
            "settings.yaml",
            "In your own folder; changed in the program by its settings.",
            ofSettings()),
        new Kind("bench.yaml", "In your own folder: what is yours whatever the job.", ofBench()),
        new Kind(
            "keys.yaml",
            "In your own folder: below `keys:` an act and its keys, as in `redo: [r]`.",
            ofKeys()));
  }

  private static Map<String, String> ofPlan() {
    Map<String, String> keys = new LinkedHashMap<>();
    keys.put(PlanFileText.ROUTINE, PlanHelp.ROUTINE);
    for (String key : WishKeys.ALL) {
      PlanHelp.FieldHelp entry = PlanHelp.of(key);
      String example = Field.hintTold(Measure.inUnits(entry.hint(), UnitStyle.METRIC));
      keys.put(key, (entry.help() + " " + example).strip());
    }
    return keys;
  }

  private static Map<String, String> ofSettings() {
    Map<String, String> keys = new LinkedHashMap<>();
    for (SettingsFields.Setting each : SettingsFields.ALL) {
      String words = String.join(", ", each.choices().stream().filter(w -> !w.isEmpty()).toList());
      keys.put(each.key(), each.help() + (words.isEmpty() ? "" : " One of: " + words + "."));
    }
    return keys;
  }

  private static Map<String, String> ofBench() {
    Map<String, String> keys = new LinkedHashMap<>();
    BenchKeys.ALL.forEach(each -> keys.put(each.key(), each.says()));
    return keys;
  }

  private static Map<String, String> ofKeys() {
    Map<String, String> keys = new LinkedHashMap<>();
    for (Act act : Act.values()) {
      keys.put(act.id(), act.help() + ". Usual: " + String.join(", ", act.keys()) + ".");
    }
    return keys;
  }

  /** A row for each key: its file, the key, what it is. */
  public static List<Map<String, Object>> rows() {
    List<Map<String, Object>> rows = new ArrayList<>();
    for (Kind kind : kinds()) {
      kind.keys()
          .forEach(
              (key, says) -> {
                Map<String, Object> row = new LinkedHashMap<>();
                row.put("file", kind.name().replaceFirst("A plan file", "plan"));
                row.put("key", key);
                row.put("says", says);
                rows.add(row);
              });
    }
    return rows;
  }

  /** The page, a heading and a table for each file. */
  public static List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add("# What can stand in your files");
    for (Kind kind : kinds()) {
      lines.addAll(List.of("", "## " + kind.name(), "", kind.says(), ""));
      lines.addAll(List.of("| key | what it is |", "| --- | --- |"));
      kind.keys().forEach((key, says) -> lines.add(row(key, says)));
    }
    return lines;
  }

  private static String row(String key, String says) {
    return "| `" + key + "` | " + says.replace("|", "\\|") + " |";
  }
}
