package linkwright.coach.wire;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.plan.ChainWish;
import linkwright.quantity.Length;
import linkwright.quantity.Read;
import linkwright.quantity.UnitStyle;
import linkwright.routine.PieceKind;
import linkwright.standing.stock.DrawnDown;
import linkwright.standing.stock.PlannedWire;

/**
 * Thicker wire drawn down to the wire the plan asks for: the passes, the anneals between them, and
 * how much rod to begin with.
 *
 * @param troubles field → what is wrong with it
 * @param sum what it takes in all; empty while something is wrong or missing
 * @param warnings what to mind about it
 * @param passes the pulls, in order
 */
public record DrawDown(
    Map<String, String> troubles,
    String sum,
    List<String> warnings,
    List<DrawnDown.DrawnPass> passes) {
  /** Nothing typed. */
  static final DrawDown NOTHING = troubled(Map.of());

  public DrawDown {
    warnings = List.copyOf(warnings);
    passes = List.copyOf(passes);
  }

  private static DrawDown troubled(Map<String, String> troubles) {
    return new DrawDown(troubles, "", List.of(), List.of());
  }

  /** Whether there is no result yet. */
  boolean none() {
    return sum.isEmpty();
  }

  /** What the texts of the form come to. */
  static DrawDown of(Map<String, String> texts, ChainWish wish, UnitStyle units) {
    Map<String, String> troubles = new LinkedHashMap<>();
    Optional<Double> from = one(texts, "from", troubles, Length::readWire);
    Optional<Double> length = one(texts, "length", troubles, Length::readSize);
    Optional<Double> pointing = one(texts, "pointing", troubles, Length::read);
    Read<List<Length>> holes = Length.readWireList(texts.getOrDefault("holes", ""));
    if (!texts.getOrDefault("holes", "").isBlank()) {
      holes.problem().ifPresent(sentence -> troubles.put("holes", sentence));
    }
    if (!troubles.isEmpty() || from.isEmpty() || length.isEmpty() || !holes.isGood()) {
      return troubled(troubles);
    }
    double to =
        PlannedWire.mm(new PieceKind(texts.getOrDefault("piece", PieceKind.LINK.id())), wish);
    if (to > from.get()) {
      troubles.put(
          "from",
          "The plan's wire is "
              + units.wire(to)
              + ": a drawplate only makes wire thinner. Start from thicker wire.");
      return troubled(troubles);
    }
    Read<DrawnDown> drawn =
        DrawnDown.of(
            holes.orThrow().stream().map(Length::mm).toList(),
            from.get(),
            to,
            length.get(),
            pointing.orElse(0.0),
            wish.metal());
    drawn.problem().ifPresent(sentence -> troubles.put("holes", sentence));
    return drawn
        .map(
            found ->
                new DrawDown(
                    troubles,
                    sum(found, from.get(), to, length.get(), units),
                    found.warnings(),
                    found.passes()))
        .orElse(troubled(troubles));
  }

  private interface Reading {
    Read<Length> of(String text);
  }

  private static Optional<Double> one(
      Map<String, String> texts, String id, Map<String, String> troubles, Reading reading) {
    String text = texts.getOrDefault(id, "").strip();
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Read<Length> read = reading.of(text);
    read.problem().ifPresent(sentence -> troubles.put(id, sentence));
    return read.map(Length::mm).found();
  }

  private static String sum(
      DrawnDown drawn, double from, double to, double lengthMm, UnitStyle units) {
    return units.length(lengthMm)
        + " of "
        + units.wire(to)
        + ": begin with "
        + units.length(drawn.rodMm())
        + " of "
        + units.wire(from)
        + ", annealed ("
        + units.mass(drawn.rodG())
        + "); "
        + many(drawn.passes().size(), "pass", "passes")
        + ", "
        + (drawn.anneals() == 0 ? "no anneal between" : many(drawn.anneals(), "anneal", "anneals"));
  }

  private static String many(int count, String one, String more) {
    return count + " " + (count == 1 ? one : more);
  }
}
