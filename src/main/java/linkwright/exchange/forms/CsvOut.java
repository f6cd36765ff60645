package linkwright.exchange.forms;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Writes rows as comma-separated values (RFC 4180): a head of names, then a line each. */
public final class CsvOut {
  private static final String END = "\r\n";

  private CsvOut() {}

  /**
   * The text; a row that lacks a column leaves its cell empty.
   *
   * @param first columns that are told even of no row
   */
  public static String of(List<Map<String, Object>> rows, List<String> first) {
    Set<String> columns = new LinkedHashSet<>(first);
    rows.forEach(row -> columns.addAll(row.keySet()));
    StringBuilder text = new StringBuilder();
    if (columns.isEmpty()) {
      return "";
    }
    text.append(columns.stream().map(CsvOut::cell).collect(Collectors.joining(","))).append(END);
    for (Map<String, Object> row : rows) {
      text.append(
              columns.stream()
                  .map(column -> cell(shown(row.getOrDefault(column, ""))))
                  .collect(Collectors.joining(",")))
          .append(END);
    }
    return text.toString();
  }

  private static String shown(Object value) {
    return value instanceof Double number ? YamlOut.number(number) : String.valueOf(value);
  }

  private static String cell(String text) {
    return text.matches("(?s).*[\",\\r\\n].*") ? "\"" + text.replace("\"", "\"\"") + "\"" : text;
  }
}
