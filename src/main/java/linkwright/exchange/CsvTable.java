package linkwright.exchange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import linkwright.quantity.Problem;

/**
 * A table of comma-separated values (RFC 4180): a line of headings, then a line a row; cells in
 * quotes hold commas, line breaks and doubled quotes. Where the first line has semicolons and no
 * comma, or tabs, these part the cells, as programs write that use a decimal comma.
 *
 * @param headings the headings as they are written
 * @param rows the rows in order
 * @param problems what cannot be read, with its line
 */
public record CsvTable(List<String> headings, List<CsvRow> rows, List<Problem> problems) {
  private static final Pattern UNIT =
      Pattern.compile("(.*?)[ _(\\[]+(mm|cm|m|in|g|mg|dwt|ozt|gr)[)\\]]?");

  private static final Pattern NUMBER = Pattern.compile("[-+]?[0-9][0-9.,/ ]*");

  /** Copies the lists. */
  public CsvTable {
    headings = List.copyOf(headings);
    rows = List.copyOf(rows);
    problems = List.copyOf(problems);
  }

  /**
   * A row.
   *
   * @param line its line in the file, from 1
   * @param cells heading without its unit, in small letters → what stands there with the unit
   */
  public record CsvRow(int line, Map<String, String> cells) {
    /** Copies the map. */
    public CsvRow {
      cells = Map.copyOf(cells);
    }

    /** What stands below a heading; empty where nothing does. */
    public String of(String heading) {
      return cells.getOrDefault(heading, "");
    }
  }

  /** Reads a text; the file's name is for what is told. */
  public static CsvTable read(String file, String text) {
    return new Reading(file, text.startsWith("\uFEFF") ? text.substring(1) : text).table();
  }

  /** The headings without their units, as the rows know them. */
  public List<String> columns() {
    return headings.stream().map(CsvTable::column).toList();
  }

  private static Optional<Matcher> withUnit(String heading) {
    Matcher unit = UNIT.matcher(heading.strip());
    return unit.matches() && !unit.group(1).isBlank() ? Optional.of(unit) : Optional.empty();
  }

  private static String column(String heading) {
    String bare = withUnit(heading).map(unit -> unit.group(1)).orElse(heading);
    return bare.strip().toLowerCase(Locale.ROOT).replace('_', ' ').replace('-', ' ');
  }

  /**
   * A heading, taken apart once for all rows.
   *
   * @param column what heads the column, without its unit
   * @param unit the unit behind it with a space before; empty where none stands there
   */
  private record Heading(String column, String unit) {
    static Heading of(String written) {
      return new Heading(
          CsvTable.column(written), withUnit(written).map(unit -> " " + unit.group(2)).orElse(""));
    }

    /** A bare number takes the unit of its heading; what has one of its own keeps it. */
    String value(String cell) {
      return !unit.isEmpty() && NUMBER.matcher(cell).matches() ? cell + unit : cell;
    }
  }

  private static final class Reading {
    private final String file;
    private final String text;
    private final char comma;
    private final List<Problem> problems = new ArrayList<>();
    private int at;
    private int line = 1;

    Reading(String file, String text) {
      this.file = file;
      this.text = text;
      String first = text.lines().findFirst().orElse("");
      this.comma =
          first.indexOf('\t') >= 0
              ? '\t'
              : first.indexOf(';') >= 0 && first.indexOf(',') < 0 ? ';' : ',';
    }

    CsvTable table() {
      List<String> headings = new ArrayList<>();
      List<CsvRow> rows = new ArrayList<>();
      List<Heading> known = new ArrayList<>();
      while (at < text.length()) {
        int begun = line;
        List<String> cells = cells();
        if (cells.stream().allMatch(String::isBlank)) {
          continue;
        }
        if (headings.isEmpty()) {
          headings.addAll(cells);
          headings.forEach(each -> known.add(Heading.of(each)));
          doubled(headings, begun);
        } else {
          rows.add(row(begun, known, cells));
        }
      }
      if (headings.isEmpty()) {
        problems.add(
            new Problem(file, 1, 0, "nothing stands in it", "The first line is headings."));
      }
      return new CsvTable(headings, rows, problems);
    }

    private void doubled(List<String> headings, int begun) {
      List<String> columns = headings.stream().map(CsvTable::column).toList();
      columns.stream()
          .filter(each -> columns.indexOf(each) != columns.lastIndexOf(each))
          .distinct()
          .forEach(
              each ->
                  problems.add(
                      new Problem(
                          file,
                          begun,
                          0,
                          "“" + each + "” heads two columns",
                          "Keep one of them.")));
    }

    private CsvRow row(int begun, List<Heading> headings, List<String> cells) {
      if (cells.size() > headings.size()) {
        problems.add(
            new Problem(
                file,
                begun,
                0,
                cells.size() + " cells stand under " + headings.size() + " headings",
                "Put what holds a “" + comma + "” in double quotes."));
      }
      Map<String, String> values = new LinkedHashMap<>();
      for (int i = 0; i < Math.min(headings.size(), cells.size()); i++) {
        String cell = cells.get(i).strip();
        if (!cell.isEmpty()) {
          values.put(headings.get(i).column(), headings.get(i).value(cell));
        }
      }
      return new CsvRow(begun, values);
    }

    /** The cells up to the end of the line, past it. */
    private List<String> cells() {
      List<String> cells = new ArrayList<>();
      cells.add(cell());
      while (at < text.length() && text.charAt(at) == comma) {
        at++;
        cells.add(cell());
      }
      if (at < text.length() && text.charAt(at) == '\r') {
        at++;
      }
      if (at < text.length() && text.charAt(at) == '\n') {
        at++;
      }
      line++;
      return cells;
    }

    private String cell() {
      if (at < text.length() && text.charAt(at) == '"') {
        return quoted();
      }
      int begin = at;
      while (at < text.length() && text.charAt(at) != comma && !ends(text.charAt(at))) {
        at++;
      }
      return text.substring(begin, at);
    }

    private static boolean ends(char sign) {
      return sign == '\n' || sign == '\r';
    }

    private String quoted() {
      int begun = line;
      StringBuilder cell = new StringBuilder();
      at++;
      while (at < text.length()) {
        char sign = text.charAt(at++);
        boolean twice = sign == '"' && at < text.length() && text.charAt(at) == '"';
        if (twice) {
          cell.append('"');
          at++;
        } else if (sign == '"') {
          return cell + after();
        } else {
          line += sign == '\n' ? 1 : 0;
          cell.append(sign);
        }
      }
      problems.add(
          new Problem(file, begun, 0, "a double quote is opened and not closed", "Close it."));
      return cell.toString();
    }

    /** What stands between a closing quote and the next comma does not belong there. */
    private String after() {
      int begin = at;
      while (at < text.length() && text.charAt(at) != comma && !ends(text.charAt(at))) {
        at++;
      }
      String rest = text.substring(begin, at);
      if (!rest.isBlank()) {
        problems.add(
            new Problem(
                file,
                line,
                0,
                "“" + rest.strip() + "” stands behind a closing double quote",
                "Double each quote inside a cell."));
      }
      return rest.strip();
    }
  }
}
