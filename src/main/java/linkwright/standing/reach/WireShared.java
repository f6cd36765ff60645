package linkwright.standing.reach;

import java.util.List;
import java.util.Optional;
import linkwright.drawer.Drawer;

/**
 * Wire that a job lacks and other open jobs lack too, where the drawer does not hold enough for all
 * of them.
 *
 * @param own what this job lacks
 * @param others how many other jobs lack the same wire, 1 or more
 * @param othersMm what they lack together, mm
 * @param thereMm what the drawer holds of it, mm
 */
public record WireShared(WireWanted own, int others, double othersMm, double thereMm) {
  /** Thicknesses that differ by less are one wire, mm: as lots are told apart. */
  private static final double SAME_MM = 0.01;

  /** Empty where no other job lacks such wire, or the drawer does for all. */
  public static Optional<WireShared> of(
      Optional<WireWanted> own, List<WireWanted> others, Drawer drawer) {
    return own.flatMap(
        wire -> {
          List<WireWanted> same = others.stream().filter(other -> isSame(wire, other)).toList();
          double there =
              drawer.lots().stream()
                  .filter(lot -> lot.is(wire.metal(), wire.wireMm()))
                  .mapToDouble(lot -> Math.max(0, lot.lengthMm().orElse(0)))
                  .sum();
          double lacks = same.stream().mapToDouble(WireWanted::lacksMm).sum();
          return same.isEmpty() || wire.lacksMm() + lacks <= there
              ? Optional.empty()
              : Optional.of(new WireShared(wire, same.size(), lacks, there));
        });
  }

  private static boolean isSame(WireWanted one, WireWanted other) {
    return one.metal().equals(other.metal()) && Math.abs(one.wireMm() - other.wireMm()) < SAME_MM;
  }
}
