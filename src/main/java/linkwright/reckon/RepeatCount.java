package linkwright.reckon;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import linkwright.link.Bending;
import linkwright.link.Forming;
import linkwright.link.Pattern;
import linkwright.link.Repeat;
import linkwright.link.UsualSizes;
import linkwright.quantity.UnitStyle;

/** A chain counted in whole repeats, such as 3 round + 1 long. */
final class RepeatCount {
  /** The kind that is a ring, not a link. */
  private static final Set<String> RINGS = Set.of("ring");

  private RepeatCount() {}

  static void work(
      Answers answers,
      Outcome outcome,
      Optional<Double> length,
      double claspMm,
      Optional<Double> ring) {
    Optional<Repeat> repeat = answers.read("repeat", Repeat::read);
    if (repeat.isEmpty()) {
      return;
    }
    List<String> kinds = repeat.get().kinds();
    Map<String, Double> inside = new HashMap<>();
    answers
        .read("inside", text -> FormerSizes.readOneEach(text, kinds, "kind"))
        .ifPresent(inside::putAll);
    answers.check(
        "joining",
        !answers.has("joining"),
        "The links of a repeat hook into each other as it says: leave this out.");
    boolean rings = kinds.stream().anyMatch(RINGS::contains);
    answers.check(
        "ring-inside",
        rings || !answers.has("ring-inside"),
        "The repeat has no ring in it: write one, such as 1 long + 1 ring, or leave this out.");
    ring.ifPresent(mm -> kinds.stream().filter(RINGS::contains).forEach(k -> inside.put(k, mm)));
    List<String> usual = new ArrayList<>();
    for (String kind : kinds) {
      if (!inside.containsKey(kind)) {
        usualInside(answers, kind)
            .ifPresent(
                mm -> {
                  inside.put(kind, mm);
                  usual.add(kind + " " + answers.units().length(mm));
                });
      }
      answers.check(
          RINGS.contains(kind) ? "ring-inside" : "inside",
          inside.containsKey(kind),
          "The inside length of “" + kind + "” is not known: give it, as " + kind + "=4 mm.");
    }
    if (answers.wrong()) {
      return;
    }
    answers
        .found("length", repeat.get().counted(inside, length.orElseThrow(), claspMm))
        .ifPresent(
            counted -> {
              put(outcome, counted, inside, length.get());
              told(outcome, answers.units(), counted, length.get(), usual);
            });
  }

  /** What a link of a known pattern adds at the sizes at which it is usually made. */
  private static Optional<Double> usualInside(Answers answers, String kind) {
    return answers.given().patterns().stream()
        .filter(pattern -> pattern.id().equals(kind) && pattern.usual().isPresent())
        .findFirst()
        .flatMap(RepeatCount::usualInside);
  }

  private static Optional<Double> usualInside(Pattern pattern) {
    UsualSizes usual = pattern.usual().orElseThrow();
    return Forming.form(pattern, usual.wireMm(), usual.blankMm(), Map.of(), Bending.TRUE)
        .found()
        .map(link -> link.insideLengthMm());
  }

  private static void put(
      Outcome outcome, Repeat.CountedRepeats counted, Map<String, Double> inside, double wishedMm) {
    Map<String, Long> rings = new HashMap<>(counted.pieces());
    rings.keySet().retainAll(RINGS);
    long count = rings.values().stream().mapToLong(Long::longValue).sum();
    // All rings are alike, so what the chain lacks is shared out among them.
    double exactMm =
        count == 0
            ? 0
            : inside.get(rings.keySet().iterator().next())
                + (wishedMm - counted.lengthMm()) / count;
    ChainSum.put(
        outcome,
        Math.toIntExact(counted.total() - count),
        Math.toIntExact(count),
        counted.lengthMm(),
        counted.oneFewerMm(),
        counted.oneMoreMm(),
        exactMm > 0 ? OptionalDouble.of(exactMm) : OptionalDouble.empty());
  }

  private static void told(
      Outcome outcome,
      UnitStyle units,
      Repeat.CountedRepeats counted,
      double wishedMm,
      List<String> usual) {
    outcome.line(
        Figures.count(counted.repeats(), "repeat")
            + ", "
            + counted.pieces().entrySet().stream()
                .map(each -> each.getValue() + " " + each.getKey())
                .collect(Collectors.joining(" and "))
            + ", come to "
            + units.length(counted.lengthMm())
            + ", "
            + ChainSum.apart(units, counted.lengthMm() - wishedMm)
            + ".");
    ChainSum.besides(outcome, units, counted.oneFewerMm(), counted.oneMoreMm(), "repeat");
    if (!usual.isEmpty()) {
      outcome.line(
          "Inside lengths as these patterns are usually made: " + String.join(", ", usual) + ".");
    }
  }
}
