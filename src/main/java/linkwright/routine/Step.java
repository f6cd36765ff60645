package linkwright.routine;

import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;

/**
 * One step of a routine.
 *
 * <p>The first kind in {@code stage} is the one that is counted; a count of one also takes forward
 * one piece of each other kind named there, as long as that kind has pieces waiting. So a step with
 * {@code {ring: joined, link: joined}} counts rings, and the last ring of n + 1 takes no link.
 *
 * @param id unique within the routine
 * @param title what is done, in a few words
 * @param part the part of the job it belongs to
 * @param stage kind of piece → the stage it reaches here, in the file's order; empty if none
 * @param counts how it is counted
 * @param does what it does that can hurt someone
 * @param rinses whether it ends with a rinse in clean water
 * @param doText what to do; texts hold placeholders, see {@link Wording}
 * @param lookFor how one sees that it is right; may be empty
 * @param why why it is done, or done so; may be empty
 * @param mind what to beware of; may be empty
 * @param usualSeconds usual time, per piece if counted each, else for the whole step
 * @param waits timers offered with it
 * @param measure what to measure and with what; empty if nothing
 * @param cautions ids of the cautions to be seen before it opens
 * @param wrong what may go wrong here
 * @param detail what it says besides
 */
public record Step(
    StepId id,
    String title,
    RoutinePart part,
    Map<PieceKind, Stage> stage,
    StepCounting counts,
    Set<Hazard> does,
    boolean rinses,
    String doText,
    String lookFor,
    String why,
    String mind,
    OptionalLong usualSeconds,
    List<Wait> waits,
    String measure,
    List<String> cautions,
    List<Remedy> wrong,
    StepDetail detail) {
  public Step {
    stage = Collections.unmodifiableMap(new LinkedHashMap<>(stage));
    EnumSet<Hazard> ordered = EnumSet.noneOf(Hazard.class);
    ordered.addAll(does);
    does = Collections.unmodifiableSet(ordered);
    waits = List.copyOf(waits);
    cautions = List.copyOf(cautions);
    wrong = List.copyOf(wrong);
  }

  /** The same with other waits. */
  public Step with(List<Wait> others) {
    return new Step(
        id,
        title,
        part,
        stage,
        counts,
        does,
        rinses,
        doText,
        lookFor,
        why,
        mind,
        usualSeconds,
        others,
        measure,
        cautions,
        wrong,
        detail);
  }
}
