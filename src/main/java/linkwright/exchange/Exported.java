package linkwright.exchange;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linkwright.exchange.forms.OutForm;
import linkwright.job.Entry;
import linkwright.job.JobState;
import linkwright.quantity.Nearest;
import linkwright.quantity.Read;
import linkwright.standing.Handbook;
import linkwright.standing.Standing;
import linkwright.standing.nearest.ChainChoices;

/**
 * What goes out to other programs: tables by their names, and their text in the form asked for.
 *
 * @param tables name of a table → its rows
 */
public record Exported(Map<String, List<Map<String, Object>>> tables) {
  /** The tables of a job, in order. */
  public static final List<String> OF_JOB =
      List.of("card", "plan", "test-pieces", "trial-lengths", "tallies", "wire", "weighed");

  /** The tables of the drawer, in order. */
  public static final List<String> OF_DRAWER = List.of("lots", "accounts");

  /** The tables of the hands, in order. */
  public static final List<String> OF_HANDS = List.of("stages", "times");

  private static final String PLAN = "plan";

  /** A job, by its own book and what was known when it was made; the handbook is as it sees it. */
  public static Exported ofJob(List<Entry> entries, JobState state, Handbook handbook) {
    Map<String, List<Map<String, Object>>> tables = new LinkedHashMap<>();
    Map<String, List<Map<String, Object>>> entered = JobTables.of(entries, state);
    for (String name : OF_JOB) {
      tables.put(name, name.equals(PLAN) ? plan(state, handbook) : entered.get(name));
    }
    return new Exported(tables);
  }

  private static List<Map<String, Object>> plan(JobState state, Handbook handbook) {
    Standing standing = Standing.of(state, handbook);
    return standing.counted().plan().isEmpty()
        ? List.of()
        : List.of(
            PlanYaml.of(
                state.course().name(),
                standing,
                ChainChoices.of(state.course().wish(), state, handbook),
                handbook.reference()));
  }

  /** The drawer: its lots and the metal accounts. */
  public static Exported ofDrawer(Handbook handbook) {
    return new Exported(DrawerAndHandsTables.ofDrawer(handbook.drawer(), handbook.reference()));
  }

  /** The hands: what came of pieces by stage, and times. */
  public static Exported ofHands(Handbook handbook) {
    return new Exported(DrawerAndHandsTables.ofHands(handbook.hands()));
  }

  /**
   * The text of all tables, or of one.
   *
   * @param table its name; empty for all, which CSV cannot hold
   */
  public Read<String> text(String table, OutForm as) {
    String all = String.join(", ", tables.keySet());
    if (table.isEmpty()) {
      return as == OutForm.CSV
          ? Read.bad("CSV holds one table: choose one of " + all + ".")
          : Read.good(as.written(tables));
    }
    List<Map<String, Object>> rows = tables.get(table);
    return rows == null
        ? Read.bad(
            "There is no table \""
                + table
                + "\" here; there are "
                + all
                + "."
                + Nearest.of(table, tables.keySet())
                    .map(near -> " Did you mean " + near + "?")
                    .orElse(""))
        : Read.good(as.written(table, rows));
  }
}
