package linkwright.routine;

import java.util.List;

/** One thing that must hold in every routine. */
@FunctionalInterface
interface Check {
  /** All places where it does not hold, in the order of the file; empty if it holds. */
  List<Finding> of(Routine routine, Known known);
}
