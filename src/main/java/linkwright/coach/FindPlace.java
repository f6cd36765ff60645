package linkwright.coach;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.content.Content;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Table;
import linkwright.coach.form.LineEdit;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Turn;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.text.Narrowing;

/**
 * Everything by its name: places, acts, jobs, steps, cautions, metals, sums, words of the trade,
 * fewer with each letter typed. It stands above the places, and so knows them.
 */
final class FindPlace implements Place {
  private static final int AROUND = 60;
  private static final int PAGE = 10;

  /** No name has it: it explains, as in a form. */
  private static final String HELP = "?";

  @Override
  public Turn enter(Model model) {
    return Turn.to(model.with(new FindHeld(model.held(), LineEdit.empty(), 0)));
  }

  @Override
  public List<Act> allActs() {
    return List.of();
  }

  @Override
  public List<Act> acts(Model model) {
    return List.of();
  }

  @Override
  public Turn act(Model model, Act act) {
    return Turn.to(model);
  }

  @Override
  public boolean takesEveryKey() {
    return true;
  }

  @Override
  public List<String> keyWords() {
    return List.of("enter go there", "up down another", "esc back", HELP + " what is it");
  }

  @Override
  public Turn typed(Model model, Key key) {
    FindHeld held = (FindHeld) model.held();
    if (key.equals(Key.of(HELP))) {
      return Turn.to(
          model.told(
              "Type any part of the name of a place, act, job, step, caution, metal, sum or word;"
                  + " enter goes there, ctrl-u empties it."));
    }
    return switch (key.kind()) {
      case ESCAPE -> Turn.to(model.with(held.from()));
      case ENTER -> go(model, held, held.at());
      case UP -> Turn.to(model.with(at(model, held, held.at() - 1)));
      case DOWN -> Turn.to(model.with(at(model, held, held.at() + 1)));
      case PAGE_UP -> Turn.to(model.with(at(model, held, held.at() - PAGE)));
      case PAGE_DOWN -> Turn.to(model.with(at(model, held, held.at() + PAGE)));
      default -> Turn.to(model.with(new FindHeld(held.from(), held.line().key(key), 0)));
    };
  }

  @Override
  public Turn row(Model model, int row) {
    FindHeld held = (FindHeld) model.held();
    return row == held.at() ? go(model, held, row) : Turn.to(model.with(at(model, held, row)));
  }

  private static FindHeld at(Model model, FindHeld held, int wanted) {
    int last = Math.max(0, found(model, held).size() - 1);
    return new FindHeld(held.from(), held.line(), Math.max(0, Math.min(last, wanted)));
  }

  private static List<Findable> found(Model model, FindHeld held) {
    return Narrowing.of(held.line().text(), Findable.all(model), Findable::names);
  }

  private static Turn go(Model model, FindHeld held, int row) {
    List<Findable> found = found(model, held);
    if (row >= found.size()) {
      return Turn.to(model.told("Nothing is called that; take some letters away."));
    }
    Findable one = found.get(row);
    Model back = model.with(held.from());
    if (one.kind().equals("act")) {
      return Turn.goTo(back.told(one.name() + ": " + one.id() + "."), one.place());
    }
    if (one.place() == PlaceId.TRAY && !one.id().isEmpty()) {
      return job(back, one.id());
    }
    return one.id().isEmpty()
        ? Turn.goTo(back, one.place())
        : Places.of(one.place()).enterAt(back, one.id());
  }

  private static Turn job(Model model, String slug) {
    boolean open = model.job().map(job -> job.slug().equals(slug)).orElse(false);
    if (open) {
      return Turn.goTo(model, PlaceId.ROUND);
    }
    List<Effect> effects = new ArrayList<>();
    if (model.job().isPresent()) {
      effects.add(new Effect.ShutBook());
    }
    effects.add(new Effect.OpenBook(slug));
    Held tray = Places.of(PlaceId.TRAY).enter(model.withJob(Optional.empty())).model().held();
    return new Turn(model.withJob(Optional.empty()).with(tray), effects, Optional.empty());
  }

  @Override
  public Content content(Model model) {
    FindHeld held = (FindHeld) model.held();
    List<Findable> found = found(model, held);
    String typed = held.line().text();
    // No head: what is said aloud at a new head would be each letter that is typed.
    Prose head =
        new Prose(
            Prose.Kind.MAIN,
            "Find: " + (typed.isEmpty() ? "type any part of a name" : typed + "_"));
    if (found.isEmpty()) {
      return Content.of("find", head, Prose.says("Nothing is called that."));
    }
    int at = Math.min(held.at(), found.size() - 1);
    int from = Math.max(0, at - AROUND);
    int to = Math.min(found.size(), at + AROUND);
    List<Table.Line> lines =
        found.subList(from, to).stream()
            .map(each -> Table.Line.of(each.kind(), each.name(), each.apart(model, found)))
            .toList();
    List<Table.Column> columns =
        List.of(Table.Column.words(""), Table.Column.words(""), Table.Column.words(""));
    return Content.of("find", head, new Table(columns, lines, at, from, found.size()));
  }
}
