package linkwright.routine;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Which joint of a routine takes which grade of solder, in the order of the work.
 *
 * @param joints the joints, in order
 */
public record SolderMap(List<SolderedAt> joints) {
  /**
   * One joint.
   *
   * @param step the step's number, from 1
   * @param kinds kinds of piece that are in the flame there
   * @param joint the joint
   * @param grade its grade
   */
  public record SolderedAt(int step, Set<PieceKind> kinds, String joint, String grade) {
    public SolderedAt {
      kinds = Set.copyOf(kinds);
    }
  }

  public SolderMap {
    joints = List.copyOf(joints);
  }

  /**
   * The map of a routine; without joints where its steps name none. What a trial solders as the run
   * does later is told there.
   */
  public static SolderMap of(Routine routine) {
    List<SolderedAt> joints = new ArrayList<>();
    int number = 0;
    for (Step step : routine.steps()) {
      number++;
      Set<PieceKind> kinds = inTheFlame(step, routine);
      for (Map.Entry<String, String> each : step.detail().solder().entrySet()) {
        if (!comesAgain(each, step, routine)) {
          joints.add(new SolderedAt(number, kinds, each.getKey(), each.getValue()));
        }
      }
    }
    return new SolderMap(joints);
  }

  private static boolean comesAgain(Map.Entry<String, String> joint, Step at, Routine routine) {
    return tries(at)
        && routine.steps().stream()
            .filter(step -> !tries(step))
            .anyMatch(step -> step.detail().solder().entrySet().contains(joint));
  }

  private static boolean tries(Step step) {
    return step.part() == RoutinePart.TRIAL || step.part() == RoutinePart.SAMPLE;
  }

  /**
   * Where no piece is named all of the work is in the flame, save at a test piece: it lies apart.
   */
  private static Set<PieceKind> inTheFlame(Step step, Routine routine) {
    boolean apart = step.part() == RoutinePart.TRIAL;
    return step.stage().isEmpty() && !apart ? routine.pieces().keySet() : step.stage().keySet();
  }

  /** All of it in one sentence; empty without joints. */
  public String says() {
    return joints.isEmpty()
        ? ""
        : "Solder, in order: "
            + joints.stream()
                .map(at -> at.joint() + " " + at.grade() + " (step " + at.step() + ")")
                .collect(Collectors.joining("; "))
            + ".";
  }

  /** Where a later joint takes a harder solder than an earlier one of the same piece. */
  public List<String> harderLater() {
    List<String> told = new ArrayList<>();
    for (SolderedAt later : joints) {
      joints.stream()
          .filter(earlier -> earlier.step() < later.step())
          .filter(earlier -> !Collections.disjoint(earlier.kinds(), later.kinds()))
          .filter(earlier -> rank(earlier.grade()) > rank(later.grade()))
          .reduce((first, second) -> second)
          .ifPresent(
              earlier ->
                  told.add(
                      ("Step %d solders %s with %s solder after step %d soldered %s with %s: its"
                              + " heat can open that joint. Shield it, or take an easier grade.")
                          .formatted(
                              later.step(),
                              later.joint(),
                              later.grade(),
                              earlier.step(),
                              earlier.joint(),
                              earlier.grade())));
    }
    return told;
  }

  private static int rank(String grade) {
    return DetailChecks.GRADES.indexOf(grade);
  }
}
