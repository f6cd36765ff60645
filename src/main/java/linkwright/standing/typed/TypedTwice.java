package linkwright.standing.typed;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import linkwright.bench.OwnBench;
import linkwright.hands.TaughtJob;
import linkwright.job.JobState;
import linkwright.standing.Handbook;

/** Values that she typed alike for two jobs and that her bench does not hold yet. */
public final class TypedTwice {
  private static final String LOSS = "losses.all";

  private TypedTwice() {}

  /** What was typed, one after the other, each by what it is called where it is typed. */
  public static String said(Map<String, String> typed) {
    return typed.entrySet().stream()
        .map(
            each ->
                (each.getKey().equals(LOSS) ? "usual loss" : each.getKey().replace("prices.", ""))
                    + " "
                    + each.getValue())
        .collect(Collectors.joining(", "));
  }

  /** Key of her bench → what was typed, as it would be typed there. */
  public static Map<String, String> of(Handbook handbook) {
    Map<String, Map<String, Integer>> counts = new TreeMap<>();
    for (TaughtJob job : handbook.hands().jobs()) {
      job.typed()
          .forEach(
              (key, text) ->
                  counts
                      .computeIfAbsent(key, any -> new LinkedHashMap<>())
                      .merge(text, 1, Integer::sum));
    }
    Map<String, String> twice = new LinkedHashMap<>();
    counts.forEach(
        (key, texts) ->
            texts.entrySet().stream()
                .filter(each -> each.getValue() >= 2)
                .max(Map.Entry.comparingByValue())
                .filter(each -> !holds(handbook.own(), key))
                .ifPresent(each -> twice.put(key, each.getKey())));
    return withMoney(twice, handbook);
  }

  /** The same of what is typed in one job, and was typed alike in another. */
  public static Map<String, String> here(String slug, JobState state, Handbook handbook) {
    Map<String, String> twice = new LinkedHashMap<>(TaughtJob.typed(state));
    twice
        .entrySet()
        .removeIf(
            each ->
                holds(handbook.own(), each.getKey())
                    || handbook.hands().jobs().stream()
                        .filter(job -> !job.slug().equals(slug))
                        .noneMatch(job -> each.getValue().equals(job.typed().get(each.getKey()))));
    return withMoney(twice, handbook);
  }

  /** A price without its money is a bare number. */
  private static Map<String, String> withMoney(Map<String, String> twice, Handbook handbook) {
    if (handbook.own().prices().currency().isEmpty() && !twice.containsKey("prices.currency")) {
      twice.keySet().removeIf(key -> key.startsWith("prices."));
    }
    return Collections.unmodifiableMap(twice);
  }

  private static boolean holds(OwnBench bench, String key) {
    String price = key.startsWith("prices.") ? key.substring("prices.".length()) : "";
    return (key.equals("kerf") && bench.kerfMm().isPresent())
        || (key.equals(LOSS) && bench.loss().isPresent())
        || (price.equals("currency") && !bench.prices().currency().isEmpty())
        || bench.prices().others().containsKey(price)
        || (price.startsWith("metal-per-g.")
            && bench.prices().metalPerG().containsKey(price.substring("metal-per-g.".length())));
  }
}
