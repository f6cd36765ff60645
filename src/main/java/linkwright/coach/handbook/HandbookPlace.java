package linkwright.coach.handbook;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.content.Content;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Turn;
import linkwright.coach.keys.Act;

/** The handbook: words of the trade, metals, solders, clasps, the law; from every place. */
public final class HandbookPlace implements Place {
  @Override
  public Content content(Model model) {
    return HandbookContent.of(model, (HandbookHeld) model.held());
  }

  @Override
  public List<Act> acts(Model model) {
    List<Act> acts = new ArrayList<>(List.of(Act.UP, Act.DOWN));
    if (model.parts(content(model)) > 1) {
      acts.add(Act.MORE);
    }
    acts.add(model.job().isPresent() ? Act.TO_BENCH : Act.TO_TRAY);
    return acts;
  }

  @Override
  public Turn act(Model model, Act act) {
    HandbookHeld held = (HandbookHeld) model.held();
    return switch (act) {
      case UP -> Turn.to(model.with(at(model, held, -1)));
      case DOWN -> Turn.to(model.with(at(model, held, 1)));
      case MORE -> Turn.to(model.with(new HandbookHeld(held.at(), held.turned() + 1)));
      case TO_TRAY -> Turn.goTo(model, PlaceId.TRAY);
      default -> Turn.goTo(model, act);
    };
  }

  @Override
  public Turn enter(Model model) {
    return Turn.to(model.with(new HandbookHeld(0, 0)));
  }

  private static HandbookHeld at(Model model, HandbookHeld held, int by) {
    int last = Math.max(0, HandbookContent.entries(model).size() - 1);
    return new HandbookHeld(Math.max(0, Math.min(last, held.at() + by)), 0);
  }
}
