package linkwright.routine;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Pickle and rinse follow every heating, and come before any hammering and before joints are
 * judged.
 *
 * <p>Kinds of piece are followed one by one until a step joins them; from there on they are one
 * chain, and a flame that reaches one reaches the others. A step that moves no piece (a test piece,
 * the wire) concerns all kinds. Within one step the order is heat, pickle, rinse, hammer.
 */
final class HeatAndPickle {
  private enum Surface {
    CLEAN,
    HEATED,
    PICKLED
  }

  private static final Map<Surface, String> MISSING =
      new EnumMap<>(
          Map.of(
              Surface.CLEAN, "nothing",
              Surface.HEATED, "a step that pickles (does: [pickles]) and rinses (rinse: yes)",
              Surface.PICKLED, "a rinse (rinse: yes)"));

  private HeatAndPickle() {}

  static List<Finding> pickleAndRinseFollowEveryHeating(Routine routine, Known known) {
    List<Finding> findings = new ArrayList<>();
    Map<PieceKind, Surface> surfaces = new LinkedHashMap<>();
    Map<PieceKind, Step> heatedAt = new LinkedHashMap<>();
    Collection<PieceKind> all =
        routine.pieces().isEmpty() ? List.of(new PieceKind("work")) : routine.pieces().keySet();
    all.forEach(kind -> surfaces.put(kind, Surface.CLEAN));
    boolean oneChain = false;
    for (Step step : routine.steps()) {
      oneChain = oneChain || step.stage().containsValue(Stage.JOINED);
      Collection<PieceKind> kinds =
          oneChain || step.stage().isEmpty() ? all : step.stage().keySet();
      for (PieceKind kind : kinds) {
        Surface before = surfaces.getOrDefault(kind, Surface.CLEAN);
        if (before == Surface.CLEAN || step.does().contains(Hazard.HEATS)) {
          heatedAt.put(kind, step);
        }
        surfaces.put(kind, after(step, before));
      }
      judge(step, kinds, surfaces, findings);
    }
    surfaces.forEach(
        (kind, surface) -> {
          if (surface != Surface.CLEAN) {
            findings.add(neverCleaned(heatedAt.get(kind), kind, surface));
          }
        });
    return findings;
  }

  private static Surface after(Step step, Surface before) {
    Surface surface = step.does().contains(Hazard.HEATS) ? Surface.HEATED : before;
    surface = step.does().contains(Hazard.PICKLES) ? Surface.PICKLED : surface;
    return step.rinses() && surface == Surface.PICKLED ? Surface.CLEAN : surface;
  }

  private static void judge(
      Step step,
      Collection<PieceKind> kinds,
      Map<PieceKind, Surface> surfaces,
      List<Finding> findings) {
    boolean hammers = step.does().contains(Hazard.HAMMERS);
    boolean checks =
        step.stage().containsValue(Stage.CHECKED) || step.stage().containsValue(Stage.TESTED);
    if (!hammers && !checks) {
      return;
    }
    for (PieceKind kind : kinds) {
      Surface surface = surfaces.getOrDefault(kind, Surface.CLEAN);
      if (surface != Surface.CLEAN) {
        findings.add(
            Finding.at(
                step,
                "step",
                "Step %s %s the %s while it still carries what the last heating left."
                    .formatted(step.id(), hammers ? "hammers" : "judges the joint of", kind),
                "Put " + MISSING.get(surface) + " before it."));
        return;
      }
    }
  }

  private static Finding neverCleaned(Step step, PieceKind kind, Surface surface) {
    return Finding.at(
        step,
        "step",
        "After step %s the %s is not cleaned to the end of the routine.".formatted(step.id(), kind),
        "Put " + MISSING.get(surface) + " after it.");
  }
}
