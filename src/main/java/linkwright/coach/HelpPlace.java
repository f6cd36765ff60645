package linkwright.coach;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import linkwright.coach.content.Content;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Table;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.coach.kernel.turning.AskedOnce;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.coach.keys.KeyMap;

/** All keys of the place they were asked for at; it stands above the places, and so knows them. */
final class HelpPlace implements Place {
  private static final String CHAIN =
      "The chain across the top: a dot is a link not cut yet; the fuller its sign, or the higher"
          + " its number, the further it has come; a full sign is finished; a diamond or r is to be"
          + " done again.";

  @Override
  public Turn enter(Model model) {
    return Turn.to(model.with(new HelpHeld(model.held(), 0)));
  }

  @Override
  public List<Act> allActs() {
    return List.of(Act.MORE, Act.LESS);
  }

  @Override
  public List<Act> acts(Model model) {
    return List.of(Act.MORE, Act.LESS);
  }

  @Override
  public Turn act(Model model, Act act) {
    HelpHeld held = (HelpHeld) model.held();
    return Turn.to(model.with(new HelpHeld(held.from(), Turning.to(held.turned(), act))));
  }

  @Override
  public boolean takesEveryKey() {
    return true;
  }

  @Override
  public List<String> keyWords() {
    return List.of("v the next page", "other keys go back");
  }

  /** Any key that does not turn on goes back. */
  @Override
  public Turn typed(Model model, Key key) {
    return Turn.to(model.with(((HelpHeld) model.held()).from()));
  }

  @Override
  public Content content(Model model) {
    Model there = model.with(((HelpHeld) model.held()).from());
    List<Act> acts = new ArrayList<>(AskedOnce.acts(Places.of(there), there));
    if (!(there.held() instanceof HotWorkHeld)) {
      EverywhereActs.ALL.stream().filter(act -> !acts.contains(act)).forEach(acts::add);
    }
    List<Table.Line> lines = new ArrayList<>();
    for (Act act : acts) {
      keys(model, act, acts)
          .ifPresent(keys -> lines.add(Table.Line.of(keys, explained(there, act))));
    }
    boolean counts =
        acts.contains(Act.THROUGH) || acts.contains(Act.CUT_ONE) || acts.contains(Act.BEGIN_ONE);
    if (counts) {
      lines.add(1, Table.Line.of("digits", "how many, then its key"));
    }
    lines.add(Table.Line.of("ctrl-l", "draw the screen anew, where another program wrote over it"));
    List<Act> others =
        ActTable.of(there.held().place()).stream().filter(act -> !acts.contains(act)).toList();
    Prose chain = Prose.aside(model.job().isPresent() ? CHAIN : "");
    List<Table.Column> columns = List.of(Table.Column.words(""), Table.Column.words(""));
    Table open = new Table(columns, lines, -1);
    if (others.isEmpty()) {
      return Content.of("all keys", open, chain);
    }
    List<Table.Line> later = new ArrayList<>();
    for (Act act : others) {
      keys(model, act, others)
          .ifPresent(keys -> later.add(Table.Line.of(keys, explained(there, act))));
    }
    Prose head = new Prose(Prose.Kind.MAIN, "Not for now, but at this place:");
    return Content.of("all keys", open, head, new Table(columns, later, -1), chain);
  }

  private static String explained(Model there, Act act) {
    String says = Places.of(there).says(there, act);
    return JobWords.tradeWords(there).show(says + (says.contains(":") ? "; " : ": ") + act.help());
  }

  /** The keys that lead to this act and to no other before it; an act without one is no row. */
  private static Optional<String> keys(Model model, Act act, List<Act> acts) {
    KeyMap map = model.settings().keys();
    String real =
        map.keysOf(act).stream()
            .filter(name -> map.first(name, acts).filter(act::equals).isPresent())
            .collect(Collectors.joining(" or "));
    return Optional.of(real).filter(keys -> !keys.isEmpty());
  }
}
