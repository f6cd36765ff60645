package linkwright.reckon;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import linkwright.bench.OwnBench;
import linkwright.bench.OwnSolder;
import linkwright.link.Pattern;
import linkwright.quantity.Decimals;
import linkwright.quantity.UnitStyle;

/** What a maker's own bench answers to a sum's asks: her plate, kerf, strip, formers, her loss. */
public final class OwnAnswers {
  /** Keys of the asks that a bench may answer. */
  public static final Set<String> KEYS = Set.of("holes", "kerf", "usual-loss", "strip", "owned");

  private static final double MM_PER_IN = 25.4;

  private OwnAnswers() {}

  /**
   * Key of an ask → her bench's answer, as she would type it; of what was typed nothing.
   *
   * @param typed key of an ask → what was typed
   */
  public static Map<String, String> of(
      Sum sum,
      OwnBench own,
      Map<String, String> typed,
      Collection<Pattern> patterns,
      UnitStyle units) {
    Map<String, String> hers = new LinkedHashMap<>();
    for (Ask ask : sum.asks()) {
      if (typed.getOrDefault(ask.key(), "").isBlank()) {
        answer(ask.key(), own, typed, patterns, units).ifPresent(text -> hers.put(ask.key(), text));
      }
    }
    return hers;
  }

  private static Optional<String> answer(
      String key,
      OwnBench own,
      Map<String, String> typed,
      Collection<Pattern> patterns,
      UnitStyle units) {
    return switch (key) {
      case "holes" -> list(own.plateMm(), units);
      case "kerf" ->
          own.kerfMm().isPresent()
              ? Optional.of(exact(own.kerfMm().getAsDouble(), units))
              : Optional.empty();
      case "usual-loss" ->
          own.loss().isPresent()
              ? Optional.of(Decimals.upTo(100 * own.loss().getAsDouble(), 1) + " %")
              : Optional.empty();
      case "strip" -> strip(own.solders(), typed.getOrDefault("solder", ""), units);
      case "owned" -> formers(own, typed.getOrDefault("pattern", ""), patterns, units);
      default -> Optional.empty();
    };
  }

  private static Optional<String> list(Collection<Double> sizesMm, UnitStyle units) {
    return sizesMm.isEmpty()
        ? Optional.empty()
        : Optional.of(
            sizesMm.stream().map(mm -> exact(mm, units)).collect(Collectors.joining(",")));
  }

  /** That of the solder asked for; where none was, of her only one or of her hard one. */
  private static Optional<String> strip(List<OwnSolder> solders, String name, UnitStyle units) {
    List<String> strips =
        strips(
            solders, each -> name.isBlank() || each.name().equalsIgnoreCase(name.strip()), units);
    // The sum goes by hard solder where none is named.
    List<String> hard =
        name.isBlank() && strips.size() > 1
            ? strips(solders, each -> each.grade().equalsIgnoreCase("hard"), units)
            : strips;
    return hard.size() == 1 ? Optional.of(hard.get(0)) : Optional.empty();
  }

  private static List<String> strips(
      List<OwnSolder> solders, Predicate<OwnSolder> which, UnitStyle units) {
    return solders.stream()
        .filter(which)
        .filter(each -> each.stripWidthMm().isPresent() && each.stripThicknessMm().isPresent())
        .map(
            each ->
                exact(each.stripWidthMm().getAsDouble(), units)
                    + " x "
                    + exact(each.stripThicknessMm().getAsDouble(), units))
        .distinct()
        .toList();
  }

  /** Any of her formers for each that the pattern names, as a plan takes them. */
  private static Optional<String> formers(
      OwnBench own, String name, Collection<Pattern> patterns, UnitStyle units) {
    return list(own.formersMm().values(), units)
        .flatMap(
            sizes ->
                patterns.stream()
                    .filter(pattern -> pattern.id().equals(name.strip()))
                    .findFirst()
                    .map(
                        pattern ->
                            pattern.formersMm().keySet().stream()
                                .map(former -> former + "=" + sizes)
                                .collect(Collectors.joining("; "))));
  }

  private static String exact(double mm, UnitStyle units) {
    return units == UnitStyle.METRIC
        ? Decimals.upTo(mm, 3) + " mm"
        : Decimals.upTo(mm / MM_PER_IN, 4) + " in";
  }

  /** What was taken from her bench, in a sentence; empty for nothing. */
  public static Optional<String> told(Sum sum, Map<String, String> hers) {
    return hers.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "From your bench: "
                + hers.entrySet().stream()
                    .map(each -> sum.ask(each.getKey()).label() + " " + each.getValue())
                    .collect(Collectors.joining("; "))
                + ".");
  }
}
