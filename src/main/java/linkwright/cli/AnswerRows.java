package linkwright.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linkwright.coach.content.Beside;
import linkwright.coach.content.Part;
import linkwright.coach.content.Row;
import linkwright.coach.content.Rows;
import linkwright.coach.content.Table;
import linkwright.coach.keys.Act;
import linkwright.exchange.forms.OutForm;
import linkwright.plain.PlainLines;
import linkwright.quantity.Decimals;
import linkwright.quantity.Read;
import picocli.CommandLine.Option;

/**
 * How a command answers with what a place of the program says: as lines for reading, or as rows for
 * other programs. A value has a row of its own; of a table each cell has, {@code of} its line's
 * first and {@code list} what that column is called, and none where nothing stands in it; what is
 * said in sentences is a row without a value.
 */
final class AnswerRows {
  /** What a table shows where there is nothing. */
  private static final String NONE = "-";

  @Option(
      names = "--as",
      paramLabel = "FORM",
      completionCandidates = OutForm.Named.class,
      description = OutForm.SAYS)
  private String form = "text";

  /** The form that was asked for. */
  Read<OutForm> form() {
    return OutForm.named(form);
  }

  /** Whether the answer is for reading; a form that is none too, for it is told before. */
  boolean forReading() {
    return OutForm.named(form).found().orElse(OutForm.TEXT) == OutForm.TEXT;
  }

  /** Prints what a place says, unless it is for reading: then the caller lays it out. */
  void print(Root root, String name, List<Part> parts) {
    root.here().out().print(written(form().orThrow(), name, parts));
  }

  /** What a place says as rows. */
  static String written(OutForm form, String name, List<Part> parts) {
    return form.written(name, rows(parts));
  }

  private static List<Map<String, Object>> rows(List<Part> parts) {
    PlainLines plain = new PlainLines(Act::words);
    List<Map<String, Object>> rows = new ArrayList<>();
    for (Part part : Beside.flat(parts).toList()) {
      if (part instanceof Rows labelled) {
        labelled.rows().forEach(row -> rows.add(row(row, plain)));
      } else if (part instanceof Table table) {
        table.lines().forEach(line -> cells(table, line, rows));
      } else {
        part.answer(plain).forEach(says -> rows.add(row("", "", "", "", "", "", "", says)));
      }
    }
    return rows;
  }

  private static Map<String, Object> row(Row row, PlainLines plain) {
    return row(
        "",
        "",
        row.label(),
        row.value(),
        row.unit(),
        row.plusMinus(),
        row.source(),
        plain.filled(row.remark()));
  }

  private static void cells(Table table, Table.Line line, List<Map<String, Object>> rows) {
    String first = line.cells().isEmpty() ? "" : line.cells().get(0).strip();
    String list = table.columns().isEmpty() ? "" : table.columns().get(0).name();
    for (int c = line.cells().size() > 1 ? 1 : 0; c < line.cells().size(); c++) {
      String name = c < table.columns().size() ? table.columns().get(c).name() : "";
      String told = line.cells().get(c).strip();
      if (c > 0 && (told.isEmpty() || told.equals(NONE))) {
        continue;
      }
      // A number in a cell has its unit apart, as a labelled row has.
      Row cell = Row.of(name, told);
      rows.add(
          row(
              c == 0 ? "" : list,
              c == 0 ? "" : first,
              name,
              cell.value(),
              cell.unit(),
              cell.plusMinus(),
              "",
              ""));
    }
    line.below()
        .forEach(
            below ->
                rows.add(row(list, first, below.kind().label(), "", "", "", "", below.text())));
  }

  /** A figure is a number with the digits that it was told with; all else is a text. */
  private static Object figure(String told) {
    return Decimals.asTold(told).<Object>map(figure -> figure).orElse(told);
  }

  private static Map<String, Object> row(
      String list,
      String of,
      String what,
      String value,
      String unit,
      String spread,
      String from,
      String says) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("list", list);
    row.put("of", of);
    row.put("what", what);
    row.put("value", figure(value));
    row.put("unit", unit);
    row.put("plus_minus", figure(spread));
    row.put("from", from);
    row.put("says", says);
    return row;
  }
}
