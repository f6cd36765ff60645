package linkwright.routine;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * A safety card, tied to the steps that name it.
 *
 * @param id the name by which steps ask for it
 * @param title what it is about
 * @param covers the hazards it speaks for; may be empty for a card about one particular thing
 * @param shortLine one line, shown after the first time in a sitting
 * @param canHappen what can happen
 * @param doList what to do
 * @param doNot what not to do
 * @param ifItGoesWrong what to do when it has gone wrong
 * @param wear protective gear and signs
 * @param source where the advice comes from, or that it is common practice
 * @param defers the sentence that puts local rules, the maker's sheet and licensed practice first
 * @param when the jobs it is meant for
 * @param questions what a student is asked of it: wrong answers are of the same danger
 * @param onlyAtItsSteps whether it is about work of the steps that name it, and of no other
 */
public record Caution(
    String id,
    String title,
    Set<Hazard> covers,
    String shortLine,
    String canHappen,
    List<String> doList,
    List<String> doNot,
    List<String> ifItGoesWrong,
    List<Gear> wear,
    String source,
    String defers,
    When when,
    List<StudyQuestion> questions,
    boolean onlyAtItsSteps) {
  public Caution {
    EnumSet<Hazard> ordered = EnumSet.noneOf(Hazard.class);
    ordered.addAll(covers);
    covers = Collections.unmodifiableSet(ordered);
    doList = List.copyOf(doList);
    doNot = List.copyOf(doNot);
    ifItGoesWrong = List.copyOf(ifItGoesWrong);
    wear = List.copyOf(wear);
    questions = List.copyOf(questions);
  }
}
