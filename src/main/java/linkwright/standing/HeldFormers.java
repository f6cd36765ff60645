package linkwright.standing;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import linkwright.job.Sourced;
import linkwright.plan.WishKeys;
import linkwright.quantity.Decimals;
import linkwright.quantity.Length;

/**
 * The formers of her bench that a plan chooses from. A kept plan holds their sizes, so that no
 * former bought or sold since bends its link otherwise.
 */
final class HeldFormers {
  static final String KEY = "your formers";
  private static final String NONE = "none named";

  private HeldFormers() {}

  /** What a plan with those texts is reckoned with; a plan that names no pattern chooses none. */
  static void put(Map<String, Sourced> taken, Map<String, String> texts, Handbook handbook) {
    if (texts.getOrDefault(WishKeys.LINK_PATTERN, "").isBlank()) {
      return;
    }
    Collection<Double> sizes = handbook.own().formersMm().values();
    taken.put(
        KEY,
        sizes.isEmpty()
            ? new Sourced(NONE, Sourced.Source.USUAL)
            : new Sourced(
                sizes.stream()
                    .distinct()
                    .sorted()
                    .map(mm -> Decimals.exactly(mm) + " mm")
                    .collect(Collectors.joining(", ")),
                Sourced.Source.BENCH));
  }

  /**
   * The sizes that are held, mm; those of today's bench where a plan of an older book holds none.
   */
  static List<Double> of(Map<String, Sourced> taken, Handbook handbook) {
    return Optional.ofNullable(taken.get(KEY))
        .flatMap(held -> read(held.value()))
        .orElseGet(() -> List.copyOf(handbook.own().formersMm().values()));
  }

  private static Optional<List<Double>> read(String held) {
    return held.equals(NONE)
        ? Optional.of(List.of())
        : Length.readList(held).found().map(all -> all.stream().map(Length::mm).toList());
  }
}
