package linkwright.view;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.content.Table;
import linkwright.text.Text;

/** The cells of a table with its numbers aligned on the decimal sign. */
final class TableCells {
  private TableCells() {}

  static List<List<String>> aligned(Table table) {
    List<List<String>> aligned = new ArrayList<>();
    int[] before = new int[table.columns().size()];
    for (Table.Line line : table.lines()) {
      for (int c = 0; c < before.length && c < line.cells().size(); c++) {
        if (table.columns().get(c).number()) {
          before[c] = Math.max(before[c], beforeSign(line.cells().get(c)));
        }
      }
    }
    for (Table.Line line : table.lines()) {
      List<String> cells = new ArrayList<>();
      for (int c = 0; c < line.cells().size(); c++) {
        String cell = line.cells().get(c);
        boolean number = c < before.length && table.columns().get(c).number();
        cells.add(number ? " ".repeat(Math.max(0, before[c] - beforeSign(cell))) + cell : cell);
      }
      aligned.add(List.copyOf(cells));
    }
    return List.copyOf(aligned);
  }

  /** Columns before the decimal sign, or, without one, before what follows the digits. */
  private static int beforeSign(String cell) {
    int i = 0;
    while (i < cell.length() && !Character.isDigit(cell.charAt(i))) {
      i++;
    }
    if (i == cell.length()) {
      return 0;
    }
    while (i < cell.length() && Character.isDigit(cell.charAt(i))) {
      i++;
    }
    return Text.width(cell.substring(0, i));
  }
}
