package linkwright.coach.round;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.content.Content;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.TypedBefore;
import linkwright.coach.kernel.drafting.DraftWords;
import linkwright.coach.kernel.drafting.Drafting;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.keys.Act;

/** The way round a job: every place with its key; the bench is where enter leads. */
public final class RoundPlace implements Place {
  @Override
  public Content content(Model model) {
    return RoundContent.of(model);
  }

  @Override
  public Turn enter(Model model) {
    return Turn.to(model.with(new RoundHeld(0)));
  }

  @Override
  public List<Act> allActs() {
    List<Act> acts = lines();
    // Looking something up is open everywhere.
    acts.remove(Act.TO_LOOKUP);
    acts.addAll(
        List.of(
            Act.MAKE_AGAIN,
            Act.TO_WHAT_IF,
            Act.TO_REACH,
            Act.KEEP_FOR_ALL,
            Act.THROW_AWAY,
            Act.MORE,
            Act.LESS));
    return acts;
  }

  @Override
  public List<Act> acts(Model model) {
    return Turning.with(places(model), model, this);
  }

  /** What is open here, but for turning on. */
  public static List<Act> places(Model model) {
    List<Act> acts = lines();
    acts.add(Act.TO_SETTINGS);
    boolean closed = model.job().orElseThrow().state().course().closed();
    acts.add(closed ? Act.MAKE_AGAIN : Act.TO_WHAT_IF);
    if (!closed) {
      acts.add(Act.TO_REACH);
    }
    if (TypedBefore.any(model)) {
      acts.add(Act.KEEP_FOR_ALL);
    }
    if (Drafting.first(model).isPresent()) {
      acts.add(Act.THROW_AWAY);
    }
    acts.add(Act.LEAVE);
    return acts;
  }

  private static List<Act> lines() {
    List<Act> acts = new ArrayList<>();
    RoundLines.ALL.forEach(line -> acts.add(line.act()));
    return acts;
  }

  @Override
  public String says(Model model, Act act) {
    return act == Act.THROW_AWAY
        ? "throw away " + Drafting.first(model).map(DraftWords::of).orElse("what is typed")
        : act.words();
  }

  @Override
  public Turn act(Model model, Act act) {
    return switch (act) {
      case KEEP_FOR_ALL -> TypedBefore.keep(model);
      case THROW_AWAY ->
          Drafting.first(model)
              .map(form -> Drafting.thrownAway(model, form))
              .orElseGet(() -> Turn.to(model));
      case MORE, LESS -> Turn.to(model.with(new RoundHeld(Turning.to(model.held().turned(), act))));
      case LEAVE -> Turn.with(model, new Effect.ShutBook(), new Effect.Leave());
      default -> Turn.goTo(model, act);
    };
  }
}
