package linkwright.cli.walk;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import linkwright.coach.content.Table;
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.coach.keys.Act;
import linkwright.quantity.Count;
import linkwright.reckon.Reckoner;
import linkwright.reckon.Sum;
import linkwright.routine.TradeWords;

/** Chooses the line of a list that is named by its number. */
final class WalkChoice {
  private final WalkLines lines;
  private final WalkCoach coach;

  WalkChoice(WalkLines lines, WalkCoach coach) {
    this.lines = lines;
    this.coach = coach;
  }

  void chosenAt(Act place, Act act, String rest) {
    if (coach.place().act() != place || rest.isEmpty()) {
      coach.go(place);
    }
    chosen(act, rest);
  }

  /** An act on the line of a list with that number; without one, on the line that is chosen. */
  void chosen(Act act, String rest) {
    if (!rest.isEmpty()) {
      Optional<Integer> number = Count.inDigits(rest, 3);
      if (number.isEmpty()) {
        lines.say("“" + rest + "” is not the number of one. Nothing was entered.");
        return;
      }
      int wanted = number.get() - 1;
      for (int at = at(); at != wanted; at = at()) {
        coach.choose(at < wanted ? Act.DOWN : Act.UP);
        if (at() == at) {
          lines.say("There is no number " + rest + ". Nothing was entered.");
          return;
        }
      }
    }
    coach.choose(act);
  }

  private int at() {
    return new WalkPage(coach.model()).table().map(Table::chosen).orElse(0);
  }

  /** Opens the sum of that name; false when there is none, which is told. */
  boolean sum(String name) {
    TradeWords words = JobWords.tradeWords(coach.model());
    List<String> ids = Reckoner.sums().stream().map(Sum::id).toList();
    String called = name.toLowerCase(Locale.ROOT);
    int own = ids.indexOf(called);
    ids = ids.stream().map(words::show).toList();
    int at = own < 0 ? ids.indexOf(called) : own;
    if (at < 0) {
      lines.say("“" + name + "” is no sum. There are: " + String.join(", ", ids) + ".");
      return false;
    }
    chosen(Act.CHOOSE, Integer.toString(at + 1));
    return true;
  }
}
