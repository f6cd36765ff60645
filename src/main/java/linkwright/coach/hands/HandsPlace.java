package linkwright.coach.hands;

import java.util.List;
import linkwright.coach.content.Content;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.keys.Act;
import linkwright.hands.Hands;
import linkwright.hands.TaughtJob;

/**
 * What the books taught of the hands; each book can be left out, and counts again by the same key.
 */
public final class HandsPlace implements Place {
  @Override
  public Turn enter(Model model) {
    return Turn.to(model.with(new HandsHeld(0, 0)));
  }

  @Override
  public Content content(Model model) {
    return new Content("hands", new HandsContent(model).parts(at(model)));
  }

  private static int at(Model model) {
    int last = Math.max(0, model.handbook().hands().jobs().size() - 1);
    return Math.min(((HandsHeld) model.held()).at(), last);
  }

  @Override
  public List<Act> allActs() {
    return List.of(
        Act.LEAVE_OUT, Act.UP, Act.DOWN, Act.TO_EXCHANGE, Act.TO_TRAY, Act.MORE, Act.LESS);
  }

  @Override
  public List<Act> acts(Model model) {
    return Turning.with(
        List.of(Act.LEAVE_OUT, Act.UP, Act.DOWN, Act.TO_EXCHANGE, Act.TO_TRAY), model, this);
  }

  @Override
  public String says(Model model, Act act) {
    boolean out =
        !model.handbook().hands().jobs().isEmpty()
            && model.handbook().hands().leftOut().contains(chosen(model).slug());
    return act == Act.LEAVE_OUT && out ? "count it again" : act.words();
  }

  private static TaughtJob chosen(Model model) {
    List<TaughtJob> jobs = model.handbook().hands().jobs();
    return jobs.get(jobs.size() - 1 - at(model));
  }

  @Override
  public Turn act(Model model, Act act) {
    HandsHeld held = (HandsHeld) model.held();
    return switch (act) {
      case UP -> Turn.to(model.with(new HandsHeld(Math.max(0, at(model) - 1), held.turned())));
      case DOWN -> Turn.to(model.with(new HandsHeld(at(model) + 1, held.turned())));
      case MORE, LESS ->
          Turn.to(model.with(new HandsHeld(held.at(), Turning.to(held.turned(), act))));
      case LEAVE_OUT -> leaveOut(model);
      default -> Turn.goTo(model, act);
    };
  }

  private static Turn leaveOut(Model model) {
    Hands hands = model.handbook().hands();
    if (hands.jobs().isEmpty()) {
      return Turn.to(model.told("No book has taught anything yet."));
    }
    TaughtJob job = chosen(model);
    boolean out = !hands.leftOut().contains(job.slug());
    return Turn.with(
        model.told(job.name() + (out ? " is left out." : " counts again.")),
        new Effect.LeaveOut(job.slug(), out));
  }

  @Override
  public Turn row(Model model, int row) {
    return Turn.to(model.with(new HandsHeld(Math.max(0, row), 0)));
  }
}
