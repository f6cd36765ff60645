package linkwright.plan;

import java.util.List;
import java.util.Optional;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Metal;
import linkwright.reference.Reference;
import linkwright.reference.Solder;

/** Whether a solder flows clearly before the metal itself begins to melt. */
public final class SolderHeat {
  /** So much cooler a solder should flow, K. Common practice, no source. */
  public static final double CLEAR_K = 20;

  private SolderHeat() {}

  /**
   * What to mind of the graded solders that the metal's family has, a sentence each; none of a
   * metal whose own warnings speak of its solder.
   */
  public static List<String> of(Metal metal, Reference reference, UnitStyle units) {
    return metal.warnings().stream().anyMatch(says -> says.contains("solder"))
        ? List.of()
        : reference.soldersFor(metal.family()).stream()
            .filter(solder -> !solder.grade().isEmpty())
            .flatMap(solder -> of(metal, solder, units).stream())
            .toList();
  }

  /** Whether the metal begins to melt before the solder flows. */
  static boolean tooHot(Metal metal, Solder solder) {
    return solder.liquidusC() >= metal.meltC().from();
  }

  /** What to mind of that solder on that metal; empty where it flows clearly cooler. */
  public static Optional<String> of(Metal metal, Solder solder, UnitStyle units) {
    double begins = metal.meltC().from();
    if (solder.liquidusC() <= begins - CLEAR_K) {
      return Optional.empty();
    }
    String flows =
        solder.name()
            + " flows at "
            + units.temperature(solder.liquidusC())
            + " and this metal begins to melt at "
            + units.temperature(begins);
    return Optional.of(
        tooHot(metal, solder)
            ? flows + ": it is not for this metal. Take one that flows well below, by its sheet."
            : flows + ", hardly hotter: take it only where the maker's sheet says so.");
  }
}
