package linkwright.lesson;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import linkwright.routine.Caution;
import linkwright.routine.Step;

/**
 * Of which cards it is asked at a step what can happen there: its own, but what a flame brings only
 * from the first one on. Such cards stand early to be read early; nothing smoulders while wire is
 * cut.
 *
 * @param sequence the steps of a routine
 * @param cautions all cards by their ids
 */
record CardsAsked(List<Step> sequence, Map<String, Caution> cautions) {
  private static final Pattern FIRE =
      Pattern.compile("(?i)\\b(sparks?|flames?|fire|charcoal|fuel|gas)\\b");

  /** The cards of that step. */
  List<Caution> at(Step step) {
    List<Caution> here = cards(step);
    List<Step> cold = sequence.stream().takeWhile(each -> !CautionsElsewhere.isHot(each)).toList();
    if (cold.contains(step)) {
      return here.stream().filter(card -> !isOfFire(card)).toList();
    }
    if (cold.size() < sequence.size() && sequence.get(cold.size()).equals(step)) {
      Stream<Caution> told =
          cold.stream()
              .filter(each -> !each.does().isEmpty())
              .flatMap(each -> cards(each).stream())
              .filter(CardsAsked::isOfFire);
      return Stream.concat(here.stream(), told).distinct().toList();
    }
    return here;
  }

  private List<Caution> cards(Step step) {
    return step.cautions().stream()
        .flatMap(id -> Optional.ofNullable(cautions.get(id)).stream())
        .toList();
  }

  private static boolean isOfFire(Caution card) {
    return CautionsElsewhere.isHot(card.covers())
        || (card.covers().isEmpty() && FIRE.matcher(card.title() + " " + card.canHappen()).find());
  }
}
