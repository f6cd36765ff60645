package linkwright.job;

import java.util.Map;
import java.util.OptionalDouble;
import linkwright.quantity.Length;

/** Whether a ring was wished after a trial length that hung with another. */
final class RingSince {
  private static final String INSIDE = "ring.inside";
  private static final String WIRE = "ring.wire";
  private static final String OVAL = "ring.oval-inside";
  private static final double ALIKE_MM = 0.0005;

  private RingSince() {}

  /**
   * Whether the chain is made with another ring than the trial's.
   *
   * @param hung the trial length that is followed
   * @param then the wish when it was chosen
   * @param now the wish as it stands
   */
  static boolean is(Fact.TrialMeasured hung, Map<String, String> then, Map<String, String> now) {
    OptionalDouble inside = mm(now, INSIDE);
    boolean asThen =
        alike(mm(then, INSIDE), inside)
            && alike(mm(then, OVAL), mm(now, OVAL))
            && text(then, WIRE).equals(text(now, WIRE));
    boolean asHung =
        alike(OptionalDouble.of(hung.ringInsideMm()), inside)
            && alike(hung.ovalInsideMm(), mm(now, OVAL));
    return hung.rings() > 0 && inside.isPresent() && !asThen && !asHung;
  }

  private static boolean alike(OptionalDouble one, OptionalDouble other) {
    return one.isPresent() == other.isPresent()
        && Math.abs(one.orElse(0) - other.orElse(0)) < ALIKE_MM;
  }

  private static OptionalDouble mm(Map<String, String> wish, String key) {
    return Length.readSize(text(wish, key))
        .map(length -> OptionalDouble.of(length.mm()))
        .orElse(OptionalDouble.empty());
  }

  private static String text(Map<String, String> wish, String key) {
    return wish.getOrDefault(key, "").strip();
  }
}
