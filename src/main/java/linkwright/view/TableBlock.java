package linkwright.view;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Table;
import linkwright.coach.kernel.Spot;
import linkwright.coach.keys.KeyMap;
import linkwright.text.Text;

/**
 * A table or list to choose from: it scrolls so that the chosen line stays in sight; one that is
 * higher than its room is turned over.
 */
final class TableBlock implements Block {
  private static final int MARK = 2;

  /** Rows of a line for which a page is kept free. */
  private static final int MOST_LEAST = 6;

  private final Table table;
  private final List<TableRows.RowText> head;
  private final List<List<List<TableRows.RowText>>> lines = new ArrayList<>();
  private final int gap;
  private final int wanted;
  private final String key;
  private final boolean told;

  /**
   * Such a table.
   *
   * @param key the key that turns a long line over
   * @param told whether it says itself which page of that is shown and how to turn on
   */
  TableBlock(Table table, int width, int height, KeyMap keys, String key, boolean told) {
    this.table = table;
    this.key = key;
    this.told = told;
    TableRows rows = new TableRows(table, MARK, width, keys::spokenOf);
    this.head = rows.head();
    for (int i = 0; i < table.lines().size(); i++) {
      lines.add(rows.of(i));
    }
    boolean several = lines.stream().anyMatch(line -> line.size() > 1);
    this.gap = several && all(1) <= height ? 1 : 0;
    this.wanted = all(gap);
  }

  /** The chosen line among those that are told here. */
  private int chosen() {
    return table.chosen() - table.before();
  }

  private int headRows() {
    return head.isEmpty() ? 0 : 1;
  }

  private int all(int between) {
    return headRows() + rows(0, lines.size(), between);
  }

  /** Rows of the lines from one to before another. */
  private int rows(int first, int end, int between) {
    int rows = Math.max(0, end - first - 1) * between;
    for (List<List<TableRows.RowText>> line : lines.subList(first, end)) {
      rows += line.size();
    }
    return rows;
  }

  @Override
  public int wanted() {
    return wanted;
  }

  @Override
  public int least() {
    int most = lines.stream().mapToInt(List::size).max().orElse(0);
    return Math.min(wanted, headRows() + Math.min(most, MOST_LEAST) + 1);
  }

  @Override
  public int parts(int rows) {
    int high = chosen() >= 0 && chosen() < lines.size() ? lines.get(chosen()).size() : 0;
    int room = rows - headRows();
    int onePart = onePart(rows);
    return room < 1 || high <= room ? 1 : (high + onePart - 1) / onePart;
  }

  private int onePart(int rows) {
    return Math.max(1, rows - headRows() - (told ? 1 : 0));
  }

  @Override
  public GivesWay yields() {
    return GivesWay.SCROLLS;
  }

  @Override
  public void draw(Canvas area, int turned) {
    if (area.height() < 1) {
      return;
    }
    runs(area, 0, head, Tone.FAINT);
    int parts = parts(area.height());
    if (parts > 1) {
      part(area, Math.floorMod(turned, parts), parts);
      return;
    }
    if (all(gap) <= area.height()) {
      lines(area, 0, lines.size(), gap);
      return;
    }
    // Which line of how many stands beside the last row, or in a row that is kept free for it.
    int all = area.height();
    boolean beside = placeFits(area, first(all - headRows()), all);
    int high = beside || !shows(all - 1) ? all : all - 1;
    int first = first(high - headRows());
    lines(area, first, end(first, high), 0);
    if (placeFits(area, first, high) || high < all) {
      area.right(all - 1, place(), Tone.FAINT);
    }
  }

  private void lines(Canvas area, int first, int end, int between) {
    int y = headRows();
    for (int i = first; i < end; i++) {
      line(area, y, i, lines.get(i));
      y += lines.get(i).size() + between;
    }
  }

  /** Whether the chosen line has all its rows in that height. */
  private boolean shows(int high) {
    int first = first(high - headRows());
    boolean none = chosen() < 0 || chosen() >= lines.size();
    return headRows() + rows(first, none ? first + 1 : chosen() + 1, 0) <= high;
  }

  /** Before which line the room ends; the first is shown whatever it takes. */
  private int end(int first, int high) {
    int end = Math.min(lines.size(), first + 1);
    while (end < lines.size() && headRows() + rows(first, end + 1, 0) <= high) {
      end++;
    }
    return end;
  }

  /** A part of the chosen line, which has more rows than there is room for. */
  private void part(Canvas area, int shown, int parts) {
    int onePart = onePart(area.height());
    List<List<TableRows.RowText>> rows = lines.get(chosen());
    int from = shown * onePart;
    line(area, headRows(), chosen(), rows.subList(from, Math.min(rows.size(), from + onePart)));
    if (told) {
      PageLine.draw(area, shown, parts, key);
    }
  }

  /** Which of them is chosen. */
  private String place() {
    return " line " + (table.chosen() + 1) + " of " + table.all();
  }

  /** Whether that covers nothing in the lowest row. */
  private boolean placeFits(Canvas area, int first, int high) {
    int end = end(first, high);
    int used = 0;
    if (headRows() + rows(first, end, 0) >= area.height()) {
      List<List<TableRows.RowText>> last = lines.get(end - 1);
      for (TableRows.RowText run : last.get(last.size() - 1)) {
        used = Math.max(used, run.x() + Text.width(run.text()));
      }
    }
    return used + Text.width(place()) <= area.width();
  }

  /** The first line shown, so that the chosen one stands near the middle. */
  private int first(int room) {
    int first = Math.min(chosen(), Math.max(0, lines.size() - 1));
    while (first > 0 && rows(first - 1, chosen() + 1, 0) <= Math.max(1, (room + 1) / 2)) {
      first--;
    }
    // No room stays free below the last line.
    while (first > 0 && rows(first - 1, lines.size(), 0) <= room) {
      first--;
    }
    return first;
  }

  private void line(Canvas area, int y, int i, List<List<TableRows.RowText>> rows) {
    boolean at = i == chosen();
    Emphasis emphasis = table.lines().get(i).emphasis();
    area.spot(0, y, area.width(), rows.size(), new Spot.ToRow(table.before() + i));
    if (at) {
      area.text(0, y, MARK, area.glyphs().pick("▸", ">"), Tone.ACCENT);
      area.cursorUnlessTyped(0, y);
    }
    Tone tone = at && emphasis == Emphasis.PLAIN ? Tone.STRONG : Tones.of(emphasis);
    for (int row = 0; row < rows.size(); row++) {
      runs(area, y + row, rows.get(row), tone);
    }
  }

  private static void runs(Canvas area, int y, List<TableRows.RowText> runs, Tone tone) {
    for (TableRows.RowText run : runs) {
      int room = Math.max(0, Math.min(run.wide(), area.width() - run.x()));
      area.text(run.x(), y, room, run.text(), run.own().orElse(tone));
    }
  }
}
