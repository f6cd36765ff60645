package linkwright.coach.content;

import java.util.List;

/**
 * Labelled values, a line each.
 *
 * @param rows the values in order
 */
public record Rows(List<Row> rows) implements Part {
  public Rows {
    rows = List.copyOf(rows);
  }

  @Override
  public <R> R answer(PartCases<R> cases) {
    return cases.rows(this);
  }
}
