package linkwright.standing.nearest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.job.JobState;
import linkwright.plan.ChainWish;
import linkwright.plan.EndRings;
import linkwright.plan.Plan;
import linkwright.plan.SettledLink;
import linkwright.plan.WishKeys;
import linkwright.quantity.Decimals;
import linkwright.reference.Clasp;
import linkwright.standing.CountedPlan;
import linkwright.standing.Handbook;

/**
 * The nearest chains to the one wished that can be had: another ring, another link, one link fewer
 * or more, a jump ring at each end, another clasp. Each is planned anew with its change, so that
 * what it promises is what choosing it gives.
 */
public final class ChainChoices {
  /** Sizes that can be told apart on a mandrel and with calipers, mm. */
  private static final double RING_STEP_MM = 0.05;

  private static final double LINK_STEP_MM = 0.1;

  private final Map<String, String> texts;
  private final JobState state;
  private final Handbook handbook;
  private final Plan plan;

  private ChainChoices(Map<String, String> texts, JobState state, Handbook handbook, Plan plan) {
    this.texts = texts;
    this.state = state;
    this.handbook = handbook;
    this.plan = plan;
  }

  /**
   * The choices, in the order in which they change the chain the least.
   *
   * @param texts the wish as typed
   * @param state the job, with what was tried in it
   * @param handbook what can be looked up
   * @return none where the wish comes to no chain, and of a closed job
   */
  public static List<ChainChoice> of(Map<String, String> texts, JobState state, Handbook handbook) {
    if (state.course().closed()) {
      return List.of();
    }
    return CountedPlan.ofTyped(texts, state, handbook)
        .plan()
        .map(plan -> new ChainChoices(texts, state, handbook, plan).all())
        .orElse(List.of());
  }

  private List<ChainChoice> all() {
    List<ChainChoice> choices = new ArrayList<>();
    int each = plan.linksPerRepeat();
    ring().ifPresent(choices::add);
    link().ifPresent(choices::add);
    plan.oneFewerMm().stream()
        .filter(plan::toldApart)
        .forEach(mm -> choices.add(count(ChainChoice.Way.ONE_FEWER, plan.links() - each, mm)));
    if (plan.toldApart(plan.oneMoreMm())) {
      choices.add(count(ChainChoice.Way.ONE_MORE, plan.links() + each, plan.oneMoreMm()));
    }
    jumpRings().ifPresent(choices::add);
    clasp().ifPresent(choices::add);
    return choices;
  }

  /** The exact ring; where two wires do not pass it, the least that they pass. */
  private Optional<ChainChoice> ring() {
    double least = RING_STEP_MM * Math.ceil(2 * plan.wish().wireMm() / RING_STEP_MM - 1e-9);
    OptionalDouble size =
        plan.tightRingInsideMm().isPresent() ? OptionalDouble.of(least) : plan.exactRingInsideMm();
    return size.isEmpty() ? Optional.empty() : ring(rounded(size.getAsDouble(), RING_STEP_MM));
  }

  private Optional<ChainChoice> ring(double mm) {
    return planned(
        ChainChoice.Way.FIT_RING,
        "",
        OptionalDouble.of(mm),
        Map.of(WishKeys.RING_INSIDE, exact(mm)));
  }

  private Optional<ChainChoice> link() {
    SettledLink link = plan.link();
    if (plan.wish().link().pattern().isEmpty() || link.lengthMm().isEmpty()) {
      return Optional.empty();
    }
    double off = (plan.wish().finishedMm() - plan.lengthMm()) / plan.sizes().get(0).links();
    double length = rounded(link.lengthMm().getAsDouble() + off, LINK_STEP_MM);
    Map<String, String> change = new HashMap<>();
    change.put(WishKeys.LINK_LENGTH, exact(length));
    change.put(WishKeys.LINK_BLANK, "");
    change.put(WishKeys.LINK_INSIDE, "");
    link.widthMm()
        .ifPresent(width -> change.put(WishKeys.LINK_WIDTH, exact(rounded(width, LINK_STEP_MM))));
    return planned(ChainChoice.Way.FIT_LINK, "", OptionalDouble.of(length), change)
        .filter(this::changes)
        .or(() -> former(off));
  }

