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
    int cautions = (int) rows.stream().filter(DoInSight::begins).count();
    for (int above = cautions; above > 0; above--) {
      List<FlowRows.FlowRow> first = above(rows, above);
      if (first.size() <= room) {
        List<FlowRows.FlowRow> all = new ArrayList<>(rows);
        first.forEach(all::remove);
        all.addAll(0, first);
        return all;
      }
    }
    return rows;
  }

  /** All up to the end of what is to be done, with so many cautions; empty where nothing is. */
  static List<FlowRows.FlowRow> above(List<FlowRows.FlowRow> rows, int cautions) {
    List<FlowRows.FlowRow> above = new ArrayList<>();
    int end = rows.size();
    while (end > 0 && rows.get(end - 1).kind() != Prose.Kind.DO) {
      end--;
    }
    int met = 0;
    for (FlowRows.FlowRow row : rows.subList(0, end)) {
      met += begins(row) ? 1 : 0;
      if (row.kind() != Prose.Kind.CAUTION || met <= cautions) {
        above.add(row);
      }
    }
    return above;
  }

  /** Whether a caution begins with that row. */
  static boolean begins(FlowRows.FlowRow row) {
    return row.kind() == Prose.Kind.CAUTION && !row.label().isEmpty();
  }
}
