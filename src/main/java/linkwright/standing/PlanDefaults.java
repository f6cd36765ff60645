package linkwright.standing;

import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.bench.OwnBench;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.Sourced;
import linkwright.plan.HeldFigures;
import linkwright.plan.NamedFormers;
import linkwright.plan.UsualFigures;
import linkwright.plan.WishKeys;
import linkwright.plan.Woven;
import linkwright.quantity.Decimals;
import linkwright.routine.Makes;
import linkwright.routine.PieceKind;
import linkwright.routine.Routine;

/**
 * What a wish is reckoned with where she typed nothing: her bench's values, what her books taught,
 * what is usual, and the figures of the reference files. A plan that is kept holds them, so that it
 * stays as it was kept whatever bench and files say later.
 */
public final class PlanDefaults {
  private PlanDefaults() {}

  /**
   * Key of the wish → value and where it comes from, of those that were not typed; what the plan
   * was kept with before stays.
   */
  public static Map<String, Sourced> of(
      Map<String, String> texts, JobState state, Handbook handbook) {
    Map<String, Sourced> taken = new LinkedHashMap<>(of(texts, routine(state, handbook), handbook));
    Map<String, Sourced> kept = state.course().reckonedWith();
    kept.forEach(
        (key, value) -> {
          // A figure of a metal or clasp that is no more in the wish counts no more.
          if (HeldFigures.isOne(key) ? taken.containsKey(key) : blank(texts, key)) {
            taken.put(key, value);
          }
        });
    return taken;
  }

  /**
   * Key → what would be taken today in the place of what a plan was kept with, where that differs.
   */
  static Map<String, String> since(Map<String, String> texts, JobState state, Handbook handbook) {
    Map<String, String> since = new LinkedHashMap<>();
    Map<String, Sourced> today = of(texts, routine(state, handbook), handbook);
    Map<String, Sourced> kept = state.course().reckonedWith();
    kept.forEach(
        (key, value) -> {
          Sourced now = today.get(key);
          if (now != null
              && !now.value().equals(value.value())
              && !(key.equals(HeldFormers.KEY) && HeldFormers.same(now.value(), value.value()))) {
            since.put(key, now.value());
          }
        });
    return since;
  }

  /** The entry that keeps a wish with what it was reckoned with. */
  public static Fact.PlanSet kept(Map<String, String> typed, JobState state, Handbook handbook) {
    Map<String, String> wish = NamedFormers.sized(typed, handbook.own().formersMm());
    Map<String, Sourced> taken = of(wish, state, handbook);
    boolean chain =
        routine(state, handbook).map(routine -> routine.makes() == Makes.CHAIN).orElse(true);
    if (!chain) {
      // What is no chain is reckoned with what its routine says is usual.
      taken.values().removeIf(value -> value.from() == Sourced.Source.USUAL);
    }
    return new Fact.PlanSet(wish, taken);
  }

  private static Optional<Routine> routine(JobState state, Handbook handbook) {
    return handbook.routine(state.course().routine());
  }

  /** The same of a wish that is in no job yet, made by that routine. */
  static Map<String, Sourced> of(
      Map<String, String> texts, Optional<Routine> routine, Handbook handbook) {
    Map<String, Sourced> taken = new LinkedHashMap<>();
    OwnBench bench = handbook.own();
    if (blank(texts, WishKeys.KERF) && bench.kerfMm().isPresent()) {
      taken.put(
          WishKeys.KERF,
          new Sourced(
              Decimals.upTo(bench.kerfMm().getAsDouble(), 3) + " mm", Sourced.Source.BENCH));
    }
    if (blank(texts, WishKeys.USUAL_LOSS)) {
      taken.put(WishKeys.USUAL_LOSS, loss(routine, handbook));
    }
    usual(taken, texts, WishKeys.KERF, Decimals.upTo(UsualFigures.KERF_MM, 3) + " mm");
    usual(taken, texts, WishKeys.COIL_TAIL, Decimals.upTo(UsualFigures.COIL_TAIL_MM, 3) + " mm");
    usual(taken, texts, WishKeys.CONFIDENCE, Decimals.upTo(100 * UsualFigures.CHANCE, 1) + " %");
    HeldFormers.put(taken, texts, handbook);
    woven(texts, routine, handbook)
        .ifPresent(
            woven ->
                taken.put(HeldFigures.LINK_ADDS, new Sourced(woven.held(), Sourced.Source.USUAL)));
    HeldFigures.of(texts, handbook.reference(), handbook.patterns())
        .forEach((key, value) -> taken.put(key, new Sourced(value, Sourced.Source.USUAL)));
    return taken;
  }

