package linkwright.view;

import java.util.List;
import linkwright.coach.content.ActMention;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Table;
import linkwright.coach.kernel.Spot;
import linkwright.coach.keys.KeyMap;
import linkwright.text.Text;

/** A table or list that scrolls so that the chosen line stays in sight. */
final class TableBlock implements Block {
  private static final int GAP = 2;
  private static final int MARK = 2;
  private static final int LEAST_WORDS = 6;
  private static final int INDENT = 4;

  private final Table table;
  private final KeyMap keys;
  private final int[] wide;
  private final List<List<String>> cells;
  private final int mark;
  private final int roomy;
  private final int wantedRows;

  TableBlock(Table table, int width, int height, KeyMap keys) {
    this.table = table;
    this.keys = keys;
    this.mark = table.chosen() >= 0 ? MARK : 0;
    this.cells = TableCells.aligned(table);
    this.wide = widths(width - mark);
    this.roomy = perLine(width) > 1 && all(width, true) <= height ? 1 : 0;
    this.wantedRows = all(width, roomy == 1);
  }

  private boolean head() {
    return table.columns().stream().anyMatch(column -> !column.name().isEmpty());
  }

  private int all(int width, boolean gaps) {
    int rows = head() ? 1 : 0;
    for (Table.Line line : table.lines()) {
      rows += rows(line, width) + (gaps ? 1 : 0);
    }
    return rows;
  }

  private int rows(Table.Line line, int width) {
    int rows = 1;
    for (Prose below : line.below()) {
      rows += below.text().isBlank() ? 0 : wrapped(below, width).size();
    }
    return rows;
  }

  private int perLine(int width) {
    return table.lines().stream().mapToInt(line -> rows(line, width)).max().orElse(1);
  }

  private List<String> wrapped(Prose below, int width) {
    return Text.wrap(ActMention.fill(below.text(), keys::spokenOf), Math.max(2, width - INDENT));
  }

  /** Natural widths; where they have no room the widest columns of words give way. */
  private int[] widths(int width) {
    int[] natural = new int[table.columns().size()];
    for (int c = 0; c < natural.length; c++) {
      natural[c] = Text.width(table.columns().get(c).name());
      for (List<String> line : cells) {
        natural[c] = Math.max(natural[c], c < line.size() ? Text.width(line.get(c)) : 0);
      }
    }
    while (sum(natural) + GAP * (natural.length - 1) > width) {
      int widest = widest(natural);
      if (natural[widest] <= LEAST_WORDS) {
        break;
      }
      natural[widest]--;
    }
    return natural;
  }

  private int widest(int[] widths) {
    int widest = 0;
    for (int c = 0; c < widths.length; c++) {
      boolean words = !table.columns().get(c).number();
      if (words && widths[c] > widths[widest] || table.columns().get(widest).number() && words) {
        widest = c;
      }
    }
    return widest;
  }

  private static int sum(int[] widths) {
    int sum = 0;
    for (int each : widths) {
      sum += each;
    }
    return sum;
  }

  @Override
  public int wanted() {
    return wantedRows;
  }

  @Override
  public int least() {
    int line = table.lines().isEmpty() ? 0 : 1;
    return Math.min(wantedRows, (head() ? 1 : 0) + 2 * line + 1);
  }

  @Override
  public Yield yields() {
    return Yield.SCROLLS;
  }

  @Override
  public void draw(Canvas area, int turned) {
    int y = 0;
    if (head()) {
      line(area, 0, table.columns().stream().map(Table.Column::name).toList(), Tone.FAINT);
      y = 1;
    }
    int first = first(area.width(), area.height() - y);
    for (int i = first; i < table.lines().size() && y < area.height(); i++) {
      Table.Line line = table.lines().get(i);
      boolean at = table.before() + i == table.chosen();
      int rows = rows(line, area.width());
      area.spot(0, y, area.width(), rows, new Spot.ToRow(table.before() + i));
      if (at) {
        area.text(0, y, mark, area.glyphs().pick("▸", ">"), Tone.ACCENT);
      }
      Tone tone = at && line.emphasis() == Emphasis.PLAIN ? Tone.STRONG : Tones.of(line.emphasis());
      line(area, y, cells.get(i), tone);
      below(area, y + 1, line);
      y += rows + roomy;
    }
    boolean more = first > 0 || y - roomy > area.height() || shownAll(first, area) < 0;
    if (more && table.chosen() >= 0) {
      String place = " " + (table.chosen() + 1) + " of " + table.all();
      area.right(area.height() - 1, place, Tone.FAINT);
    }
  }

  private int shownAll(int first, Canvas area) {
    int rows = head() ? 1 : 0;
    for (int i = first; i < table.lines().size(); i++) {
      rows += rows(table.lines().get(i), area.width()) + roomy;
    }
    return area.height() - (rows - roomy);
  }

  /** The first line shown, so that the chosen one stands near the middle. */
  private int first(int width, int high) {
    int per = perLine(width) + roomy;
    int room = Math.max(1, high / Math.max(1, per));
    return Math.max(
        0,
        Math.min(
            Math.max(0, table.chosen() - table.before()) - room / 2, table.lines().size() - room));
  }

  private void line(Canvas area, int y, List<String> texts, Tone tone) {
    int x = mark;
    for (int c = 0; c < texts.size() && c < wide.length; c++) {
      boolean last = c == wide.length - 1;
      area.text(x, y, last ? Math.max(0, area.width() - x) : wide[c], texts.get(c), tone);
      x += wide[c] + GAP;
    }
  }

  private void below(Canvas area, int from, Table.Line line) {
    int y = from;
    for (Prose below : line.below()) {
      if (!below.text().isBlank()) {
        for (String text : wrapped(below, area.width())) {
          area.text(INDENT, y, text, Tones.of(below.kind().emphasis()));
          y++;
        }
      }
    }
  }
}
