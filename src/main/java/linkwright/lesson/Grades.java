package linkwright.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.lesson.PairItem.Half;
import linkwright.routine.Routine;
import linkwright.routine.Step;

/**
 * Which grade of solder a joint takes, and why: asked only where the joints before it and after it
 * decide that, and beside grades that they rule out.
 */
final class Grades {
  /** The hottest first. */
  private static final List<String> ORDER = List.of("hard", "medium", "easy");

  private static final Half AFTER =
      new Half(
          "the next one runs at less heat",
          "what comes next runs at less heat, so that this one stays shut");
  private static final Half BEFORE =
      new Half(
          "it runs before the earlier ones do",
          "it runs before the earlier ones do, so that none of them opens");
  private static final Half FLUX =
      new Half("it needs no flux", "it needs no flux, so that nothing is left for the pickle");

  private Grades() {}

  /** A joint in its turn. */
  private record Turn(Step step, String joint, int grade) {}

  static List<Item> of(Routine routine) {
    List<Turn> turns = new ArrayList<>();
    for (Step step : routine.steps()) {
      step.detail()
          .solder()
          .forEach(
              (joint, grade) -> {
                if (ORDER.contains(grade)) {
                  turns.add(new Turn(step, joint, ORDER.indexOf(grade)));
                }
              });
    }
    List<Item> items = new ArrayList<>();
    for (int i = 0; i < turns.size(); i++) {
      item(routine, turns, i).ifPresent(items::add);
    }
    return items;
  }

  private static Optional<Item> item(Routine routine, List<Turn> turns, int at) {
    Turn turn = turns.get(at);
    int coolestBefore =
        turns.subList(0, at).stream()
            .mapToInt(Turn::grade)
            .filter(g -> g < turn.grade())
            .max()
            .orElse(-1);
    int hottestAfter =
        turns.subList(at + 1, turns.size()).stream()
            .mapToInt(Turn::grade)
            .filter(g -> g > turn.grade())
            .min()
            .orElse(ORDER.size());
    boolean before = coolestBefore >= 0;
    boolean after = hottestAfter < ORDER.size();
    List<Half> grades = new ArrayList<>(List.of(grade(turn.grade())));
    for (int other = 0; other < ORDER.size(); other++) {
      // What would open a joint that is there, or be opened by the next, is ruled out.
      if (other <= coolestBefore || other >= hottestAfter) {
        grades.add(grade(other));
      }
    }
    if (!before && !after) {
      return Optional.empty();
    }
    List<Half> reasons =
        before && after
            ? List.of(BEFORE, FLUX)
            : before ? List.of(BEFORE, AFTER) : List.of(AFTER, BEFORE);
    return Optional.of(
        new PairItem(
            routine.id() + "/grade/" + turn.step().id() + "/" + turn.joint().replace(' ', '-'),
            Topic.GRADE,
            turn.step().id(),
            "",
            "“" + turn.step().title() + "”, " + turn.joint() + ": which solder, and why?",
            grades,
            reasons,
            "Hard runs at the most heat, then medium, then easy; joints are made in that order."));
  }

  private static Half grade(int grade) {
    String word = ORDER.get(grade);
    return new Half(capital(word), capital(word) + " solder");
  }

  private static String capital(String word) {
    return Character.toUpperCase(word.charAt(0)) + word.substring(1);
  }
}
