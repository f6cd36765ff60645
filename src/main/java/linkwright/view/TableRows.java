package linkwright.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import linkwright.coach.content.ActMention;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Table;
import linkwright.coach.keys.Act;
import linkwright.text.Text;

/**
 * The lines of a table broken into rows of a width. Columns of words give way first and break into
 * several rows; where the columns have no room even so, each line is a text of its cells with the
 * names of their columns.
 */
final class TableRows {
  private static final int GAP = 2;
  private static final int INDENT = 4;

  /** A word longer than this is broken. */
  private static final int MOST_WORD = 14;

  /** Rows of a cell; what is longer is cut with a mark until its line is chosen. */
  private static final int MOST_ROWS = 3;

  /**
   * Text at a place in a row.
   *
   * @param x where it begins
   * @param wide columns that it may take
   * @param text the text
   * @param own its own tone; empty for the line's
   */
  record RowText(int x, int wide, String text, Optional<Tone> own) {}

  private final Table table;
  private final Function<Act, String> keyOf;
  private final List<List<String>> cells;
  private final int from;
  private final int width;
  private final int[] wide;
  private final boolean columns;

  /** Rows in that width, the first columns of which are kept free. */
  TableRows(Table table, int from, int width, Function<Act, String> keyOf) {
    this.table = table;
    this.keyOf = keyOf;
    this.cells = TableCells.aligned(table);
    this.from = from;
    this.width = Math.max(from + 2, width);
    int[] readable = natural();
    int[] all = natural();
    // Where its words can give way, a line is no longer than one that is read with ease.
    boolean eased = narrowed(readable, Math.min(this.width, FlowRows.MOST_WIDE));
    this.wide = eased ? readable : all;
    this.columns = eased || narrowed(all, this.width);
  }

  /** The row with the columns' names; none where no column has one or they have no room. */
  List<RowText> head() {
    List<String> names = table.columns().stream().map(Table.Column::name).toList();
    boolean named = names.stream().anyMatch(name -> !name.isEmpty());
    return columns && named ? inColumns(names, false).get(0) : List.of();
  }

  /** The rows of a line. */
  List<List<RowText>> of(int line) {
    List<List<RowText>> rows =
        new ArrayList<>(
            columns ? inColumns(cells.get(line), whole(line)) : asText(table.lines().get(line)));
    for (Prose below : table.lines().get(line).below()) {
      if (!below.text().isBlank()) {
        String sign = below.kind() == Prose.Kind.STOP ? "! " : "";
        int room = Math.max(2, Math.min(FlowRows.MOST_WIDE, width) - INDENT);
        for (String text : Text.wrap(sign + ActMention.fill(below.text(), keyOf), room)) {
          rows.add(
              List.of(
                  new RowText(INDENT, room, text, Optional.of(Tones.of(below.kind().emphasis())))));
        }
      }
    }
    return rows;
  }

  private int[] natural() {
    int[] natural = new int[table.columns().size()];
    for (int c = 0; c < natural.length; c++) {
      natural[c] = Text.width(table.columns().get(c).name());
      for (List<String> line : cells) {
        natural[c] = Math.max(natural[c], c < line.size() ? Text.width(line.get(c)) : 0);
      }
    }
    return natural;
  }

  /** Takes from the widest columns of words; whether all have room in that width then. */
  private boolean narrowed(int[] widths, int within) {
    int room = within - from - GAP * (widths.length - 1);
    int over = -room;
    for (int wide : widths) {
      over += wide;
    }
    int[] least = new int[widths.length];
    for (int c = 0; over > 0 && c < widths.length; c++) {
      least[c] = longestWord(c);
    }
    while (over > 0) {
      int widest = -1;
      for (int c = 0; c < widths.length; c++) {
        boolean gives = !table.columns().get(c).number() && widths[c] > least[c];
        if (gives && (widest < 0 || widths[c] > widths[widest])) {
          widest = c;
        }
      }
      if (widest < 0) {
        return false;
      }
      widths[widest]--;
      over--;
    }
    return true;
  }

  private int longestWord(int column) {
    int longest = Text.width(table.columns().get(column).name());
    for (List<String> line : cells) {
      if (column < line.size()) {
        for (String word : line.get(column).split(" ", -1)) {
          longest = Math.max(longest, Math.min(MOST_WORD, Text.width(word)));
        }
      }
    }
    return longest;
  }

  /** What is turned over like pages has room for all of it, and so has what is chosen. */
  private boolean whole(int line) {
    return table.chosen() < 0 || table.chosen() - table.before() == line;
  }

  private List<List<RowText>> inColumns(List<String> texts, boolean whole) {
    List<List<RowText>> rows = new ArrayList<>(List.of(new ArrayList<>()));
    int x = from;
    for (int c = 0; c < texts.size() && c < wide.length; c++) {
      boolean number = table.columns().get(c).number();
      List<String> parts =
          number || Text.width(texts.get(c)) <= wide[c]
              ? List.of(texts.get(c))
              : wrapped(texts.get(c), Math.max(2, wide[c]), whole);
      for (int i = 0; i < parts.size(); i++) {
        if (i == rows.size()) {
          rows.add(new ArrayList<>());
        }
        rows.get(i).add(new RowText(x, wide[c], parts.get(i), Optional.empty()));
      }
      x += wide[c] + GAP;
    }
    return rows;
  }

  private static List<String> wrapped(String text, int width, boolean whole) {
    List<String> parts = Text.wrap(text, width);
    if (parts.size() <= MOST_ROWS || whole) {
      return parts;
    }
    List<String> kept = new ArrayList<>(parts.subList(0, MOST_ROWS - 1));
    kept.add(String.join(" ", parts.subList(MOST_ROWS - 1, parts.size())));
    return kept;
  }

  private List<List<RowText>> asText(Table.Line line) {
    List<String> said = new ArrayList<>();
    for (int c = 0; c < line.cells().size() && c < wide.length; c++) {
      String cell = line.cells().get(c).strip();
      String name = table.columns().get(c).name();
      if (!cell.isEmpty() && !cell.equals("-")) {
        said.add(name.isEmpty() ? cell : name + " " + cell);
      }
    }
    List<List<RowText>> rows = new ArrayList<>();
    for (String text : Text.wrap(String.join(", ", said), Math.max(2, width - from - 2))) {
      int x = rows.isEmpty() ? from : from + 2;
      rows.add(List.of(new RowText(x, width - x, text, Optional.empty())));
    }
    return rows;
  }
}
