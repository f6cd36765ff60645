package linkwright.coach;

import java.util.Optional;
import linkwright.coach.content.Beside;
import linkwright.coach.content.Table;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.turning.AskedOnce;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;

/** Home and end lead to the first and the last line of any list that arrows go through. */
final class ListEnds {
  private ListEnds() {}

  /** What the key leads to; empty for another key, and where no list is. */
  static Optional<Turn> reached(Model model, Place place, Key key) {
    boolean first = key.is(Key.Kind.HOME);
    if ((!first && !key.is(Key.Kind.END)) || !AskedOnce.acts(place, model).contains(Act.UP)) {
      return Optional.empty();
    }
    return Beside.flat(place.content(model).parts())
        .filter(Table.class::isInstance)
        .map(Table.class::cast)
        .filter(table -> table.chosen() >= 0)
        .findFirst()
        .map(table -> to(model, place, table.chosen(), first ? 0 : table.all() - 1));
  }

  private static Turn to(Model model, Place place, int chosen, int wanted) {
    return chosen == wanted ? Turn.to(model) : place.row(model, wanted);
  }
}
