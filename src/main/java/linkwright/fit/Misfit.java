package linkwright.fit;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * A measure of a test piece that is out of reason beside what the piece was expected to be: off by
 * more than {@value #SPREADS} spreads, the calipers' own among them.
 *
 * @param expectedMm what was expected, mm
 * @param spreadMm its spread and the calipers', one standard deviation, mm
 * @param meantMm what was likely meant, where a decimal sign slipped or inches were read, mm
 */
public record Misfit(double expectedMm, double spreadMm, OptionalDouble meantMm) {
  /** A measure that is off by more spreads than this is asked about. Our own choice. */
  private static final double SPREADS = 4;

  /** A slip is suggested if it lies within so many. Our own choice. */
  private static final double NEAR = 3;

  static Optional<Misfit> of(OptionalDouble measured, double expectedMm, double spreadMm) {
    if (measured.isEmpty()) {
      return Optional.empty();
    }
    double mm = measured.getAsDouble();
    double spread = Math.hypot(spreadMm, PieceScatter.CALIPER_MM);
    if (Math.abs(mm - expectedMm) <= SPREADS * spread) {
      return Optional.empty();
    }
    OptionalDouble meant =
        DoubleStream.of(mm / 10, mm * 10, mm / 25.4, mm * 25.4, mm / 100, mm / 1000)
            .filter(other -> Math.abs(other - expectedMm) <= NEAR * spread)
            .findFirst();
    return Optional.of(new Misfit(expectedMm, spread, meant));
  }
}
