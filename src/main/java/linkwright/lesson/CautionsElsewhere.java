package linkwright.lesson;

import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import linkwright.routine.Caution;
import linkwright.routine.Hazard;
import linkwright.routine.Routine;
import linkwright.routine.Step;

/**
 * The cautions that cannot apply at a step, so that what they warn of is wrong there. A card that
 * covers no kind of work may apply anywhere, and is none of them; nor is one of work that goes with
 * what is done here, or one that warns of the same as such a card of the step.
 */
final class CautionsElsewhere {
  /** Work of one kind brings the dangers of its kind along. */
  private static final List<Set<Hazard>> KINDS =
      List.of(
          EnumSet.of(
              Hazard.HEATS,
              Hazard.BURNS_GAS,
              Hazard.LIGHTS,
              Hazard.FLUX_FUMES,
              Hazard.QUENCHES,
              Hazard.DIPS,
              Hazard.MELTS,
              Hazard.POURS),
          EnumSet.of(Hazard.PICKLES, Hazard.CHEMICALS, Hazard.TUMBLES),
          EnumSet.of(Hazard.DRAWS, Hazard.ROLLS, Hazard.TWISTS, Hazard.PULLS),
          EnumSet.of(
              Hazard.CUTS, Hazard.FILES, Hazard.DUST, Hazard.HAMMERS, Hazard.SPINS, Hazard.DRILLS));

  /** So many words in common, and two cards may warn of the same. */
  private static final int SAME = 2;

  private final Step step;
  private final List<Caution> here;
  private final WordStems stems;

  CautionsElsewhere(Step step, List<Caution> here, WordStems stems) {
    this.step = step;
    this.here = List.copyOf(here);
    this.stems = stems;
  }

  /** Those of the cards that cannot apply; none where the step does not say what is done. */
  List<Caution> of(Collection<Caution> all) {
    return step.does().isEmpty() ? List.of() : all.stream().filter(this::isApart).toList();
  }

  /**
   * The cards that are apart from one, wherever it stands in a routine; where no step says what is
   * done there, those of no fire and of a kind of work of their own.
   */
  static List<Caution> apart(
      Caution card, Routine routine, Map<String, Caution> all, WordStems stems) {
    Optional<Step> stands =
        routine.steps().stream()
            .filter(step -> step.cautions().contains(card.id()) && !step.does().isEmpty())
            .findFirst();
    return stands
        .map(step -> new CautionsElsewhere(step, List.of(card), stems).of(all.values()))
        .orElseGet(
            () ->
                all.values().stream()
                    .filter(other -> !other.covers().isEmpty() && !other.equals(card))
                    .filter(other -> !isHot(other.covers()))
                    .toList());
  }

  private boolean isApart(Caution card) {
    return !card.covers().isEmpty()
        && KINDS.stream().noneMatch(kind -> meets(kind, card.covers()) && meets(kind, done()))
        && here.stream()
            .noneMatch(
                own -> own.equals(card) || (own.covers().isEmpty() && warnsAlike(own, card)));
  }

  /** Whether something is hot there, or burns. */
  static boolean isHot(Step step) {
    return isHot(step.does());
  }

  /** Whether any of this is work with heat. */
  static boolean isHot(Set<Hazard> work) {
    return meets(KINDS.get(0), work);
  }

  /** What is done here, by the step and by the cards that stand at it. */
  private Set<Hazard> done() {
    Set<Hazard> done = EnumSet.copyOf(step.does());
    here.forEach(card -> done.addAll(card.covers()));
    return done;
  }

  private static boolean meets(Set<Hazard> kind, Set<Hazard> some) {
    return some.stream().anyMatch(kind::contains);
  }

  private boolean warnsAlike(Caution one, Caution other) {
    return WordStems.shared(stems.of(one.canHappen()), stems.of(other.canHappen())) >= SAME;
  }
}
