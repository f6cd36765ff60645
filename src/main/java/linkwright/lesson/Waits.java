package linkwright.lesson;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import linkwright.lesson.PairItem.Half;
import linkwright.routine.Routine;
import linkwright.routine.Step;
import linkwright.routine.Wait;
import linkwright.routine.WaitEnds;

/** How long a wait usually is, and what tells that it is over: each kind once in a routine. */
final class Waits {
  private static final int TIMES = 4;
  private static final String FIRE_WATCH = "fire-watch";

  private Waits() {}

  static List<Item> of(Routine routine) {
    List<Item> items = new ArrayList<>();
    Set<WaitEnds> asked = new HashSet<>();
    for (Step step : routine.steps()) {
      for (Wait wait : step.waits()) {
        // A bath may be ended by the clock or by its shine: both answers would be right.
        if (wait.ends() != WaitEnds.TIME && asked.add(wait.ends())) {
          items.add(item(routine, step, wait));
        }
      }
    }
    return items;
  }

  private static Item item(Routine routine, Step step, Wait wait) {
    long minutes = Math.max(1, Math.round(wait.seconds() / 60.0));
    List<Half> times = new ArrayList<>(List.of(time(minutes), time(minutes * TIMES)));
    if (minutes >= TIMES) {
      times.add(time(minutes / TIMES));
    }
    return new PairItem(
        routine.id() + "/wait/" + step.id() + "/" + wait.id(),
        Topic.WAIT,
        step.id(),
        step.cautions().stream().filter(card -> isOf(wait, card)).findFirst().orElse(""),
        "“"
            + step.title()
            + "”, the wait “"
            + wait.name()
            + "”: how long is it usually, and what tells that it is over?",
        times,
        wait.ends() == WaitEnds.WATCH
            ? List.of(
                new Half("its time alone", "its time alone, with somebody there to the end"),
                new Half("a cold block", "a block that is cold to the back of the hand"))
            : List.of(
                new Half("a look at the metal", "a look at the metal; the clock only reminds"),
                new Half("the clock alone", "the clock alone; to look in before harms it")),
        "“"
            + wait.name()
            + "” is over when "
            + (wait.ends() == WaitEnds.WATCH
                ? "its whole time is over, with somebody there to the end."
                : "the metal shows it; the clock only reminds you to look."));
  }

  private static boolean isOf(Wait wait, String card) {
    return wait.ends() == WaitEnds.WATCH && card.equals(FIRE_WATCH);
  }

  private static Half time(long minutes) {
    String said = minutes + " min";
    return new Half(said, said + " or so");
  }
}
