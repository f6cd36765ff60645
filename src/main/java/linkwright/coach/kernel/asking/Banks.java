package linkwright.coach.kernel.asking;

import java.util.List;
import linkwright.coach.kernel.Model;
import linkwright.lesson.Item;
import linkwright.lesson.QuestionBank;

/** What can be asked of routines, made once each while the program runs. */
public final class Banks {
  private Banks() {}

  /** The same model with the questions of a routine at hand. */
  public static Model ready(Model model, String routine) {
    return model.learning().banks().containsKey(routine)
        ? model
        : model
            .handbook()
            .routine(routine)
            .map(
                found ->
                    QuestionBank.of(
                        found, model.handbook().cautions(), model.handbook().reference()))
            .map(bank -> model.with(model.learning().with(routine, bank)))
            .orElse(model);
  }

  /** The questions of a routine that are at hand. */
  public static List<Item> of(Model model, String routine) {
    return model.learning().banks().getOrDefault(routine, List.of());
  }
}
