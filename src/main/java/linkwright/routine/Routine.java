package linkwright.routine;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The ordered steps for one kind of chain, clasp or wire.
 *
 * @param id the name by which jobs and commands ask for it
 * @param title what it makes, in a few words
 * @param says one sentence on what comes out and for whom
 * @param makes what comes out
 * @param plan how it is planned: what to enter, and why; may be empty
 * @param patterns ids of the link patterns it suits; may be empty
 * @param ends how the chain is counted
 * @param usualLoss share of pieces lost for good, 0 to 1
 * @param usualRedo share of joints done again, 0 to 1
 * @param pieces kind of piece → its stages in the order in which it goes through them
 * @param steps the steps in order
 * @param detail what it says besides
 */
public record Routine(
    String id,
    String title,
    String says,
    Makes makes,
    String plan,
    List<String> patterns,
    ChainEnds ends,
    double usualLoss,
    double usualRedo,
    Map<PieceKind, List<Stage>> pieces,
    List<Step> steps,
    RoutineDetail detail) {
  public Routine {
    patterns = List.copyOf(patterns);
    Map<PieceKind, List<Stage>> ordered = new LinkedHashMap<>();
    pieces.forEach((kind, stages) -> ordered.put(kind, List.copyOf(stages)));
    pieces = Collections.unmodifiableMap(ordered);
    steps = List.copyOf(steps);
  }

  /** The same routine with those of its steps only. */
  public Routine with(Predicate<Step> walked) {
    return steps.stream().allMatch(walked) ? this : with(steps.stream().filter(walked).toList());
  }

  /** The same routine with other steps. */
  public Routine with(List<Step> others) {
    return new Routine(
        id, title, says, makes, plan, patterns, ends, usualLoss, usualRedo, pieces, others, detail);
  }

  /** The stages of a kind of piece, in order; empty for a kind that this routine does not make. */
  public List<Stage> stagesOf(PieceKind kind) {
    return pieces.getOrDefault(kind, List.of());
  }

  /** The step with that id, or that had it before. */
  public Optional<Step> step(StepId stepId) {
    return steps.stream()
        .filter(step -> step.id().equals(stepId))
        .findFirst()
        .or(
            () ->
                steps.stream()
                    .filter(step -> step.detail().formerIds().contains(stepId))
                    .findFirst());
  }

  /** Whether joints of its pieces take solder; not where they are fused, or closed and no more. */
  public boolean takesSolder() {
    boolean named =
        steps.stream()
            .anyMatch(
                step ->
                    !step.detail().solder().isEmpty()
                        || step.stage().containsValue(Stage.SOLDERED));
    boolean fused = pieces.values().stream().anyMatch(stages -> stages.contains(Stage.FUSED));
    return named
        || (!fused
            && steps.stream()
                .anyMatch(
                    step ->
                        step.stage().containsValue(Stage.JOINED)
                            && step.does().contains(Hazard.HEATS)));
  }

  /** Whether a text of a step has a placeholder whose name begins so. */
  public boolean speaksOf(String placeholder) {
    return steps.stream()
        .flatMap(TextChecks::of)
        .anyMatch(text -> text.contains("{" + placeholder));
  }
}
