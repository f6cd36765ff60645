package linkwright.view;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Question;
import linkwright.coach.content.Rows;
import linkwright.coach.content.Table;
import linkwright.coach.content.Wait;

/** Text in rows, turned over where not all of it has room at once: nothing of it is cut. */
final class FlowBlock implements Block {
  private static final int LEAST = 3;

  private final List<FlowRows.FlowRow> rows;
  private final String key;

  FlowBlock(List<FlowRows.FlowRow> rows, String key) {
    this.rows = rows;
    this.key = key;
  }

  static boolean takes(Part part) {
    return part instanceof Prose
        || part instanceof Rows
        || part instanceof Question
        || part instanceof Wait
        || (part instanceof Table table && table.chosen() < 0);
  }

  @Override
  public int wanted() {
    return rows.size();
  }

  @Override
  public int least() {
    return Math.min(LEAST, rows.size());
  }

  @Override
  public Yield yields() {
    return Yield.TURNS;
  }

  @Override
  public boolean apart() {
    return rows.size() != 1 || rows.get(0).tone() != Tone.ACCENT;
  }

  @Override
  public int parts(int high) {
    return cut(high).size();
  }

  @Override
  public void draw(Canvas area, int turned) {
    if (area.height() < 1) {
      return;
    }
    List<List<FlowRows.FlowRow>> parts = cut(area.height());
    int shown = Math.floorMod(turned, parts.size());
    int y = 0;
    for (FlowRows.FlowRow row : parts.get(shown)) {
      area.text(0, y, Math.max(0, row.indent() - 1), row.label(), Tone.FAINT);
      area.text(row.indent(), y, row.text(), row.tone());
      y++;
    }
    if (parts.size() > 1) {
      boolean laterNext = shown == 0 && parts.get(1).get(0).later() && !parts.get(0).get(0).later();
      String more = laterNext ? key + ": why, and what may go wrong" : key + " goes on";
      String told = "part " + (shown + 1) + " of " + parts.size() + "  " + more;
      area.right(area.height() - 1, told, Tone.FAINT);
    }
  }

  /** What is to be done stands by itself where it fits; why and what may go wrong come after. */
  private List<List<FlowRows.FlowRow>> cut(int high) {
    if (rows.size() <= high) {
      return List.of(rows);
    }
    int onePart = Math.max(1, high - 1);
    int first = 0;
    while (first < rows.size() && !rows.get(first).later()) {
      first++;
    }
    List<List<FlowRows.FlowRow>> parts = new ArrayList<>();
    if (first > 0 && first <= onePart) {
      parts.add(rows.subList(0, first));
      cut(parts, rows.subList(first, rows.size()), onePart);
    } else {
      cut(parts, rows, onePart);
    }
    return parts;
  }

  private static void cut(
      List<List<FlowRows.FlowRow>> parts, List<FlowRows.FlowRow> rows, int onePart) {
    for (int from = 0; from < rows.size(); from += onePart) {
      parts.add(rows.subList(from, Math.min(rows.size(), from + onePart)));
    }
  }
}
