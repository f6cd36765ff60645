package linkwright.bench;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import linkwright.quantity.UnitStyle;

/**
 * A maker's bench as she described it. All of it may be missing: then each job asks as if nobody
 * had ever worked here.
 *
 * @param name what she calls it
 * @param persons who works there, each in her own words
 * @param units how she writes amounts
 * @param formersMm plier steps and mandrels under her own names → inside diameter, mm
 * @param plateMm the drawplate's holes, mm, as she lists them
 * @param kerfMm what her saw takes, mm
 * @param flame her torch and gas
 * @param pickle her pickle
 * @param solders the solders she has
 * @param prices her prices
 * @param losses stage, or {@code all} → share of pieces that she loses there
 * @param redos stage, or {@code all} → share of joints that she does again
 * @param fireWatchSeconds how long she watches after the last heat, s
 * @param waitSeconds her own waits by id or name, s
 * @param tools the tools that she has; empty where she listed none
 */
public record OwnBench(
    String name,
    List<String> persons,
    Optional<UnitStyle> units,
    Map<String, Double> formersMm,
    List<Double> plateMm,
    OptionalDouble kerfMm,
    Flame flame,
    Pickle pickle,
    List<OwnSolder> solders,
    OwnPrices prices,
    Map<String, Double> losses,
    Map<String, Double> redos,
    OptionalLong fireWatchSeconds,
    Map<String, Long> waitSeconds,
    List<String> tools) {
  /** The bench of someone who described none. */
  public static final OwnBench NONE =
      new OwnBench(
          "",
          List.of(),
          Optional.empty(),
          Map.of(),
          List.of(),
          OptionalDouble.empty(),
          Flame.NOT_SAID,
          Pickle.NOT_SAID,
          List.of(),
          OwnPrices.NONE,
          Map.of(),
          Map.of(),
          OptionalLong.empty(),
          Map.of(),
          List.of());

  /** Copies the collections, in her order. */
  public OwnBench {
    persons = List.copyOf(persons);
    formersMm = ordered(formersMm);
    plateMm = List.copyOf(plateMm);
    solders = List.copyOf(solders);
    losses = ordered(losses);
    redos = ordered(redos);
    waitSeconds = ordered(waitSeconds);
    tools = List.copyOf(tools);
  }

  /** The same with other prices. */
  public OwnBench with(OwnPrices other) {
    return new OwnBench(
        name,
        persons,
        units,
        formersMm,
        plateMm,
        kerfMm,
        flame,
        pickle,
        solders,
        other,
        losses,
        redos,
        fireWatchSeconds,
        waitSeconds,
        tools);
  }

  /** The same with other losses, redos and waits. */
  public OwnBench with(
      Map<String, Double> lost, Map<String, Double> redone, Map<String, Long> waits) {
    return new OwnBench(
        name,
        persons,
        units,
        formersMm,
        plateMm,
        kerfMm,
        flame,
        pickle,
        solders,
        prices,
        lost,
        redone,
        fireWatchSeconds,
        waits,
        tools);
  }

  /** The share of pieces that she loses in all; empty where she said none. */
  public OptionalDouble loss() {
    return inAll(losses);
  }

  /** The share of joints that she does again, whatever the stage; empty where she said none. */
  public OptionalDouble redo() {
    return inAll(redos);
  }

  /** What goes wrong at one stage never comes to the next. */
  private static OptionalDouble inAll(Map<String, Double> byStage) {
    Double all = byStage.get("all");
    return all != null
        ? OptionalDouble.of(all)
        : byStage.isEmpty()
            ? OptionalDouble.empty()
            : OptionalDouble.of(
                1 - byStage.values().stream().reduce(1.0, (good, gone) -> good * (1 - gone)));
  }

  static <T> Map<String, T> ordered(Map<String, T> map) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(map));
  }
}
