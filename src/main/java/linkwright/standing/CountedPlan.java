package linkwright.standing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import linkwright.job.JobState;
import linkwright.job.Sourced;
import linkwright.job.Trials;
import linkwright.link.Pattern;
import linkwright.plan.ChainWish;
import linkwright.plan.LinkBasis;
import linkwright.plan.NamedFormers;
import linkwright.plan.PartPlan;
import linkwright.plan.Plan;
import linkwright.plan.Planning;
import linkwright.plan.RingInstead;
import linkwright.plan.SettledLink;
import linkwright.plan.WishKeys;
import linkwright.plan.WishReading;
import linkwright.quantity.LastAnswers;
import linkwright.quantity.Read;
import linkwright.quantity.SaidIn;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Metal;
import linkwright.routine.ChainEnds;
import linkwright.routine.Makes;
import linkwright.routine.Routine;

/**
 * A job's plan, counted anew from the sample link and the trial length.
 *
 * @param wish the wish as planned; empty while it cannot be read
 * @param plan the plan of a chain; empty while there is none
 * @param part the plan of what is no chain: a clasp, rings, wire
 * @param troubles key of the wish → what is wrong
 * @param sentence what is wrong with the whole, empty if nothing
 * @param basis what is known of the link beyond the wish; empty without a wish
 * @param instead a ring wished after a trial length hung with another was chosen
 */
