package linkwright.routine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import linkwright.reference.Family;

/** A routine holds together for every job, whichever of its steps are left out there. */
final class WhenChecks {
  private static final List<String> FAMILIES =
      Arrays.stream(Family.values()).map(Family::word).toList();

  private WhenChecks() {}

  static List<Finding> everyStageIsReachedInEveryJob(Routine routine, Known known) {
    return routine.steps().stream()
        .filter(step -> !step.stage().isEmpty())
        .filter(step -> !step.detail().when().equals(When.ALWAYS))
        .map(
            step ->
                Finding.at(
                    step,
                    "when",
                    "Step %s takes pieces to a stage, and in some jobs it is left out."
                        .formatted(step.id()),
                    "Leave when out, or leave stage and counts out: pieces would wait for it."))
        .toList();
  }

  static List<Finding> whatIsLeftOutIsNotMissed(Routine routine, Known known) {
    Set<Finding> findings = new LinkedHashSet<>();
    List<Finding> whole = bare(routine, known);
    Set<When> conditions = new HashSet<>();
    routine.steps().forEach(step -> conditions.add(step.detail().when()));
    conditions.remove(When.ALWAYS);
    for (When left : conditions) {
      findings.addAll(bare(routine.with(step -> !step.detail().when().equals(left)), known));
    }
    findings.addAll(bare(routine.with(step -> step.detail().when().equals(When.ALWAYS)), known));
    whole.forEach(findings::remove);
    return findings.stream()
        .map(
            found ->
                new Finding(
                    found.step(),
                    found.key(),
                    found.wrong() + " (In jobs where a step with a when is left out.)",
                    found.expected()))
        .toList();
  }

  private static List<Finding> bare(Routine routine, Known known) {
    List<Finding> findings =
        new ArrayList<>(HeatAndPickle.pickleAndRinseFollowEveryHeating(routine, known));
    findings.addAll(DetailChecks.aLoopLeadsBack(routine, known));
    return findings;
  }

  static List<Finding> everyConditionCanHold(Routine routine, Known known) {
    List<Finding> findings = new ArrayList<>();
    for (Step step : routine.steps()) {
      unknown(step.detail().when())
          .ifPresent(
              family ->
                  findings.add(
                      Finding.at(
                          step,
                          "when",
                          "Step %s is meant for a family \"%s\", which no metal has."
                              .formatted(step.id(), family),
                          Known.nearest(family, FAMILIES))));
    }
    return findings;
  }

  private static Optional<String> unknown(When when) {
    Predicate<String> known = FAMILIES::contains;
    return when.words().getOrDefault("family", List.of()).stream()
        .filter(known.negate())
        .findFirst();
  }
}
