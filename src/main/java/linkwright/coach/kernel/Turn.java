package linkwright.coach.kernel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.keys.Act;
import linkwright.job.Fact;

/**
 * What an update answers: the next model, the effects to perform in order, and where to go. If
 * something is to be written, the model is taken over only once it is on the disk.
 *
 * @param model the next model
 * @param effects what the shell is to do
 * @param next the place to go to; empty to stay
 */
public record Turn(Model model, List<Effect> effects, Optional<PlaceId> next) {
  public Turn {
    effects = List.copyOf(effects);
  }

  /** The next model and nothing else. */
  public static Turn to(Model model) {
    return new Turn(model, List.of(), Optional.empty());
  }

  /** The next model and effects. */
  public static Turn with(Model model, Effect... effects) {
    return new Turn(model, List.of(effects), Optional.empty());
  }

  /** Goes to another place. */
  public static Turn goTo(Model model, PlaceId place) {
    return new Turn(model, List.of(), Optional.of(place));
  }

  /** Goes where an act leads; stays where it leads nowhere. */
  public static Turn goTo(Model model, Act act) {
    return new Turn(model, List.of(), PlaceId.ledToBy(act));
  }

  /** Facts are only asked to be kept here; the model takes them in when they are on the disk. */
  public static Turn keep(Model model, Fact... facts) {
    return keep(model, List.of(facts));
  }

  /** The same for several; nothing is asked for none. */
  public static Turn keep(Model model, List<Fact> facts) {
    if (facts.isEmpty()) {
      return to(model);
    }
    if (model.job().isEmpty()) {
      return to(model.trouble("No book is open."));
    }
    return with(model, new Effect.KeepFacts(facts));
  }

  /** A fact is asked to be kept in the book of that job, whether it is at hand or not. */
  public static Turn keepIn(Model model, String slug, Fact fact) {
    return model.job().filter(open -> open.slug().equals(slug)).isPresent()
        ? keep(model, fact)
        : with(model, new Effect.KeepElsewhere(slug, List.of(fact)));
  }

  /** Says that nothing can be entered. */
  public static Turn onlyLooking(Model model) {
    return to(
        model.trouble(
            "This book is open to look at only: another program writes it. Close that one and"
                + " open the job again."));
  }

  /** This, come to after that turn, whose effects come first. */
  public Turn after(Turn first) {
    return new Turn(model, first.and(effects).effects(), first.next());
  }

  /** The same with more to do. */
  public Turn and(Effect... more) {
    return and(List.of(more));
  }

  /** The same with more to do. */
  public Turn and(List<Effect> more) {
    List<Effect> all = new ArrayList<>(effects);
    all.addAll(more);
    return new Turn(model, all, next);
  }

  /** The same, going to another place then. */
  public Turn thenGoTo(PlaceId place) {
    return new Turn(model, effects, Optional.of(place));
  }
}
