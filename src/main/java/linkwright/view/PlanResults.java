package linkwright.view;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.plan.PlanSummary;
import linkwright.text.Text;

/**
 * What a plan comes to: figures in columns, then sentences; turned over where they have no room.
 */
final class PlanResults {
  private static final int LABEL = 13;

  private PlanResults() {}

  /** A row of the results: figures side by side, or one line of a sentence. */
  private record Row(List<PlanSummary.Line> figures, String text, Tone tone) {}

  /** Draws one part; parts beyond the last begin again at the first. */
  static void draw(Canvas area, List<PlanSummary.Line> lines, int columns, int part) {
    if (area.height() < 1 || area.width() < 2) {
      return;
    }
    List<Row> rows = rows(lines, columns, area.width());
    boolean whole = rows.size() <= area.height();
    int onePart = whole ? area.height() : Math.max(1, area.height() - 1);
    int parts = Math.max(1, (rows.size() + onePart - 1) / onePart);
    int from = Math.floorMod(part, parts) * onePart;
    for (int i = from; i < Math.min(rows.size(), from + onePart); i++) {
      row(area, i - from, rows.get(i), columns);
    }
    if (!whole) {
      String more = "page-down: part " + (from / onePart + 1) + " of " + parts;
      area.right(area.height() - 1, more, Tone.FAINT);
    }
  }

  private static List<Row> rows(List<PlanSummary.Line> lines, int columns, int width) {
    List<PlanSummary.Line> figures =
        lines.stream().filter(line -> !line.label().isEmpty()).toList();
    int high = (figures.size() + columns - 1) / columns;
    List<Row> rows = new ArrayList<>();
    for (int y = 0; y < high; y++) {
      List<PlanSummary.Line> side = new ArrayList<>();
      for (int i = y; i < figures.size(); i += high) {
        side.add(figures.get(i));
      }
      rows.add(new Row(side, "", Tone.PLAIN));
    }
    for (PlanSummary.Line line : lines) {
      if (line.label().isEmpty()) {
        Tone tone = line.trouble() ? Tone.WARNING : Tone.FAINT;
        Text.wrap(line.value(), width).forEach(text -> rows.add(new Row(List.of(), text, tone)));
      }
    }
    return rows;
  }

  private static void row(Canvas area, int y, Row row, int columns) {
    area.text(0, y, area.width(), row.text(), row.tone());
    int wide = area.width() / columns;
    for (int i = 0; i < row.figures().size(); i++) {
      figure(area.area(i * wide, y, wide - columns + 1, 1), row.figures().get(i));
    }
  }

  private static void figure(Canvas area, PlanSummary.Line line) {
    area.text(0, 0, LABEL - 1, line.label(), Tone.FAINT);
    area.text(
        LABEL,
        0,
        Math.max(0, area.width() - LABEL),
        line.value(),
        line.trouble() ? Tone.WARNING : line.main() ? Tone.STRONG : Tone.PLAIN);
  }
}
