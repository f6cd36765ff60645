package linkwright.cutting;

/** Counts in a plan that tests look at. */
final class PlanCounts {
  private PlanCounts() {}

  /** From how many lengths something is cut. */
  static int opened(CutPlan plan) {
    return (int) plan.cuts().stream().filter(LengthCut::opened).count();
  }

  /** How many coils the rings are wound in. */
  static int coils(CutPlan plan) {
    return (int) plan.cuts().stream().filter(cut -> cut.rings() > 0).count();
  }

  /** Repeats for which some piece is lacking. */
  static int lacking(CutPlan plan) {
    int most =
        plan.order().rings().map(rings -> up(plan.shortRings(), rings.perRepeat())).orElse(0);
    for (int k = 0; k < plan.order().blanks().size(); k++) {
      most =
          Math.max(most, up(plan.shortBlanks().get(k), plan.order().blanks().get(k).perRepeat()));
    }
    return most;
  }

  private static int up(int missing, int perRepeat) {
    return (missing + perRepeat - 1) / perRepeat;
  }
}
