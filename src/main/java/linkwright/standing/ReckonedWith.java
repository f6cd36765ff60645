package linkwright.standing;

import java.util.LinkedHashMap;
import java.util.Map;
import linkwright.job.JobState;
import linkwright.job.Sourced;
import linkwright.plan.ChainWish;
import linkwright.plan.Source;
import linkwright.plan.WishKeys;
import linkwright.quantity.Decimals;

/**
 * The values that a kept plan is reckoned with where nothing was typed, and where each came from:
 * so that it comes out the same when what is usual has changed.
 */
public final class ReckonedWith {
  private ReckonedWith() {}

  /**
   * What a wish that is to be kept is reckoned with.
   *
   * @param texts the wish as typed
   * @param wish what it was read as
   * @param state the job; what an earlier job settled stays said of a text that is the same
   */
  public static Map<String, Sourced> of(Map<String, String> texts, ChainWish wish, JobState state) {
    Map<String, Sourced> used = new LinkedHashMap<>();
    state
        .accounts()
        .reckonedWith()
        .forEach(
            (key, value) -> {
              if (texts.getOrDefault(key, "").equals(value.value())) {
                used.put(key, value);
              }
            });
    usual(used, texts, WishKeys.TEMPER, wish.temper().word());
    usual(used, texts, WishKeys.KERF, Decimals.upTo(wish.kerfMm(), 3) + " mm");
    usual(used, texts, WishKeys.COIL_TAIL, Decimals.upTo(wish.coilTailMm(), 3) + " mm");
    usual(used, texts, WishKeys.USUAL_LOSS, Decimals.percent(wish.usualLoss(), 3));
    usual(used, texts, WishKeys.CONFIDENCE, Decimals.percent(wish.confidence(), 3));
    return used;
  }

  private static void usual(
      Map<String, Sourced> used, Map<String, String> texts, String key, String value) {
    if (texts.getOrDefault(key, "").isBlank()) {
      used.put(key, new Sourced(value, Sourced.Source.USUAL));
    }
  }

  /** The wish with what it was reckoned with in the place of what was not typed. */
  static Map<String, String> texts(JobState state) {
    Map<String, String> texts = new LinkedHashMap<>(state.course().wish());
    state
        .accounts()
        .reckonedWith()
        .forEach(
            (key, used) -> {
              if (texts.getOrDefault(key, "").isBlank() && WishKeys.ALL.contains(key)) {
                texts.put(key, used.value());
              }
            });
    return texts;
  }

  /** Where the value of a key comes from. */
  public static Source from(String key, Map<String, String> typed, JobState state) {
    String text = typed.getOrDefault(key, "");
    Sourced used = state.accounts().reckonedWith().get(key);
    boolean same = used != null && (text.isBlank() || text.equals(used.value()));
    if (!same) {
      return text.isBlank() ? Source.USUAL : Source.HERS;
    }
    return switch (used.from()) {
      case TYPED -> Source.HERS;
      case BENCH -> Source.BENCH;
      case HANDS -> Source.LEARNED;
      case USUAL -> Source.USUAL;
    };
  }
}
