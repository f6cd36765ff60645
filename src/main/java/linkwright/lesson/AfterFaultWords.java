package linkwright.lesson;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import linkwright.routine.AfterFault;
import linkwright.routine.Remedy;
import linkwright.routine.Step;

/**
 * Redo, scrap or go on, worded so that no length gives the right one away: each time a seed decides
 * which of them is said at length.
 */
final class AfterFaultWords {
  private static final List<AfterFault> ALL = List.of(AfterFault.values());
  private static final Map<AfterFault, List<String>> WORDS = new EnumMap<>(AfterFault.class);

  static {
    WORDS.put(
        AfterFault.REDO,
        List.of(
            "Redo.", "Redo: it goes back a stage.", "Redo: it goes back, and is done once more."));
    WORDS.put(
        AfterFault.SCRAP,
        List.of(
            "Scrap.",
            "Scrap: into the scrap tin.",
            "Scrap: it is gone for good, and one more is made."));
    WORDS.put(
        AfterFault.CARRY_ON,
        List.of("Go on.", "Go on: it is put right.", "Go on: put right on the spot, it stays."));
  }

  /** Words of a remedy by which a piece is lost. */
  private static final Pattern LOST =
      Pattern.compile("(?i)\\b(scrap|new|another|fresh blank|cut (it|them) out|spare)\\b");

  /** Words of a remedy by which work is done once more. */
  private static final Pattern AGAIN =
      Pattern.compile("(?i)\\b(again|once more|longer|anneal|solder|undo|cut|back)\\b");

  /** Words of a remedy that leaves it to what is found. */
  private static final Pattern DEPENDS = Pattern.compile("(?i)\\b(else|if|or)\\b");

  private AfterFaultWords() {}

  /**
   * Whether the remedy decides it: a piece that is counted, and goes back or is lost. What is put
   * right by the way, or is no piece yet, is work that could be called by either name.
   */
  static boolean isPlain(Step step, Remedy fault) {
    if (DEPENDS.matcher(fault.remedy()).find()) {
      return false;
    }
    boolean again = AGAIN.matcher(fault.remedy()).find();
    return !step.stage().isEmpty()
        && switch (fault.then()) {
          case REDO -> !LOST.matcher(fault.remedy()).find();
          case SCRAP -> LOST.matcher(fault.remedy()).find();
          case CARRY_ON -> !again && !LOST.matcher(fault.remedy()).find();
        };
  }

  static Asked draw(Item.FateItem item, Chance chance) {
    List<Integer> lengths = chance.shuffled(List.of(0, 1, 2));
    List<AfterFault> order = chance.shuffled(ALL);
    List<String> answers =
        order.stream().map(then -> WORDS.get(then).get(lengths.get(ALL.indexOf(then)))).toList();
    return new Asked(item.asks(), answers, order.indexOf(item.then()), item.after());
  }
}
