package linkwright.coach.kernel.safety;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Effect.KeepFacts;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Turn;
import linkwright.job.CautionMet;
import linkwright.job.CautionsMet;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.HotWorkState;
import linkwright.routine.Caution;
import linkwright.routine.Hazard;
import linkwright.routine.Step;
import linkwright.routine.StepId;
import linkwright.standing.CardTraits;

/**
 * The cautions of one step for one job and one person: which apply, which of them come whole, and
 * what of that stands in the book afterwards.
 *
 * @param step the step's id
 * @param person whom they are shown to; empty where nobody said who it is
 * @param all those that apply: what is worst of what the step does before the rest, then in the
 *     step's order; before her first heat also those of earlier steps that are new to her
 */
public record Cards(StepId step, String person, List<Card> all) {
  /** What burns, blinds or poisons at once before what harms slowly. */
  private static final List<Hazard> WORST =
      List.of(
          Hazard.LIGHTS,
          Hazard.BURNS_GAS,
          Hazard.POURS,
          Hazard.MELTS,
          Hazard.CHEMICALS,
          Hazard.PICKLES,
          Hazard.QUENCHES,
          Hazard.SPINS,
          Hazard.DRILLS,
          Hazard.ROLLS,
          Hazard.DRAWS,
          Hazard.FLUX_FUMES);

  /** What is done with a flame, a kiln or a hotplate. */
  private static final Set<Hazard> HOT =
      EnumSet.of(Hazard.LIGHTS, Hazard.BURNS_GAS, Hazard.HEATS, Hazard.FLUX_FUMES);

  public Cards {
    all = List.copyOf(all);
  }

  /**
   * One caution.
   *
   * @param caution the caution
   * @param digest of its text and of the reason for which it is shown
   * @param whole whether it is to be shown whole before the step is worked at
   */
  public record Card(Caution caution, String digest, boolean whole) {}

  /** Those of a step; none without a job. */
  public static Cards of(Model model, AtBench at) {
    Optional<OpenJob> job = model.job();
    if (job.isEmpty()) {
      return new Cards(at.step().id(), "", List.of());
    }
    List<Caution> named =
        at.step().cautions().stream().flatMap(id -> model.handbook().caution(id).stream()).toList();
    List<Card> cards = new ArrayList<>(of(model, job.get(), worstFirst(named, at.step().does())));
    of(model, job.get(), takenOver(model, at, job.get())).stream()
        .filter(Card::whole)
        .forEach(cards::add);
    return new Cards(at.step().id(), job.get().person(), cards);
  }

  /**
   * Whoever takes over in the midst never stood at the steps where torch, room and bench are spoken
   * of: before her own first flame in this job those cards are due for her.
   */
  private static List<Caution> takenOver(Model model, AtBench at, OpenJob job) {
    if (at.step().does().stream().noneMatch(HOT::contains)) {
      return List.of();
    }
    String person = job.person();
    boolean before =
        job.state().flames().said().stream()
            .anyMatch(said -> said.person().equals(person) && said.state() != HotWorkState.SHUT);
    if (before) {
      return List.of();
    }
    List<Step> behind = at.routine().steps().subList(0, at.number() - 1);
    List<String> ready = named(madeReady(behind));
    return named(behind).stream()
        .filter(id -> !at.step().cautions().contains(id))
        .flatMap(id -> model.handbook().caution(id).stream())
        .filter(card -> !card.onlyAtItsSteps())
        .filter(
            card ->
                card.covers().stream().anyMatch(HOT::contains)
                    || (card.covers().isEmpty() && ready.contains(card.id())))
        .toList();
  }

  private static List<String> named(List<Step> steps) {
    return steps.stream().flatMap(step -> step.cautions().stream()).distinct().toList();
  }

