package linkwright.coach.lookup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.drawn.StepWords;
import linkwright.routine.Step;

/** The words of a step, told one after the other. */
public final class LookedUp {
  private LookedUp() {}

  /** The words of a step, a sentence each; how to ask for another. */
  public static List<Part> of(Optional<Step> step, Model model) {
    List<Part> parts =
        new ArrayList<>(step.map(open -> StepWords.told(open, model)).orElse(List.of()));
    parts.add(Prose.aside("words and a name tells more: words sterling, words easy-silver."));
    return parts;
  }
}