public record CountedPlan(
    Optional<ChainWish> wish,
    Optional<Plan> plan,
    Optional<PartPlan> part,
    Map<String, String> troubles,
    String sentence,
    Optional<LinkBasis> basis,
    Optional<RingInstead> instead) {
  private static final CountedPlan NONE = troubled(Map.of());

  /** Plan, tray, what if and commands ask for the same again after every entry. */
  private static final LastAnswers<Read<Plan>> PLANS = new LastAnswers<>(100);

  /** The plan of a job as it stands. */
  public static CountedPlan of(JobState state, Handbook handbook) {
    Map<String, String> texts =
        PlanDefaults.filled(state.course().wish(), state.course().reckonedWith());
    if (partOf(state, handbook).isPresent()) {
      return part(texts, partOf(state, handbook).get(), handbook);
    }
    if (texts.isEmpty()) {
      return NONE;
    }
    return chain(
            WishReading.of(texts, handbook.reference(), handbook.patterns()),
            state,
            HeldFormers.of(state.course().reckonedWith(), handbook),
            handbook)
        .frozen(state.accounts().figures());
  }

  /** The same, with what is wrong said in these units. */
  public CountedPlan saidIn(UnitStyle units) {
    Map<String, String> said = new LinkedHashMap<>(troubles);
    said.replaceAll((key, trouble) -> SaidIn.units(trouble, units));
    return new CountedPlan(wish, plan, part, said, SaidIn.units(sentence, units), basis, instead);
  }

  /** A closed job keeps its figures. */
  private CountedPlan frozen(Map<String, Double> figures) {
    return new CountedPlan(
        wish,
        plan.map(now -> ClosedFigures.frozen(now, figures)),
        part,
        troubles,
        sentence,
        basis,
        instead);
  }

  /** The plan of texts that are being typed, before they are kept. */
  public static CountedPlan ofTyped(Map<String, String> typed, JobState state, Handbook handbook) {
    Map<String, String> texts = NamedFormers.sized(typed, handbook.own().formersMm());
    Optional<String> refused = notPlanned(texts, state.course().wish(), handbook);
    if (refused.isPresent()) {
      return troubled(Map.of(WishKeys.METAL, refused.get()));
    }
    if (partOf(state, handbook).isPresent()) {
      return part(texts, partOf(state, handbook).get(), handbook);
    }
    Map<String, Sourced> taken = PlanDefaults.of(texts, state, handbook);
    Map<String, String> filled = PlanDefaults.filled(texts, taken);
    WishReading reading = WishReading.of(filled, handbook.reference(), handbook.patterns());
    Map<String, String> troubles = new LinkedHashMap<>(reading.troubles());
    handbook
        .routine(state.course().routine())
        .flatMap(routine -> ringTrouble(routine, texts))
        .ifPresent(sentence -> troubles.putIfAbsent(WishKeys.RING_INSIDE, sentence));
    return troubles.isEmpty()
        ? chain(reading, state, HeldFormers.of(taken, handbook), handbook)
        : troubled(troubles);
  }

  /** Why a metal is in no new plan; a plan that was kept with it stays open. */
  private static Optional<String> notPlanned(
      Map<String, String> texts, Map<String, String> kept, Handbook handbook) {
    String metal = texts.getOrDefault(WishKeys.METAL, "").strip();
    return metal.isEmpty() || metal.equals(kept.getOrDefault(WishKeys.METAL, ""))
        ? Optional.empty()
        : handbook
            .reference()
            .metal(metal)
            .found()
            .map(Metal::notPlanned)
            .filter(why -> !why.isEmpty());
  }

  /** The routine of the job, if what it makes is no chain. */
  private static Optional<Routine> partOf(JobState state, Handbook handbook) {
    return handbook
        .routine(state.course().routine())
        .filter(routine -> routine.makes() != Makes.CHAIN);
  }

  /** What is wrong with the rings of a wish, or with their lack, for that routine. */
  public static Optional<String> ringTrouble(Routine routine, Map<String, String> texts) {
    boolean rings = !texts.getOrDefault(WishKeys.RING_INSIDE, "").isBlank();
    if (routine.ends() == ChainEnds.RINGS && !rings) {
      return Optional.of(
          "Give the inside of the rings, such as 3 mm: rings join the links of this chain.");
    }
    return routine.ends() == ChainEnds.LINKS && rings
        ? Optional.of("Leave the ring empty: the links of this chain join each other.")
        : Optional.empty();
  }

  private static CountedPlan part(Map<String, String> texts, Routine routine, Handbook handbook) {
    Optional<Pattern> pattern = routine.patterns().stream().findFirst().flatMap(handbook::pattern);
    PartPlan.Reading reading =
        PartPlan.of(
            texts,
            handbook.reference(),
            pattern,
            routine.usualLoss(),
            routine.detail().usualPieces());
    return new CountedPlan(
        Optional.empty(),
        Optional.empty(),
        reading.plan(),
        reading.troubles(),
        "",
        Optional.empty(),
        Optional.empty());
  }

  private static CountedPlan chain(
      WishReading reading, JobState state, List<Double> formersMm, Handbook handbook) {
    if (reading.wish().isEmpty()) {
      return troubled(reading.troubles());
    }
    ChainWish wish = reading.wish().get();
    LinkBasis basis = LinkKnowledge.taught(wish, state.trials(), formersMm, handbook);
    Followed followed = Followed.of(wish, state.trials(), handbook);
    Read<Plan> plan = planned(followed, basis);
    return new CountedPlan(
        Optional.of(wish),
        plan.found(),
        Optional.empty(),
        Map.of(),
        plan.problem().orElse(""),
        Optional.of(basis),
        followed.ring());
  }

  private static Read<Plan> planned(Followed followed, LinkBasis basis) {
    LinkBasis known = basis.following(followed.link(), followed.samples(), followed.hung());
    return PLANS.of(List.of(followed.wish(), known), () -> Planning.plan(followed.wish(), known));
  }

  /** What the chain would be with other pieces chosen. */
  Read<Plan> with(Trials trials, Handbook handbook) {
    ChainWish known = wish.orElseThrow();
    return trials.chosen().filter(hung -> !Followed.tells(hung, known)).isPresent()
        ? Read.bad("Rings and clasp alone are as long as that: hang it and measure it again.")
        : planned(Followed.of(known, trials, handbook), basis.orElseThrow());
  }

  /** What to mind about it, in sentences with sizes in those units. */
  public List<String> remarks(UnitStyle units) {
    List<String> remarks = new ArrayList<>(plan.orElseThrow().remarks(units));
    SettledLink link = plan.get().link();
    if (basis.filter(LinkBasis::noneOfHers).isPresent() && !link.followed()) {
      remarks.add(
          0,
          "Of the formers of your bench none makes it: "
              + link.formersMm().entrySet().stream()
                  .map(each -> each.getKey() + " " + units.length(each.getValue()))
                  .collect(Collectors.joining(", "))
              + ".");
    }
    return remarks;
  }

  private static CountedPlan troubled(Map<String, String> troubles) {
    return new CountedPlan(
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        troubles,
        "",
        Optional.empty(),
        Optional.empty());
  }

  /** Whether there is a plan, of a chain or of something else. */
  public boolean holds() {
    return plan.isPresent() || part.isPresent();
  }
}
