package linkwright.coach.testpieces;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Table;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.job.Trials;
import linkwright.link.Formed;
import linkwright.quantity.UnitStyle;
import linkwright.standing.TestPieces;

/** The pieces made: blank, what it measured, what is reckoned for it, what the next should be. */
final class TestPieceTable {
  private static final List<Table.Column> COLUMNS =
      List.of(
          Table.Column.numbers(""),
          Table.Column.numbers("blank"),
          Table.Column.numbers("measured"),
          Table.Column.numbers("reckoned"),
          Table.Column.words("make the next"),
          Table.Column.words(""));

  private TestPieceTable() {}

  static Table of(TestsHeld held, Trials trials, UnitStyle units) {
    List<Table.Line> lines = new ArrayList<>();
    for (Map.Entry<EntryId, Fact.TestPieceTried> each : trials.pieces().entrySet()) {
      boolean sample = trials.isSample(each.getKey());
      lines.add(line(lines.size(), each.getValue(), sample, held, units));
    }
    return new Table(COLUMNS, lines, held.at());
  }

  private static Table.Line line(
      int i, Fact.TestPieceTried piece, boolean sample, TestsHeld held, UnitStyle units) {
    return new Table.Line(
        List.of(
            Integer.toString(i + 1),
            units.length(piece.blankMm()),
            size(piece.lengthMm(), piece.widthMm(), units),
            reckoned(held, i, piece.size(), units),
            (piece.size().isEmpty() ? "" : piece.size() + ": ")
                + String.join(" and ", piece.verdicts()),
            sample ? "sample link" : ""),
        List.of(Prose.aside(piece.note())),
        sample ? Emphasis.MAIN : Emphasis.PLAIN);
  }

  private static String reckoned(TestsHeld held, int i, String size, UnitStyle units) {
    List<Optional<Formed>> made = held.of(size).map(TestPieces::made).orElse(List.of());
    return made.stream()
        .skip(i)
        .findFirst()
        .flatMap(link -> link)
        .map(link -> by(units.length(link.lengthMm()), units.length(link.widthMm())))
        .orElse("-");
  }

  private static String size(OptionalDouble length, OptionalDouble width, UnitStyle units) {
    return length.isEmpty() && width.isEmpty() ? "-" : by(one(length, units), one(width, units));
  }

  /** {@code 14.2 x 5.4 mm}: the unit once, if both have it. */
  private static String by(String length, String width) {
    int unit = length.indexOf(' ');
    boolean same = unit > 0 && width.endsWith(length.substring(unit));
    return (same ? length.substring(0, unit) : length) + " x " + width;
  }

  private static String one(OptionalDouble mm, UnitStyle units) {
    return mm.isPresent() ? units.length(mm.getAsDouble()) : "?";
  }
}
