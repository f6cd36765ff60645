package linkwright.coach.round;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.content.Content;
import linkwright.coach.kernel.DraftWords;
import linkwright.coach.kernel.Drafting;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.Turning;
import linkwright.coach.kernel.TypedBefore;
import linkwright.coach.keys.Act;

/** The way round a job: every place with its key; the bench is where enter leads. */
public final class RoundPlace implements Place {
  @Override
  public Content content(Model model) {
    return RoundContent.of(model);
  }

  /** The places in the order of the work. */
  static final List<Act> PLACES =
      List.of(
          Act.TO_PLAN,
          Act.TO_NEAREST,
          Act.TO_TESTS,
          Act.TO_TRIAL,
          Act.TO_BENCH,
          Act.TO_PILES,
          Act.TO_WIRE,
          Act.TO_WEIGH_IN,
          Act.TO_CARD,
          Act.TO_BOOK,
          Act.TO_EXCHANGE,
          Act.TO_CAUTIONS,
          Act.TO_TIMERS,
          Act.TO_RECKONER,
          Act.TO_LOOKUP,
          Act.TO_REHEARSAL,
          Act.TO_LESSON,
          Act.TO_TRAY);

  @Override
  public Turn enter(Model model) {
    return Turn.to(model.with(new RoundHeld(0)));
  }

  @Override
  public List<Act> acts(Model model) {
    return Turning.with(places(model), model, content(model));
  }

  /** What is open here, but for turning on. */
  public static List<Act> places(Model model) {
    List<Act> acts = new ArrayList<>(PLACES);
    acts.add(Act.TO_SETTINGS);
    boolean closed = model.job().orElseThrow().state().course().closed();
    acts.add(closed ? Act.MAKE_AGAIN : Act.TO_WHAT_IF);
    acts.add(Act.TO_REACH);
    if (TypedBefore.any(model)) {
      acts.add(Act.KEEP_FOR_ALL);
    }
    if (Drafting.first(model).isPresent()) {
      acts.add(Act.THROW_AWAY);
    }
    acts.add(Act.LEAVE);
    return acts;
  }

  @Override
  public String says(Model model, Act act) {
    return act == Act.THROW_AWAY
        ? "throw away " + Drafting.first(model).map(DraftWords::of).orElse("nothing")
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
