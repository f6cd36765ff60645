package linkwright.standing.reach;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import linkwright.plan.WishKeys;
import linkwright.plan.WishReading;
import linkwright.quantity.BareNumber;
import linkwright.quantity.Mass;
import linkwright.quantity.Money;
import linkwright.quantity.Read;
import linkwright.quantity.Span;
import linkwright.standing.Handbook;

/**
 * What there is to make a chain from; what is left open is no limit.
 *
 * @param wire lengths or masses of the links' wire as typed; empty for as much as it takes
 * @param metalG metal in all, g
 * @param money in her money
 * @param hours at the bench, h
 */
public record OnHand(
    String wire, OptionalDouble metalG, OptionalDouble money, OptionalDouble hours) {
  /** Nothing said. */
  public static final OnHand NOTHING =
      new OnHand("", OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());

  /**
   * What there is as it was typed.
   *
   * @param onHand what could be read
   * @param troubles word of a limit → what is wrong
   */
  public record Reading(OnHand onHand, Map<String, String> troubles) {
    /** Copies the map. */
    public Reading {
      troubles = Map.copyOf(troubles);
    }
  }

  /**
   * Reads what was typed by the words of the limits: {@code wire} as in a plan's stock, {@code
   * metal} a mass, {@code money}, {@code hours} where a number alone is hours.
   *
   * @param wish the wish whose wire it is, as typed
   */
  public static Reading read(
      Map<String, String> typed, Map<String, String> wish, Handbook handbook) {
    Map<String, String> troubles = new LinkedHashMap<>();
    String wire = typed.getOrDefault(Bound.WIRE.word(), "").strip();
    Map<String, String> withStock = new LinkedHashMap<>(wish);
    withStock.put(WishKeys.STOCK, wire);
    String trouble =
        WishReading.of(withStock, handbook.reference(), handbook.patterns())
            .troubles()
            .get(WishKeys.STOCK);
    if (trouble != null) {
      troubles.put(Bound.WIRE.word(), trouble);
    }
    OnHand onHand =
        new OnHand(
            trouble == null ? wire : "",
            amount(typed, Bound.METAL, troubles, text -> Mass.read(text).map(Mass::grams)),
            amount(typed, Bound.MONEY, troubles, text -> Money.read(text).map(Money::amount)),
            amount(typed, Bound.HOURS, troubles, OnHand::hours));
    return new Reading(onHand, troubles);
  }

  private static Read<Double> hours(String text) {
    return Span.read(BareNumber.complete(text, "h")).map(span -> span.seconds() / 3600.0);
  }

  private static OptionalDouble amount(
      Map<String, String> typed,
      Bound limit,
      Map<String, String> troubles,
      Function<String, Read<Double>> reading) {
    String text = typed.getOrDefault(limit.word(), "").strip();
    if (text.isEmpty()) {
      return OptionalDouble.empty();
    }
    Read<Double> read = reading.apply(text);
    read.problem().ifPresent(sentence -> troubles.put(limit.word(), sentence));
    return read.map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }

  /** What was said, in order. */
  public List<Bound> limits() {
    List<Bound> limits = new ArrayList<>();
    if (!wire.isBlank()) {
      limits.add(Bound.WIRE);
    }
    if (metalG.isPresent()) {
      limits.add(Bound.METAL);
    }
    if (money.isPresent()) {
      limits.add(Bound.MONEY);
    }
    if (hours.isPresent()) {
      limits.add(Bound.HOURS);
    }
    return limits;
  }

  /** How much there is of a limit that was said; wire is its lengths and has no one number. */
  public double amount(Bound limit) {
    return switch (limit) {
      case WIRE -> Double.POSITIVE_INFINITY;
      case METAL -> metalG.orElse(Double.POSITIVE_INFINITY);
      case MONEY -> money.orElse(Double.POSITIVE_INFINITY);
      case HOURS -> hours.orElse(Double.POSITIVE_INFINITY);
    };
  }
}
