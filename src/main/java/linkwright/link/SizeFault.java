package linkwright.link;

import java.util.Optional;

/** Checks of sizes that a person gave; each names the size as the sentence's subject. */
final class SizeFault {
  /** A kilometre: beyond any bench, and small enough that nothing computed from it overflows. */
  private static final double MOST_MM = 1e6;

  private SizeFault() {}

  /** A sentence where a size is not above 0 or is beyond reason. */
  static Optional<String> faultUnlessPositive(String what, double mm) {
    if (!(mm > 0)) {
      return Optional.of(what + " is " + Sizes.mm(mm) + ": it must be more than 0 mm.");
    }
    return faultIfHuge(what, mm);
  }

  /** A sentence where a size is below 0 or is beyond reason. */
  static Optional<String> faultIfNegative(String what, double mm) {
    if (!(mm >= 0)) {
      return Optional.of(what + " is " + Sizes.mm(mm) + ": it is 0 mm or more.");
    }
    return faultIfHuge(what, mm);
  }

  private static Optional<String> faultIfHuge(String what, double mm) {
    return mm > MOST_MM
        ? Optional.of(what + " is more than a kilometre: look at the unit.")
        : Optional.empty();
  }

  /** The first fault, if there is any. */
  @SafeVarargs
  static Optional<String> first(Optional<String>... faults) {
    for (Optional<String> fault : faults) {
      if (fault.isPresent()) {
        return fault;
      }
    }
    return Optional.empty();
  }
}
