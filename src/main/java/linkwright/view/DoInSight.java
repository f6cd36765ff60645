package linkwright.view;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.content.Prose;

/**
 * Keeps what is to be done on the first part of a text: where the cautions above it take its room,
 * they come right after it, all but the first, which is the worst.
 */
final class DoInSight {
  private DoInSight() {}

  /** The rows in the order in which that part of so many rows holds it, as far as it can. */
  static List<FlowRows.FlowRow> in(List<FlowRows.FlowRow> rows, int room) {
    List<FlowRows.FlowRow> before = new ArrayList<>(rows.subList(0, end(rows)));
    List<FlowRows.FlowRow> after = new ArrayList<>(rows.subList(before.size(), rows.size()));
    while (before.size() > room) {
      int last = lastCaution(before);
      if (last < 0) {
        return rows;
      }
      List<FlowRows.FlowRow> caution = before.subList(last, next(before, last));
      after.addAll(0, caution);
      caution.clear();
    }
    before.addAll(after);
    return before;
  }

  /** Rows in which it is in sight with the first caution; 0 where nothing is to be done. */
  static int least(List<FlowRows.FlowRow> rows) {
    List<FlowRows.FlowRow> before = new ArrayList<>(rows.subList(0, end(rows)));
    for (int last = lastCaution(before); last >= 0; last = lastCaution(before)) {
      before.subList(last, next(before, last)).clear();
    }
    return before.size();
  }

  /** How many rows go to the end of what is to be done. */
  private static int end(List<FlowRows.FlowRow> rows) {
    int end = rows.size();
    while (end > 0 && rows.get(end - 1).kind() != Prose.Kind.DO) {
      end--;
    }
    return end;
  }

  /** Where the last caution begins that is not the first; -1 if none is. */
  private static int lastCaution(List<FlowRows.FlowRow> rows) {
    int last = rows.size() - 1;
    while (last >= 0 && !begins(rows.get(last))) {
      last--;
    }
    return rows.stream().limit(Math.max(0, last)).anyMatch(DoInSight::begins) ? last : -1;
  }

  private static int next(List<FlowRows.FlowRow> rows, int caution) {
    int next = caution + 1;
    while (next < rows.size()
        && rows.get(next).kind() == Prose.Kind.CAUTION
        && !begins(rows.get(next))) {
      next++;
    }
    return next;
  }

  /** Whether a caution begins with that row. */
  static boolean begins(FlowRows.FlowRow row) {
    return row.kind() == Prose.Kind.CAUTION && !row.label().isEmpty();
  }
}
