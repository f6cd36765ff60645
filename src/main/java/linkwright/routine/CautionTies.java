package linkwright.routine;

import java.util.ArrayList;
import java.util.List;

/** Every step that can hurt someone is tied to a caution that speaks for it. */
final class CautionTies {
  private CautionTies() {}

  static List<Finding> everyHazardIsCovered(Routine routine, Known known) {
    List<Finding> findings = new ArrayList<>();
    for (Step step : routine.steps()) {
      for (Hazard hazard : step.does()) {
        List<String> covering = known.covering(hazard);
        if (step.cautions().stream().noneMatch(covering::contains)) {
          findings.add(
              Finding.at(
                  step,
                  "cautions",
                  "Step %s says that it does \"%s\", and none of its cautions covers that."
                      .formatted(step.id(), hazard.word()),
                  covering.isEmpty()
                      ? "Write a caution with \"covers: [%s]\" and name it here."
                          .formatted(hazard.word())
                      : "Name %s under cautions.".formatted(String.join(" or ", covering))));
        }
      }
    }
    return findings;
  }

  static List<Finding> everyCautionIsKnown(Routine routine, Known known) {
    List<Finding> findings = new ArrayList<>();
    for (Step step : routine.steps()) {
      for (String caution : step.cautions()) {
        if (!known.cautions().containsKey(caution)) {
          findings.add(
              Finding.at(
                  step,
                  "cautions",
                  "Step %s names the caution \"%s\", which nobody has written."
                      .formatted(step.id(), caution),
                  Known.nearest(caution, known.cautions().keySet())));
        }
      }
    }
    return findings;
  }
}
