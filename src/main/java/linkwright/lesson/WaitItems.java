package linkwright.lesson;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import linkwright.lesson.PairItem.Half;
import linkwright.routine.Routine;
import linkwright.routine.Step;
import linkwright.routine.Wait;
import linkwright.routine.WaitEnds;

/** How long a wait usually is, and what tells that it is over: each kind once in a routine. */
final class WaitItems {
  private static final int TIMES = 4;
  private static final String FIRE_WATCH = "fire-watch";

  private WaitItems() {}

  static List<Item> of(Routine routine) {
    List<Item> items = new ArrayList<>();
    Set<WaitEnds> asked = new HashSet<>();
    for (Step step : routine.steps()) {
      for (Wait wait : step.waits()) {
        // A bath may be ended by the clock or by its shine: both answers would be right.
        if (wait.ends() != WaitEnds.TIME && asked.add(wait.ends())) {
          item(routine, step, wait).ifPresent(items::add);
        }
      }
    }
    return items;
  }

  private static Optional<Item> item(Routine routine, Step step, Wait wait) {
    long minutes = Math.max(1, Math.round(wait.seconds() / 60.0));
    return switch (wait.ends()) {
      case TIME -> Optional.empty();
      case LOOK -> Optional.of(look(routine, step, wait, minutes));
      case WATCH -> Optional.of(watch(routine, step, wait, minutes));
    };
  }

  private static Item look(Routine routine, Step step, Wait wait, long minutes) {
    List<Half> times = new ArrayList<>(List.of(time(minutes), time(minutes * TIMES)));
    if (minutes >= TIMES) {
      times.add(time(minutes / TIMES));
    }
    return pair(
        routine,
        step,
        wait,
        "how long is it usually, and what tells that it is over?",
        times,
        List.of(
            new Half("a look at the metal", "a look at the metal; the clock only reminds"),
            new Half("the clock alone", "the clock alone; to look in before harms it")),
        "the metal shows it; the clock only reminds you to look.");
  }

  /**
   * A watch is never too long, nor ended by its clock alone: no answer is wrong that is safer. It
   * runs from the last flame.
   */
  private static Item watch(Routine routine, Step step, Wait wait, long minutes) {
    return pair(
        routine,
        step,
        wait,
        "from when does it run, and what has to be so before anybody goes?",
        List.of(from(minutes, "last"), from(minutes, "first")),
        List.of(
            new Half(
                "block and floor are cold", "block and floor are cold to the back of the hand"),
            new Half("nothing more than that", "nothing more than that, as its clock has run out")),
        minutes
            + " min at least since the last flame are over, and block and floor are cold to the back"
            + " of the hand.");
  }

  private static Item pair(
      Routine routine,
      Step step,
      Wait wait,
      String asks,
      List<Half> first,
      List<Half> second,
      String overWhen) {
    return new PairItem(
        routine.id() + "/wait/" + step.id() + "/" + wait.id(),
        Topic.WAIT,
        step.id(),
        step.cautions().stream().filter(card -> isOf(wait, card)).findFirst().orElse(""),
        "“" + step.title() + "”, the wait “" + wait.name() + "”: " + asks,
        first,
        second,
        "“" + wait.name() + "” is over when " + overWhen);
  }

  private static boolean isOf(Wait wait, String card) {
    return wait.ends() == WaitEnds.WATCH && card.equals(FIRE_WATCH);
  }

  private static Half from(long minutes, String flame) {
    return new Half(
        minutes + " min from the " + flame + " flame",
        minutes + " min or more from the " + flame + " flame");
  }

  private static Half time(long minutes) {
    String said = minutes + " min";
    return new Half(said, said + " or so");
  }
}