  /** Typed formers make a link's size: then it takes another former, where the link has but one. */
  private Optional<ChainChoice> former(double offMm) {
    Map<String, Double> formers = plan.wish().link().formersMm();
    if (formers.size() != 1) {
      return Optional.empty();
    }
    Map.Entry<String, Double> one = formers.entrySet().iterator().next();
    double mm = rounded(one.getValue() + offMm, RING_STEP_MM);
    Map<String, String> change = new HashMap<>();
    change.put(WishKeys.LINK_FORMERS, one.getKey() + "=" + exact(mm));
    List.of(WishKeys.LINK_LENGTH, WishKeys.LINK_WIDTH, WishKeys.LINK_BLANK, WishKeys.LINK_INSIDE)
        .forEach(key -> change.put(key, ""));
    return planned(
            ChainChoice.Way.FIT_LINK, "links over a former of ", OptionalDouble.of(mm), change)
        .filter(this::changes);
  }

  private boolean changes(ChainChoice choice) {
    return Math.abs(choice.lengthMm() - plan.lengthMm()) > 0.01;
  }

  private ChainChoice count(ChainChoice.Way way, int links, double lengthMm) {
    return new ChainChoice(
        way,
        "",
        OptionalDouble.empty(),
        links,
        lengthMm,
        Map.of(WishKeys.FINISHED, exact(lengthMm)));
  }

  /** What lacks at the ends, with as many links as leave room for a ring that two wires pass. */
  private Optional<ChainChoice> jumpRings() {
    ChainWish wish = plan.wish();
    double there = plan.endRings().map(EndRings::addMm).orElse(0.0);
    for (OptionalDouble length : List.of(OptionalDouble.of(plan.lengthMm()), plan.oneFewerMm())) {
      double each = (wish.finishedMm() - length.orElse(wish.finishedMm()) + there) / 2;
      if (each >= 2 * wish.wireMm()) {
        double mm = rounded(each, RING_STEP_MM);
        return planned(
            ChainChoice.Way.JUMP_RINGS,
            "",
            OptionalDouble.of(mm),
            Map.of(WishKeys.RING_ENDS, exact(mm)));
      }
    }
    return Optional.empty();
  }

  private Optional<ChainChoice> clasp() {
    ChainWish wish = plan.wish();
    if (wish.claspMm() == 0) {
      return Optional.empty();
    }
    return handbook.reference().clasps().stream()
        .filter(clasp -> Math.abs(clasp.insideLengthMm() - wish.claspMm()) > LINK_STEP_MM)
        .flatMap(clasp -> with(clasp).stream())
        .min(Comparator.comparingDouble(choice -> Math.abs(choice.lengthMm() - wish.finishedMm())));
  }

  private Optional<ChainChoice> with(Clasp clasp) {
    return planned(
        ChainChoice.Way.CLASP,
        clasp.name(),
        OptionalDouble.empty(),
        Map.of(
            WishKeys.CLASP_LENGTH,
            exact(clasp.insideLengthMm()),
            WishKeys.CLASP_MASS,
            Decimals.exactly(clasp.massG()) + " g"));
  }

  private Optional<ChainChoice> planned(
      ChainChoice.Way way, String what, OptionalDouble sizeMm, Map<String, String> change) {
    Map<String, String> changed = new HashMap<>(texts);
    changed.putAll(change);
    return CountedPlan.ofTyped(changed, state, handbook)
        .plan()
        .map(other -> new ChainChoice(way, what, sizeMm, other.links(), other.lengthMm(), change));
  }

  private static double rounded(double mm, double stepMm) {
    return Math.round(mm / stepMm) * stepMm;
  }

  private static String exact(double mm) {
    return Decimals.upTo(mm, 2) + " mm";
  }
}
