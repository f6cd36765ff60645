package linkwright.coach.lookup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.content.Content;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Table;
import linkwright.coach.form.Form;
import linkwright.coach.form.SearchForm;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.keys.Act;
import linkwright.text.Narrowing;

/** Metals, solders, clasps, patterns and words of the trade, looked up; with a job or without. */
public final class LookUpPlace implements Place {
  private static final String TITLE = "look it up";

  @Override
  public Turn enter(Model model) {
    return Turn.to(model.with(LookUpHeld.ALL));
  }

  @Override
  public Turn enterAt(Model model, String id) {
    if (id.isEmpty()) {
      return enter(model);
    }
    List<String> ids = LookUpItem.all(model).stream().map(LookUpItem::id).toList();
    int at = Math.max(0, ids.indexOf(id));
    return Turn.to(model.with(new LookUpHeld(at, "", true, 0, Optional.empty())));
  }

  @Override
  public List<Act> allActs() {
    return List.of(Act.OPEN_CARD, Act.UP, Act.DOWN, Act.SEARCH, Act.TO_TRAY, Act.MORE, Act.LESS);
  }

  @Override
  public List<Act> acts(Model model) {
    List<Act> acts = new ArrayList<>(List.of(Act.OPEN_CARD, Act.UP, Act.DOWN, Act.SEARCH));
    if (model.job().isEmpty()) {
      acts.add(Act.TO_TRAY);
    }
    return Turning.with(acts, model, this);
  }

  private static LookUpHeld held(Model model) {
    return (LookUpHeld) model.held();
  }

  private static List<LookUpItem> found(Model model, String search) {
    return Narrowing.of(search, LookUpItem.all(model), LookUpPlace::names);
  }

  private static List<String> names(LookUpItem item) {
    List<String> names = new ArrayList<>(List.of(item.name(), item.id(), item.kind()));
    names.addAll(item.words());
    return names;
  }

  @Override
  public Turn act(Model model, Act act) {
    LookUpHeld held = held(model);
    return switch (act) {
      case UP -> Turn.to(model.with(at(model, held.at() - 1)));
      case DOWN -> Turn.to(model.with(at(model, held.at() + 1)));
      case OPEN_CARD ->
          Turn.to(
              model.with(new LookUpHeld(held.at(), held.search(), !held.open(), 0, held.form())));
      case SEARCH ->
          Turn.to(
              model.with(
                  new LookUpHeld(
                      0, held.search(), false, 0, Optional.of(SearchForm.of(held.search())))));
      case MORE, LESS ->
          Turn.to(
              model.with(
                  new LookUpHeld(
                      held.at(),
                      held.search(),
                      held.open(),
                      Turning.to(held.turned(), act),
                      held.form())));
      default -> Turn.goTo(model, act);
    };
  }

  private static LookUpHeld at(Model model, int wanted) {
    LookUpHeld held = held(model);
    int last = Math.max(0, found(model, held.search()).size() - 1);
    int at = Math.max(0, Math.min(last, wanted));
    return new LookUpHeld(at, held.search(), held.open(), 0, Optional.empty());
  }

  @Override
  public Turn row(Model model, int row) {
    return row == held(model).at()
        ? act(model, Act.OPEN_CARD)
        : Turn.to(model.with(at(model, row)));
  }

  @Override
  public Turn edited(Model model, Form form, boolean textChanged) {
    Optional<Form> open = form.at() == 0 ? Optional.of(form) : Optional.empty();
    return Turn.to(model.with(new LookUpHeld(0, SearchForm.text(form), false, 0, open)));
  }

  @Override
  public Turn confirmed(Model model, Form form) {
    return Turn.to(
        model.with(new LookUpHeld(0, SearchForm.text(form), false, 0, Optional.empty())));
  }

  @Override
  public Turn formLeft(Model model) {
    return Turn.to(model.with(LookUpHeld.ALL));
  }

  @Override
  public Content content(Model model) {
    LookUpHeld held = held(model);
    List<LookUpItem> found = found(model, held.search());
    List<Part> parts = new ArrayList<>();
    held.form().ifPresent(form -> parts.add(new Fields(form)));
    if (found.isEmpty()) {
      parts.add(Prose.says("Nothing here is called that."));
      return new Content(TITLE, parts);
    }
    int at = Math.min(held.at(), found.size() - 1);
    if (held.open()) {
      LookUpItem item = found.get(at);
      parts.add(new Prose(Prose.Kind.HEAD, item.name() + " (" + item.kind() + ")"));
      parts.addAll(item.says());
      return new Content(TITLE, parts);
    }
    List<Table.Column> columns = List.of(Table.Column.words(""), Table.Column.words(""));
    List<String> here = GlossaryContent.ofStep(model);
    List<Table.Line> lines = found.stream().map(each -> line(each, here)).toList();
    parts.add(new Table(columns, lines, at));
    return new Content(TITLE, parts);
  }

  /** The words of the open step are told as that. */
  private static Table.Line line(LookUpItem item, List<String> here) {
    boolean stands = item.kind().equals("word") && here.contains(item.id());
    return Table.Line.of(item.kind() + (stands ? " of this step" : ""), item.name())
        .with(stands ? Emphasis.NOW : Emphasis.PLAIN);
  }
}
