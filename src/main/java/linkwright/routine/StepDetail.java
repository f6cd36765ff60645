package linkwright.routine;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a step may say besides; an older file says nothing of it.
 *
 * @param formerIds names that it had before: a job that was begun under one goes on here
 * @param when the jobs it is meant for
 * @param solder joint, as the pattern names it → grade of solder
 * @param loop where it leads back to while something is not reached
 * @param needs another kind of piece → the stage it has to have reached before work begins here
 * @param tools what is to be laid out for it
 * @param pictures names of drawings that show it
 * @param questions what a student can be asked of it
 */
public record StepDetail(
    List<StepId> formerIds,
    When when,
    Map<String, String> solder,
    Optional<Loop> loop,
    Map<PieceKind, Stage> needs,
    List<String> tools,
    List<String> pictures,
    List<StudyQuestion> questions) {
  /** Nothing of all that. */
  public static final StepDetail NONE =
      new StepDetail(
          List.of(),
          When.ALWAYS,
          Map.of(),
          Optional.empty(),
          Map.of(),
          List.of(),
          List.of(),
          List.of());

  public StepDetail {
    formerIds = List.copyOf(formerIds);
    solder = Collections.unmodifiableMap(new LinkedHashMap<>(solder));
    needs = Collections.unmodifiableMap(new LinkedHashMap<>(needs));
    tools = List.copyOf(tools);
    pictures = List.copyOf(pictures);
    questions = List.copyOf(questions);
  }
}
