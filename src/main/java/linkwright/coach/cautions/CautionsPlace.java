package linkwright.coach.cautions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.content.Content;
import linkwright.coach.form.Form;
import linkwright.coach.form.SearchForm;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.keys.Act;

/** The cautions: all of them, one read whole at a time; at the bench and before any job. */
public final class CautionsPlace implements Place {
  @Override
  public Content content(Model model) {
    return CautionsContent.of(model, (CautionsHeld) model.held());
  }

  @Override
  public List<Act> allActs() {
    return List.of(
        Act.OPEN_CARD, Act.UP, Act.DOWN, Act.SEARCH, Act.TO_BENCH, Act.TO_TRAY, Act.MORE, Act.LESS);
  }

  @Override
  public List<Act> acts(Model model) {
    List<Act> acts = new ArrayList<>(List.of(Act.OPEN_CARD, Act.UP, Act.DOWN, Act.SEARCH));
    if (model.held() instanceof CautionsHeld screen && screen.open() && parts(model) > 1) {
      acts.add(0, Act.MORE);
      acts.add(Act.LESS);
    }
    acts.add(model.job().isPresent() ? Act.TO_BENCH : Act.TO_TRAY);
    return acts;
  }

  private static int parts(Model model) {
    return model.parts(CautionsContent.of(model, (CautionsHeld) model.held()));
  }

  @Override
  public Turn act(Model model, Act act) {
    CautionsHeld screen = (CautionsHeld) model.held();
    return switch (act) {
      case UP -> Turn.to(model.with(at(model, screen, -1)));
      case DOWN -> Turn.to(model.with(at(model, screen, 1)));
      case OPEN_CARD ->
          Turn.to(model.with(new CautionsHeld(screen.at(), !screen.open(), 0, screen.search())));
      case SEARCH ->
          Turn.to(
              model.with(
                  new CautionsHeld(
                      0, false, 0, screen.search(), Optional.of(SearchForm.of(screen.search())))));
      case MORE, LESS ->
          Turn.to(
              model.with(
                  new CautionsHeld(
                      screen.at(),
                      screen.open(),
                      Turning.to(screen.turned(), act),
                      screen.search())));
      case TO_TRAY -> Turn.goTo(model, PlaceId.TRAY);
      default -> Turn.goTo(model, act);
    };
  }

  @Override
  public Turn enter(Model model) {
    return Turn.to(model.with(new CautionsHeld(0, false, 0, "")));
  }

  @Override
  public Turn enterAt(Model model, String id) {
    List<String> ids = CautionWords.of(model).stream().map(line -> line.card().id()).toList();
    return Turn.to(model.with(new CautionsHeld(Math.max(0, ids.indexOf(id)), true, 0, "")));
  }

  @Override
  public Turn row(Model model, int row) {
    CautionsHeld screen = (CautionsHeld) model.held();
    return row == screen.at()
        ? act(model, Act.OPEN_CARD)
        : Turn.to(model.with(at(model, screen, row - screen.at())));
  }

  @Override
  public Turn edited(Model model, Form form, boolean textChanged) {
    Optional<Form> open = form.at() == 0 ? Optional.of(form) : Optional.empty();
    return Turn.to(model.with(new CautionsHeld(0, false, 0, SearchForm.text(form), open)));
  }

  @Override
  public Turn confirmed(Model model, Form form) {
    return Turn.to(model.with(new CautionsHeld(0, false, 0, SearchForm.text(form))));
  }

  @Override
  public Turn formLeft(Model model) {
    return enter(model);
  }

  private static CautionsHeld at(Model model, CautionsHeld screen, int by) {
    int last = Math.max(0, CautionWords.narrowed(model, screen.search()).size() - 1);
    int at = Math.max(0, Math.min(last, screen.at() + by));
    return new CautionsHeld(at, screen.open(), 0, screen.search());
  }
}
