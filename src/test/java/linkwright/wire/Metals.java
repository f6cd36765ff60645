package linkwright.wire;

import java.util.List;
import java.util.OptionalInt;
import linkwright.reference.Family;
import linkwright.reference.Metal;
import linkwright.reference.PublishedFigure;
import linkwright.reference.Range;

/** Metals by their printed figures, without the room of files. */
final class Metals {
  private Metals() {}

  /** Source: ESPI Metals, data sheet for sterling silver; hard yield and modulus from memory. */
  static Metal sterling() {
    return new Metal(
        "sterling",
        "Sterling silver",
        List.of(),
        Family.SILVER,
        OptionalInt.of(925),
        figure(10.36),
        new Range(779, 893, ""),
        new Range(600, 650, ""),
        "",
        "",
        figure(75),
        figure(124),
        figure(425),
        figure(283),
        figure(496),
        figure(0.5),
        List.of(),
        "");
  }

  private static PublishedFigure figure(double value) {
    return new PublishedFigure(value, "");
  }
}