  private static Optional<Woven> woven(
      Map<String, String> texts, Optional<Routine> routine, Handbook handbook) {
    return routine
        .filter(known -> blank(texts, WishKeys.LINK_INSIDE))
        .filter(
            known ->
                blank(texts, WishKeys.LINK_PATTERN)
                    || known.patterns().contains(texts.get(WishKeys.LINK_PATTERN).strip()))
        .flatMap(known -> known.detail().adding(JobTraits.of(texts, handbook.reference())::meet))
        .map(adds -> new Woven(adds.ofInside(), adds.ofWire(), adds.off()));
  }

  /** The share of links lost that a new plan by that routine is reckoned with. */
  public static Sourced loss(Optional<Routine> routine, Handbook handbook) {
    boolean taught = handbook.hands().lossShare(PieceKind.LINK).isPresent();
    boolean own = handbook.own().loss().isPresent();
    Sourced.Source from =
        taught
            ? own ? Sourced.Source.BENCH_AND_HANDS : Sourced.Source.HANDS
            : own ? Sourced.Source.BENCH : Sourced.Source.USUAL;
    return new Sourced(percent(lossShare(routine, handbook)), from);
  }

  /** The same where books told of a loss; empty where none did. */
  static OptionalDouble lossTaught(Optional<Routine> routine, Handbook handbook) {
    return handbook.hands().lossShare(PieceKind.LINK).isPresent()
        ? OptionalDouble.of(lossShare(routine, handbook))
        : OptionalDouble.empty();
  }

  private static double lossShare(Optional<Routine> routine, Handbook handbook) {
    double common =
        routine.map(Routine::usualLoss).filter(share -> share > 0).orElse(UsualFigures.LOSS);
    double usual = handbook.own().loss().orElse(common);
    return handbook.hands().loss(PieceKind.LINK, usual).orElse(usual);
  }

  /** The same of all routines that make a chain, as plans write it: from the least to the most. */
  public static String usualLoss(Handbook handbook) {
    DoubleSummaryStatistics shares =
        handbook.routines().stream()
            .filter(routine -> routine.makes() == Makes.CHAIN)
            .mapToDouble(routine -> lossShare(Optional.of(routine), handbook))
            .summaryStatistics();
    if (shares.getCount() == 0) {
      return percent(lossShare(Optional.empty(), handbook));
    }
    String least = percent(shares.getMin());
    String most = percent(shares.getMax());
    return least.equals(most) ? least : least + " to " + most;
  }

  /** The texts of a wish with those values in the places that were left empty. */
  static Map<String, String> filled(Map<String, String> texts, Map<String, Sourced> taken) {
    if (taken.isEmpty()) {
      return texts;
    }
    Map<String, String> all = new LinkedHashMap<>(texts);
    taken.forEach(
        (key, value) -> {
          if (blank(all, key)) {
            all.put(key, value.value());
          }
        });
    return all;
  }

  private static void usual(
      Map<String, Sourced> taken, Map<String, String> texts, String key, String value) {
    if (blank(texts, key)) {
      taken.putIfAbsent(key, new Sourced(value, Sourced.Source.USUAL));
    }
  }

  private static String percent(double share) {
    return Decimals.upTo(100 * share, 1) + " %";
  }

  private static boolean blank(Map<String, String> texts, String key) {
    return texts.getOrDefault(key, "").isBlank();
  }
}