  /** Up to the lighting of the torch room and bench are spoken of; after that the work itself. */
  private static List<Step> madeReady(List<Step> steps) {
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i).does().contains(Hazard.LIGHTS)) {
        return steps.subList(0, i + 1);
      }
    }
    return steps;
  }

  /** Those of some cautions that apply to a job, at whatever step. */
  public static List<Card> of(Model model, OpenJob job, List<Caution> cautions) {
    CardTraits traits = job.standing().traits();
    CautionsMet met = job.cautionsMet();
    String person = job.person();
    List<Card> cards = new ArrayList<>();
    cautions.stream()
        .filter(traits::meet)
        .forEach(
            caution -> {
              String digest = CardDigests.of(caution, traits.reason(caution));
              cards.add(
                  new Card(
                      caution, digest, met.comesWhole(person, caution.id(), digest, model.now())));
            });
    return cards;
  }

  /** Those of all steps of the job's routine that apply to it, each once. */
  public static List<Card> ofRoutine(Model model, OpenJob job) {
    List<Caution> named =
        model.handbook().routine(job.state().course().routine()).stream()
            .flatMap(routine -> routine.steps().stream())
            .flatMap(step -> step.cautions().stream())
            .distinct()
            .flatMap(id -> model.handbook().caution(id).stream())
            .toList();
    return of(model, job, named);
  }

  /** The cautions that apply. */
  public List<Caution> cautions() {
    return all.stream().map(Card::caution).toList();
  }

  /** What is worst of what a step does before the rest: not all may have room. */
  public static List<Caution> worstFirst(List<Caution> cautions, Set<Hazard> does) {
    return cautions.stream().sorted(Comparator.comparingInt(card -> rank(card, does))).toList();
  }

  private static int rank(Caution card, Set<Hazard> does) {
    for (int i = 0; i < WORST.size(); i++) {
      if (does.contains(WORST.get(i)) && card.covers().contains(WORST.get(i))) {
        return i;
      }
    }
    return WORST.size();
  }

  /** The one to be shown whole next. */
  public Optional<Card> next() {
    return all.stream().filter(Card::whole).findFirst();
  }

  /** The same of the step's own alone. */
  public Optional<Card> ownNext(AtBench at) {
    return all.stream()
        .filter(card -> card.whole() && at.step().cautions().contains(card.caution().id()))
        .findFirst();
  }

  /** Which of how many whole ones the next one is, as it is told: {@code card 2 of 3}. */
  public String which(OpenJob job) {
    int shown = shownBefore(job);
    long left = all.stream().filter(Card::whole).count();
    return "card " + (shown + 1) + " of " + (shown + left);
  }

  /** Those shown whole before this step, one after the other, up to now. */
  private int shownBefore(OpenJob job) {
    int shown = 0;
    for (int i = job.entries().size() - 1; i >= 0; i--) {
      Entry entry = job.entries().get(i);
      boolean here =
          entry.fact() instanceof Fact.CautionSeen seen
              && seen.how() == CautionMet.WHOLE
              && seen.step().equals(step);
      if (!here) {
        break;
      }
      shown++;
    }
    return shown;
  }

  /** What is entered when a card was shown whole. */
  public Fact seen(Card card) {
    return new Fact.CautionSeen(card.caution().id(), CautionMet.WHOLE, card.digest(), step);
  }

  /**
   * A turn that enters work at the step: that it was done under the lines of its cautions is
   * entered with it, once in half a day.
   */
  public Turn workedUnder(Model model, Turn turn) {
    Optional<OpenJob> job = model.job();
    boolean works =
        turn.effects().stream()
            .anyMatch(
                effect ->
                    effect instanceof KeepFacts keep
                        && keep.facts().stream().anyMatch(Cards::isWork));
    if (job.isEmpty() || !works) {
      return turn;
    }
    List<Fact> lines = new ArrayList<>();
    CautionsMet met = job.get().cautionsMet();
    for (Card card : all) {
      if (!met.lately(person, card.caution().id(), model.now())) {
        lines.add(new Fact.CautionSeen(card.caution().id(), CautionMet.LINE, card.digest(), step));
      }
    }
    List<Effect> effects = new ArrayList<>();
    for (Effect effect : turn.effects()) {
      if (effect instanceof KeepFacts keep) {
        List<Fact> facts = new ArrayList<>(lines);
        facts.addAll(keep.facts());
        effects.add(new KeepFacts(facts));
      } else {
        effects.add(effect);
      }
    }
    return new Turn(turn.model(), effects, turn.next());
  }

  private static boolean isWork(Fact fact) {
    return fact instanceof Fact.PiecesThrough
        || fact instanceof Fact.WireCut
        || fact instanceof Fact.StepDone
        || fact instanceof Fact.PiecesSentBack
        || fact instanceof Fact.PiecesScrapped
        || (fact instanceof Fact.TimerStarted timer && !timer.step().isEmpty());
  }
}
