package linkwright.standing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.bench.OwnBench;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.Sourced;
import linkwright.plan.Usually;
import linkwright.plan.WishKeys;
import linkwright.routine.PieceKind;

/**
 * What a wish is reckoned with where she typed nothing: her bench's values, and what her books
 * taught. A plan that is kept holds them, so that it stays as it was kept whatever her bench says
 * later.
 */
public final class PlanDefaults {
  private PlanDefaults() {}

  /**
   * Key of the wish → value and where it comes from, of those that were not typed; what the plan
   * was kept with before stays.
   */
  public static Map<String, Sourced> of(
      Map<String, String> texts, Map<String, Sourced> kept, Handbook handbook) {
    Map<String, Sourced> taken = new LinkedHashMap<>(of(texts, handbook));
    kept.forEach(
        (key, value) -> {
          if (blank(texts, key)) {
            taken.put(key, value);
          }
        });
    return taken;
  }

  /** The entry that keeps a wish with what it was reckoned with. */
  public static Fact.PlanSet kept(Map<String, String> wish, JobState state, Handbook handbook) {
    return new Fact.PlanSet(wish, of(wish, state.course().reckonedWith(), handbook));
  }

  static Map<String, Sourced> of(Map<String, String> texts, Handbook handbook) {
    Map<String, Sourced> taken = new LinkedHashMap<>();
    OwnBench bench = handbook.own();
    if (blank(texts, WishKeys.KERF) && bench.kerfMm().isPresent()) {
      taken.put(
          WishKeys.KERF,
          new Sourced(number(bench.kerfMm().getAsDouble(), 3) + " mm", Sourced.Source.BENCH));
    }
    if (blank(texts, WishKeys.USUAL_LOSS)) {
      double usual = ownLoss(bench).orElse(Usually.LOSS);
      OptionalDouble taught = handbook.hands().loss(PieceKind.LINK, usual);
      if (taught.isPresent()) {
        taken.put(WishKeys.USUAL_LOSS, share(taught.getAsDouble(), Sourced.Source.HANDS));
      } else if (ownLoss(bench).isPresent()) {
        taken.put(WishKeys.USUAL_LOSS, share(usual, Sourced.Source.BENCH));
      }
    }
    return taken;
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

  private static OptionalDouble ownLoss(OwnBench bench) {
    Double all = bench.losses().get("all");
    if (all != null) {
      return OptionalDouble.of(all);
    }
    // What is lost at one stage never comes to the next.
    return bench.losses().isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            1 - bench.losses().values().stream().reduce(1.0, (good, lost) -> good * (1 - lost)));
  }

  private static Sourced share(double share, Sourced.Source from) {
    return new Sourced(number(100 * share, 1) + " %", from);
  }

  private static boolean blank(Map<String, String> texts, String key) {
    return texts.getOrDefault(key, "").isBlank();
  }

  private static String number(double value, int decimals) {
    return BigDecimal.valueOf(value)
        .setScale(decimals, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
