package linkwright.coach.cautions;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.safety.Cards;
import linkwright.routine.Caution;
import linkwright.routine.Routine;
import linkwright.routine.Step;
import linkwright.text.Narrowing;

/** The cautions in the order in which they are listed, and what each has to do with the job. */
public final class CautionWords {
  /** A longer list of steps would only be skipped. */
  private static final int SHOWN = 3;

  /**
   * One caution as it is listed.
   *
   * @param card the caution
   * @param steps numbers of the routine's steps that it belongs to, from 1; empty without a job
   * @param now whether it belongs to the step that is open
   * @param seen whether she has met it, so that it does not come whole again
   * @param applies whether it has to do with this job
   */
  public record Line(
      Caution card, List<Integer> steps, boolean now, boolean seen, boolean applies) {
    public Line {
      steps = List.copyOf(steps);
    }

    /** Whether it was seen and where it belongs, in a few words. */
    public String stands() {
      if (!applies) {
        return "not for this job";
      }
      String when = seen ? "seen" : steps.isEmpty() ? "" : "not seen";
      return when + (when.isEmpty() || steps.isEmpty() ? "" : ", ") + where();
    }

    private String where() {
      if (steps.isEmpty()) {
        return "";
      }
      String few =
          String.join(
              ", ", steps.stream().limit(SHOWN).map(number -> Integer.toString(number)).toList());
      int more = steps.size() - SHOWN;
      return (steps.size() == 1 ? "step " : "steps ")
          + few
          + (more > 0 ? " and " + more + " more" : "");
    }
  }

  private CautionWords() {}

  /** The cautions that hold what is typed, the best first; all if nothing is. */
  static List<Line> narrowed(Model model, String search) {
    return Narrowing.of(
        search,
        of(model),
        line -> List.of(line.card().title(), line.card().id(), line.card().shortLine()));
  }

  /** All cautions: those of the open step first, then those of the routine, then the rest. */
  public static List<Line> of(Model model) {
    Optional<AtBench> at = AtBench.of(model);
    Map<String, Cards.Card> cards = new HashMap<>();
    model
        .job()
        .ifPresent(
            job ->
                Cards.of(model, job, model.handbook().cautions())
                    .forEach(card -> cards.put(card.caution().id(), card)));
    List<Line> lines = new ArrayList<>();
    for (Caution card : model.handbook().cautions()) {
      List<Integer> steps = at.map(open -> steps(open.routine(), card)).orElse(List.of());
      boolean applies = model.job().isEmpty() || cards.containsKey(card.id());
      boolean now = applies && at.map(open -> steps.contains(open.number())).orElse(false);
      boolean seen = cards.containsKey(card.id()) && !cards.get(card.id()).whole();
      lines.add(new Line(card, steps, now, seen, applies));
    }
    lines.sort(
        Comparator.comparing((Line line) -> !line.now())
            .thenComparing(line -> !line.applies())
            .thenComparing(line -> line.steps().isEmpty())
            .thenComparing(line -> line.card().title(), String.CASE_INSENSITIVE_ORDER));
    return List.copyOf(lines);
  }

  private static List<Integer> steps(Routine routine, Caution card) {
    List<Integer> numbers = new ArrayList<>();
    for (int i = 0; i < routine.steps().size(); i++) {
      Step step = routine.steps().get(i);
      if (step.cautions().contains(card.id())) {
        numbers.add(i + 1);
      }
    }
    return numbers;
  }
}
