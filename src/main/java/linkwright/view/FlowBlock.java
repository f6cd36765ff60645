package linkwright.view;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Question;
import linkwright.coach.content.Rows;
import linkwright.coach.content.Table;
import linkwright.coach.content.WaitShown;

/** Text in rows, turned over where not all of it has room at once: nothing of it is cut. */
final class FlowBlock implements Block {
  /** Free columns between two columns of text. */
  static final int GAP = 4;

  private static final int LEAST = 3;

  /** Rows of what is to be done that tell that it begins here. */
  private static final int BEGUN = 1;

  private final List<FlowRows.FlowRow> rows;
  private final String key;
  private final int columns;
  private final boolean told;

  /**
   * Such a text.
   *
   * @param told whether it says itself which page is shown and how to turn on
   */
  FlowBlock(List<FlowRows.FlowRow> rows, String key, int columns, boolean told) {
    this.told = told;
    this.rows = rows;
    this.key = key;
    this.columns = columns;
  }

  static boolean takes(Part part) {
    return part instanceof Prose
        || part instanceof Rows
        || part instanceof Question
        || part instanceof WaitShown
        || (part instanceof Table table && table.chosen() < 0);
  }

  @Override
  public int wanted() {
    int first = firstColumn();
    if (columns == 1 || first == 0 || first == rows.size()) {
      return rows.size();
    }
    return isCard()
        ? Math.max(spaced(rows.subList(0, first)), spaced(rows.subList(first, rows.size())))
        : Math.max(first, rows.size() - first);
  }

  /** Rows that stand left where there are two columns: what is done, or what a caution is about. */
  private int firstColumn() {
    return isCard() ? beside() : doing();
  }

  private int beside() {
    int at = 0;
    while (at < rows.size() && !rows.get(at).beside()) {
      at++;
    }
    return at;
  }

  /** One caution and no other: if it goes wrong, what to wear, whose rule are its second column. */
  private boolean isCard() {
    long turns =
        IntStream.range(1, rows.size())
            .filter(i -> rows.get(i).beside())
            .filter(i -> !rows.get(i - 1).beside() && !rows.get(i - 1).kind().later())
            .count();
    return columns > 1 && turns == 1 && doing() == rows.size();
  }

  /** Their height with a free row before each text. */
  private static int spaced(List<FlowRows.FlowRow> column) {
    return column.size()
        + (int) IntStream.range(1, column.size()).filter(i -> begins(column, i)).count();
  }

  private static boolean begins(List<FlowRows.FlowRow> column, int at) {
    FlowRows.FlowRow row = column.get(at);
    FlowRows.FlowRow before = column.get(at - 1);
    return !row.label().isEmpty() || row.tone() != before.tone() || row.indent() != before.indent();
  }

  /** Rows of what is to be done; what comes after may wait. */
  private int doing() {
    int first = 0;
    while (first < rows.size() && !rows.get(first).kind().later()) {
      first++;
    }
    return first;
  }

  @Override
  public int least() {
    return Math.min(LEAST, rows.size());
  }

  /** With the cautions before it, all that is to be done. */
  @Override
  public int kept() {
    return shownAtOnce(toBeDone());
  }

  /** With the cautions before it, how what is to be done begins. */
  @Override
  public int begun() {
    int end = toBeDone();
    int first = end;
    while (first > 0 && rows.get(first - 1).kind() == Prose.Kind.DO) {
      first--;
    }
    return shownAtOnce(Math.min(end, first + BEGUN));
  }

  private int shownAtOnce(int first) {
    int need = (first + columns - 1) / columns + (told ? 1 : 0);
    return Math.min(rows.size(), Math.max(least(), need));
  }

  /** Rows up to the end of what is to be done; 0 where nothing is. */
  private int toBeDone() {
    int end = rows.size();
    while (end > 0 && rows.get(end - 1).kind() != Prose.Kind.DO) {
      end--;
    }
    return end;
  }

  @Override
  public GivesWay yields() {
    return GivesWay.TURNS;
  }

  @Override
  public boolean apart() {
    return rows.size() != 1 || rows.get(0).tone() != Tone.ACCENT;
  }

  @Override
  public int parts(int high) {
    return (cut(high).size() + columns - 1) / columns;
  }

  @Override
  public void draw(Canvas area, int turned) {
    if (area.height() < 1) {
      return;
    }
    List<List<FlowRows.FlowRow>> parts = cut(area.height());
    int turns = (parts.size() + columns - 1) / columns;
    int shown = Math.floorMod(turned, turns);
    int wide = columns == 1 ? area.width() : (area.width() - GAP) / columns;
    for (int i = 0; i < columns && shown * columns + i < parts.size(); i++) {
      column(
          area.area(i * (wide + GAP), 0, wide, area.height()),
          parts.get(shown * columns + i),
          isCard());
    }
    if (turns > 1 && told) {
      int next = Math.min(parts.size() - 1, (shown + 1) * columns);
      boolean laterNext =
          shown == 0
              && parts.get(next).get(0).kind().later()
              && !parts.get(0).get(0).kind().later();
      if (laterNext) {
        PageLine.draw(area, shown, turns, key, "why and what may go wrong");
      } else {
        PageLine.draw(area, shown, turns, key);
      }
    }
  }

  private static void column(Canvas area, List<FlowRows.FlowRow> rows, boolean card) {
    boolean free = card && spaced(rows) <= area.height();
    int y = 0;
    for (int i = 0; i < rows.size(); i++) {
      FlowRows.FlowRow row = rows.get(i);
      y += free && i > 0 && begins(rows, i) ? 1 : 0;
      area.text(0, y, Math.max(0, row.indent() - 1), row.label(), Tone.FAINT);
      area.text(row.indent(), y, row.text(), row.tone());
      y++;
    }
  }

  /** What is to be done stands by itself where it fits; why and what may go wrong come after. */
  private List<List<FlowRows.FlowRow>> cut(int high) {
    int left = firstColumn();
    boolean beside = columns > 1 && left > 0 && left < rows.size();
    if (beside && Math.max(left, rows.size() - left) <= high) {
      return List.of(rows.subList(0, left), rows.subList(left, rows.size()));
    }
    int first = doing();
    if (rows.size() <= high) {
      return List.of(rows);
    }
    int onePart = Math.max(1, told ? high - 1 : high);
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
