package linkwright.coach;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.content.Content;
import linkwright.coach.content.Table;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Turn;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;

/** All keys of the place they were asked for at; it stands above the places, and so knows them. */
final class HelpPlace implements Place {
  @Override
  public Turn enter(Model model) {
    return Turn.to(model.with(new HelpHeld(model.held(), 0)));
  }

  @Override
  public List<Act> acts(Model model) {
    return List.of(Act.MORE);
  }

  @Override
  public Turn act(Model model, Act act) {
    HelpHeld held = (HelpHeld) model.held();
    return Turn.to(model.with(new HelpHeld(held.from(), held.turned() + 1)));
  }

  @Override
  public boolean takesEveryKey() {
    return true;
  }

  /** Any key that does not turn on goes back. */
  @Override
  public Turn typed(Model model, Key key) {
    return Turn.to(model.with(((HelpHeld) model.held()).from()));
  }

  @Override
  public Content content(Model model) {
    Model there = model.with(((HelpHeld) model.held()).from());
    List<Act> acts = new ArrayList<>(Places.of(there).acts(there));
    EverywhereActs.ALL.stream().filter(act -> !acts.contains(act)).forEach(acts::add);
    List<Table.Line> lines = new ArrayList<>();
    for (Act act : acts) {
      lines.add(Table.Line.of(keys(model, act), Places.of(there).says(there, act)));
    }
    boolean counts =
        acts.contains(Act.THROUGH) || acts.contains(Act.CUT_ONE) || acts.contains(Act.BEGIN_ONE);
    if (counts) {
      lines.add(1, Table.Line.of("digits", "how many, then its key"));
    }
    List<Table.Column> columns = List.of(Table.Column.words(""), Table.Column.words(""));
    return Content.of("all keys", new Table(columns, lines, -1));
  }

  private static String keys(Model model, Act act) {
    return String.join(" or ", model.settings().keys().keysOf(act));
  }
}
