package linkwright.standing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import linkwright.job.Sourced;
import linkwright.plan.HeldFigures;
import linkwright.plan.Plan;
import linkwright.plan.WishKeys;
import linkwright.plan.WishedLink;
import linkwright.quantity.Decimals;

/**
 * The formers of her bench that a plan chooses from. A kept plan holds their names and sizes, so
 * that no former bought or sold since bends its link otherwise.
 */
public final class HeldFormers {
  static final String KEY = "your formers";
  private static final String NONE = "none named";

  /** A former with her name for it; without one in plans that were kept when names were not. */
  private static final Pattern HELD = Pattern.compile("(.*?)\\s*([0-9.]+) mm");

  private static final double SAME_MM = 1e-6;

  private HeldFormers() {}

  /** What a plan with those texts is reckoned with; a plan that names no pattern chooses none. */
  static void put(Map<String, Sourced> taken, Map<String, String> texts, Handbook handbook) {
    if (texts.getOrDefault(WishKeys.LINK_PATTERN, "").isBlank()) {
      return;
    }
    Map<String, Double> hers = handbook.own().formersMm();
    taken.put(
        KEY,
        hers.isEmpty()
            ? new Sourced(NONE, Sourced.Source.USUAL)
            : new Sourced(
                hers.entrySet().stream()
                    .sorted(Map.Entry.comparingByValue())
                    .map(each -> named(each.getKey(), each.getValue()))
                    .collect(Collectors.joining(", ")),
                Sourced.Source.BENCH));
  }

  private static String named(String name, double mm) {
    // A comma parts the formers, here as wherever they are listed.
    return name.replace(",", "").strip() + " " + Decimals.exactly(mm) + " mm";
  }

  /**
   * The sizes that are held, mm; those of today's bench where a plan of an older book holds none.
   */
  static List<Double> of(Map<String, Sourced> taken, Handbook handbook) {
    return Optional.ofNullable(taken.get(KEY))
        .flatMap(held -> read(held.value()))
        .map(held -> held.stream().map(Held::mm).distinct().toList())
        .orElseGet(() -> List.copyOf(handbook.own().formersMm().values()));
  }

  /** Whether a plan that was reckoned with those values had formers of a bench to choose from. */
  public static boolean chosenFrom(Map<String, Sourced> taken) {
    return Optional.ofNullable(taken.get(KEY))
        .filter(held -> held.from() == Sourced.Source.BENCH)
        .isPresent();
  }

  /** Whether two texts hold formers of the same sizes, whatever they are called. */
  static boolean same(String one, String other) {
    return sizes(one).equals(sizes(other));
  }

  private static Optional<List<Double>> sizes(String held) {
    return read(held).map(all -> all.stream().map(Held::mm).distinct().sorted().toList());
  }

  /**
   * The same values, with each former of the planned link as it was really taken: hers by her name
   * for it, else the pattern's. One that was typed is none that was taken.
   */
  static Map<String, Sourced> used(Map<String, Sourced> taken, CountedPlan counted) {
    Map<String, Sourced> used = new LinkedHashMap<>(taken);
    if (counted.plan().isEmpty() || !chosenFrom(taken)) {
      return used;
    }
    Plan plan = counted.plan().get();
    WishedLink link = plan.wish().link();
    List<Held> hers = read(taken.get(KEY).value()).orElse(List.of());
    link.pattern()
        .ifPresent(
            pattern ->
                pattern
                    .formersMm()
                    .forEach(
                        (name, own) -> {
                          String key = HeldFigures.former(pattern.id(), name);
                          double mm = plan.link().formersMm().getOrDefault(name, own);
                          if (link.formersMm().containsKey(name)) {
                            used.remove(key);
                          } else {
                            used.put(key, sourced(mm, hers));
                          }
                        }));
    return used;
  }

  private static Sourced sourced(double mm, List<Held> hers) {
    return hers.stream()
        .filter(held -> Math.abs(held.mm() - mm) < SAME_MM)
        .findFirst()
        .map(held -> new Sourced(held.said(), Sourced.Source.BENCH))
        .orElseGet(() -> new Sourced(Decimals.upTo(mm, 3) + " mm", Sourced.Source.USUAL));
  }

  private record Held(String name, double mm) {
    String said() {
      return (name + " " + Decimals.upTo(mm, 3) + " mm").strip();
    }
  }

  private static Optional<List<Held>> read(String held) {
    if (held.equals(NONE)) {
      return Optional.of(List.of());
    }
    List<Optional<Held>> all =
        List.of(held.split(",", -1)).stream().map(each -> one(each.strip())).toList();
    return all.stream().anyMatch(Optional::isEmpty)
        ? Optional.empty()
        : Optional.of(all.stream().flatMap(Optional::stream).toList());
  }

  private static Optional<Held> one(String text) {
    Matcher matcher = HELD.matcher(text);
    return matcher.matches()
        ? Decimals.read(matcher.group(2))
            .filter(mm -> mm > 0)
            .map(mm -> new Held(matcher.group(1), mm))
        : Optional.empty();
  }
}
