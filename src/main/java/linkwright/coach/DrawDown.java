package linkwright.coach;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.plan.ChainWish;
import linkwright.quantity.Length;
import linkwright.quantity.Read;
import linkwright.quantity.UnitStyle;
import linkwright.wire.DrawPlan;
import linkwright.wire.Drawing;
import linkwright.wire.Pass;
import linkwright.wire.WireMass;
import linkwright.wire.WireSection;

/**
 * Thicker wire drawn down to the wire the plan asks for: the passes, the anneals between them, and
 * how much rod to begin with.
 *
 * @param troubles field → what is wrong with it
 * @param lines the result, the sum of it first; empty while something is wrong or missing
 */
record DrawDown(Map<String, String> troubles, List<String> lines) {
  DrawDown {
    lines = List.copyOf(lines);
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
      return new DrawDown(troubles, List.of());
    }
    double to = toMm(texts.getOrDefault("piece", "link"), wish);
    if (to > from.get()) {
      troubles.put(
          "from",
          "The plan's wire is "
              + units.wire(to)
              + ": a drawplate only makes wire thinner. Start from thicker wire.");
      return new DrawDown(troubles, List.of());
    }
    Read<DrawPlan> plan =
        Drawing.passes(
            holes.orThrow().stream().map(Length::mm).toList(),
            from.get(),
            to,
            wish.metal().reductionShare().value(),
            pointing.orElse(0.0));
    plan.problem().ifPresent(sentence -> troubles.put("holes", sentence));
    return new DrawDown(
        troubles,
        plan.map(found -> lines(found, from.get(), to, length.get(), wish, units))
            .found()
            .orElse(List.of()));
  }

  /** The wire that the plan asks for that kind of piece, mm. */
  static double toMm(String piece, ChainWish wish) {
    return piece.equals("ring")
        ? wish.ring().map(ring -> ring.wireMm()).orElse(wish.wireMm())
        : wish.wireMm();
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

  private static List<String> lines(
      DrawPlan plan, double from, double to, double lengthMm, ChainWish wish, UnitStyle units) {
    List<String> lines = new ArrayList<>();
    double rod = plan.rodLengthMm(lengthMm);
    double grams =
        WireMass.grams(WireSection.round(from).areaMm2(), rod, wish.metal().densityGCm3().value());
    int anneals = plan.annealBeforeMm().size();
    lines.add(
        units.length(lengthMm)
            + " of "
            + units.wire(to)
            + ": begin with "
            + units.length(rod)
            + " of "
            + units.wire(from)
            + ", annealed ("
            + units.mass(grams)
            + "); "
            + many(plan.passes().size(), "pass", "passes")
            + ", "
            + (anneals == 0 ? "no anneal between" : many(anneals, "anneal", "anneals")));
    lines.addAll(plan.warnings());
    int number = 1;
    for (Pass pass : plan.passes()) {
      if (pass.annealBefore()) {
        lines.add("   anneal, quench, pickle, dry");
      }
      lines.add(
          "%2d  through %s   takes off %d %%, since the anneal %d %%"
              .formatted(
                  number,
                  units.wire(pass.toMm()),
                  Math.round(pass.reduction() * 100),
                  Math.round(pass.cumulativeSinceAnneal() * 100)));
      number++;
    }
    return lines;
  }

  private static String many(int count, String one, String more) {
    return count + " " + (count == 1 ? one : more);
  }
}
