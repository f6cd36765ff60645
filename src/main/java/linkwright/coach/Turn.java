package linkwright.coach;

import java.util.ArrayList;
import java.util.List;
import linkwright.job.Fact;

/**
 * What an update answers: the next model and the effects to perform, in order.
 *
 * @param model the next model
 * @param effects what the shell is to do
 */
public record Turn(Model model, List<Effect> effects) {
  public Turn {
    effects = List.copyOf(effects);
  }

  static Turn to(Model model) {
    return new Turn(model, List.of());
  }

  static Turn with(Model model, Effect... effects) {
    return new Turn(model, List.of(effects));
  }

  /** Facts are only asked to be kept here; the model takes them in when they are on the disk. */
  static Turn keep(Model model, Fact... facts) {
    return keep(model, List.of(facts));
  }

  static Turn keep(Model model, List<Fact> facts) {
    if (facts.isEmpty()) {
      return to(model);
    }
    if (model.job().isEmpty()) {
      return to(model.trouble("No book is open."));
    }
    return with(model, new Effect.KeepFacts(facts));
  }

  static Turn onlyLooking(Model model) {
    return to(
        model.trouble(
            "This book is open to look at only: another program writes it. Close that one and"
                + " open the job again."));
  }

  Turn and(Effect... more) {
    List<Effect> all = new ArrayList<>(effects);
    all.addAll(List.of(more));
    return new Turn(model, all);
  }
}
