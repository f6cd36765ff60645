package linkwright.files;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import linkwright.quantity.Nearest;
import linkwright.routine.Routine;

/**
 * What losses, redos and waits of a bench can be of.
 *
 * @param stages stages of any routine, and {@code all}
 * @param waits waits of any routine, by id and by name
 */
record StagesAndWaits(Set<String> stages, Set<String> waits) {
  static StagesAndWaits of(Collection<Routine> routines) {
    Set<String> stages = new LinkedHashSet<>(List.of("all"));
    Set<String> waits = new LinkedHashSet<>();
    for (Routine routine : routines) {
      routine.pieces().values().forEach(each -> each.forEach(stage -> stages.add(stage.id())));
      routine.steps().stream()
          .flatMap(step -> step.waits().stream())
          .forEach(wait -> waits.addAll(List.of(wait.id().word(), wait.name())));
    }
    return new StagesAndWaits(stages, waits);
  }

  /** What is wrong with a name; empty for one that is known. */
  Optional<String> wrong(BenchName named) {
    boolean wait = named.group().equals(BenchFile.WAITS);
    Set<String> known = wait ? waits : stages;
    // Waits are found whatever their letters, stages as they are written.
    boolean there =
        known.stream()
            .anyMatch(
                each -> wait ? each.equalsIgnoreCase(named.name()) : each.equals(named.name()));
    return there
        ? Optional.empty()
        : Optional.of(
            "No routine has a "
                + (wait ? "wait" : "stage")
                + " “"
                + named.name()
                + "”. "
                + Nearest.of(named.name(), known)
                    .map(near -> "Did you mean “" + near + "”?")
                    .orElseGet(() -> "Known: " + String.join(", ", new ArrayList<>(known)) + "."));
  }
}
