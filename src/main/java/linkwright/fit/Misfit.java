package linkwright.fit;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import linkwright.quantity.Doubtful;
import linkwright.quantity.UnitStyle;

/** A measure of a test piece that is out of reason beside what the piece was expected to be. */
final class Misfit {
  /** A measure that is off by more spreads than this is asked about. */
  private static final double SPREADS = 4;

  /** A slip is suggested if it lies within so many. */
  private static final double NEAR = 3;

  private Misfit() {}

  static Optional<Doubtful> of(Expected expected, Tried piece, UnitStyle style) {
    return asked("long", piece.lengthMm(), expected.lengthMm(), expected.lengthSpreadMm(), style)
        .or(
            () ->
                asked(
                    "wide", piece.widthMm(), expected.widthMm(), expected.widthSpreadMm(), style));
  }

  private static Optional<Doubtful> asked(
      String how, OptionalDouble measured, double expectedMm, double spreadMm, UnitStyle style) {
    if (measured.isEmpty()) {
      return Optional.empty();
    }
    double mm = measured.getAsDouble();
    double spread = Math.hypot(spreadMm, PieceScatter.CALIPER_MM);
    if (Math.abs(mm - expectedMm) <= SPREADS * spread) {
      return Optional.empty();
    }
    // A decimal sign that slipped, or the wrong unit.
    OptionalDouble meant =
        DoubleStream.of(mm / 10, mm * 10, mm / 25.4, mm * 25.4, mm / 100, mm / 1000)
            .filter(other -> Math.abs(other - expectedMm) <= NEAR * spread)
            .findFirst();
    String likely = meant.isPresent() ? style.length(meant.getAsDouble()) : "";
    return Optional.of(
        new Doubtful(
            style.length(mm)
                + " "
                + how
                + ", where "
                + style.length(expectedMm)
                + " ± "
                + style.length(spread)
                + " was expected: "
                + (likely.isEmpty() ? "measure it again?" : likely + "?"),
            likely));
  }
}
