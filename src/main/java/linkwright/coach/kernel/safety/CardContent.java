package linkwright.coach.kernel.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.routine.Caution;
import linkwright.routine.Gear;

/** A caution whole: what can happen, do, do not, if it goes wrong, what to wear, whose rule. */
public final class CardContent {
  private CardContent() {}

  /**
   * The parts of a card.
   *
   * @param before what the card stands before, or where it is in a list; empty for nothing
   */
  public static List<Part> of(Model model, Caution card, String before) {
    List<Part> parts = new ArrayList<>();
    String where = before.isBlank() ? "" : "  " + before;
    parts.add(new Prose(Prose.Kind.CAUTION_TITLE, card.title() + where));
    add(parts, model, Prose.Kind.SAYS, List.of(card.canHappen()));
    add(parts, model, Prose.Kind.DO, card.doList());
    add(parts, model, Prose.Kind.DO_NOT, card.doNot());
    add(parts, model, Prose.Kind.IF_SO, card.ifItGoesWrong());
    add(parts, model, Prose.Kind.WEAR, List.of(gear(card, CardContent::isWorn)));
    add(parts, model, Prose.Kind.SIGNS, List.of(gear(card, each -> !isWorn(each))));
    add(parts, model, Prose.Kind.SOURCE, List.of(card.source()));
    add(parts, model, Prose.Kind.MAIN, List.of(card.defers()));
    return parts;
  }

  private static void add(List<Part> parts, Model model, Prose.Kind kind, List<String> items) {
    items.forEach(item -> parts.add(new Prose(kind, JobWords.fill(item, model))));
  }

  /** Must be done and yet is not put on: wash hands, secure cylinders (ISO 7010). */
  private static final Set<String> DONE_NOT_WORN = Set.of("M011", "M046");

  /** Signs of what must be done are worn; of danger, of what is forbidden or at hand, are not. */
  private static boolean isWorn(Gear gear) {
    return gear.sign().startsWith("M") && !DONE_NOT_WORN.contains(gear.sign());
  }

  private static String gear(Caution card, Predicate<Gear> which) {
    List<Gear> gear = card.wear().stream().filter(which).toList();
    if (gear.isEmpty()) {
      return "";
    }
    String signs = gear.stream().map(Gear::sign).collect(Collectors.joining(", "));
    return gear.stream().map(Gear::says).collect(Collectors.joining(", "))
        + (gear.size() == 1 ? " (sign " : " (signs ")
        + signs
        + ")";
  }
}
