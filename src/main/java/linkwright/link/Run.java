package linkwright.link;

import java.util.OptionalDouble;

/**
 * A straight stretch of wire.
 *
 * @param mm its length in millimetres; empty where the blank decides it
 * @param asRest whether it is as long as the pattern's one {@code rest}; only where {@code mm} is
 *     empty
 */
public record Run(OptionalDouble mm, boolean asRest) implements PatternPart {
  public Run {
    if (asRest && mm.isPresent()) {
      throw new IllegalArgumentException("a run as long as the rest has no length: " + mm);
    }
  }

  /** A run of a given length, in millimetres. */
  public static Run of(double mm) {
    return new Run(OptionalDouble.of(mm), false);
  }

  /** What the blank leaves after everything else: {@code run: rest}. */
  public static Run rest() {
    return new Run(OptionalDouble.empty(), false);
  }

  /** As long as the rest, again: {@code run: as rest}. */
  public static Run likeRest() {
    return new Run(OptionalDouble.empty(), true);
  }

  /** Whether this is the pattern's one rest. */
  public boolean isRest() {
    return mm.isEmpty() && !asRest;
  }
}
