package linkwright.coach.content;

import java.util.Collection;
import java.util.List;
import java.util.function.Function;

/**
 * A table or a list.
 *
 * @param columns its columns; a list has one without a name
 * @param lines its lines
 * @param chosen the line that the next act is about, counted from the first there is, from 0; -1
 *     for none
 * @param before lines before the first one here, where a long table tells only those near the
 *     chosen one
 * @param all how many lines there are in all
 */
public record Table(List<Column> columns, List<Line> lines, int chosen, int before, int all)
    implements Part {
  public Table {
    columns = List.copyOf(columns);
    lines = List.copyOf(lines);
  }

  /** A table told whole. */
  public Table(List<Column> columns, List<Line> lines, int chosen) {
    this(columns, lines, chosen, 0, lines.size());
  }

  /** A line for each thing, none of them chosen. */
  public static <T> Table of(
      List<Column> columns, Collection<T> things, Function<? super T, Line> line) {
    return new Table(columns, things.stream().<Line>map(line).toList(), -1);
  }

  /**
   * A column.
   *
   * @param name what stands in it; empty for none
   * @param number whether its cells are numbers, aligned on the decimal sign
   */
  public record Column(String name, boolean number) {
    /** A column of words. */
    public static Column words(String name) {
      return new Column(name, false);
    }

    /** A column of numbers. */
    public static Column numbers(String name) {
      return new Column(name, true);
    }
  }

  /**
   * A line of the table.
   *
   * @param cells one text a column
   * @param below sentences that belong to the line
   * @param emphasis how much it is to be minded
   */
  public record Line(List<String> cells, List<Prose> below, Emphasis emphasis) {
    public Line {
      cells = List.copyOf(cells);
      below = List.copyOf(below);
    }

    /** A line of cells and nothing else. */
    public static Line of(String... cells) {
      return new Line(List.of(cells), List.of(), Emphasis.PLAIN);
    }

    /** The same line, minded so much. */
    public Line with(Emphasis other) {
      return new Line(cells, below, other);
    }
  }

  @Override
  public <R> R answer(PartCases<R> cases) {
    return cases.table(this);
  }
}
