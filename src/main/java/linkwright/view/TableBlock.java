package linkwright.view;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Table;
import linkwright.coach.kernel.Spot;
import linkwright.coach.keys.KeyMap;
import linkwright.text.Text;

/** A table or list to choose from: it scrolls so that the chosen line stays in sight. */
final class TableBlock implements Block {
  private static final int MARK = 2;

  private final Table table;
  private final List<TableRows.RowText> head;
  private final List<List<List<TableRows.RowText>>> lines = new ArrayList<>();
  private final int gap;
  private final int wanted;

  TableBlock(Table table, int width, int height, KeyMap keys) {
    this.table = table;
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
    return Math.min(wanted, headRows() + most + 1);
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
    boolean roomy = all(gap) <= area.height();
    int between = roomy ? gap : 0;
    runs(area, 0, head, Tone.FAINT);
    int first = roomy ? 0 : first(area.height() - headRows());
    int y = headRows();
    int i = first;
    while (i < lines.size() && (i == first || y + lines.get(i).size() <= area.height())) {
      line(area, y, i);
      y += lines.get(i).size() + between;
      i++;
    }
    if (first > 0 || i < lines.size()) {
      place(area, y, lines.get(i - 1));
    }
  }

  /** Which of them is chosen, where that covers nothing. */
  private void place(Canvas area, int end, List<List<TableRows.RowText>> last) {
    String place = " " + (table.chosen() + 1) + " of " + table.all();
    int used = 0;
    if (end >= area.height()) {
      for (TableRows.RowText run : last.get(last.size() - 1)) {
        used = Math.max(used, run.x() + Text.width(run.text()));
      }
    }
    if (used + Text.width(place) <= area.width()) {
      area.right(area.height() - 1, place, Tone.FAINT);
    }
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

  private void line(Canvas area, int y, int i) {
    boolean at = i == chosen();
    Emphasis emphasis = table.lines().get(i).emphasis();
    area.spot(0, y, area.width(), lines.get(i).size(), new Spot.ToRow(table.before() + i));
    if (at) {
      area.text(0, y, MARK, area.glyphs().pick("▸", ">"), Tone.ACCENT);
    }
    Tone tone = at && emphasis == Emphasis.PLAIN ? Tone.STRONG : Tones.of(emphasis);
    for (int row = 0; row < lines.get(i).size(); row++) {
      runs(area, y + row, lines.get(i).get(row), tone);
    }
  }

  private static void runs(Canvas area, int y, List<TableRows.RowText> runs, Tone tone) {
    for (TableRows.RowText run : runs) {
      int room = Math.max(0, Math.min(run.wide(), area.width() - run.x()));
      area.text(run.x(), y, room, run.text(), run.own().orElse(tone));
    }
  }
}
