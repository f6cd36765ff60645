package linkwright.link;

import java.util.Optional;

/** Bends of patterns that no file has. */
final class Bends {
  private Bends() {}

  /** A plain bend over one former. */
  static Bend of(String over, double turnDeg, Side side) {
    return new Bend(over, Optional.empty(), turnDeg, side, false, false, false);
  }

  /** A bend that holds the next element. */
  static Bend eye(String over, double turnDeg, Side side) {
    return new Bend(over, Optional.empty(), turnDeg, side, true, false, false);
  }
}
