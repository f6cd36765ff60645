package linkwright.fit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import linkwright.quantity.UnitStyle;

/**
 * The blank and formers to take next.
 *
 * @param blankMm the blank's length
 * @param formersMm the formers' inside diameters by name, all of the pattern's
 * @param expected what this is expected to become
 * @param wish what was wished
 * @param reach how near in size that comes
 * @param overlapMm how deep the wire would press into itself; 0 if no deeper than a tip that is to
 *     lie against the stem may seem to, a quarter of the wire
 * @param instead formers that would reach the wish without pressing wire into wire, whether owned
 *     or not; only where these do not, and some would
 */
public record Proposal(
    double blankMm,
    Map<String, Double> formersMm,
    Expected expected,
    LinkSize wish,
    Reach reach,
    double overlapMm,
    Optional<Map<String, Double>> instead) {
  /** Keeps the formers in their order. */
  public Proposal {
    formersMm = Collections.unmodifiableMap(new LinkedHashMap<>(formersMm));
    instead = instead.map(sizes -> Collections.unmodifiableMap(new LinkedHashMap<>(sizes)));
  }

  /** What cannot be had and what can, in sentences; empty if the wish is reached. */
  public Optional<String> shortfall(UnitStyle style) {
    List<String> sentences = new ArrayList<>();
    if (reach != Reach.REACHED) {
      sentences.add(
          "A link of "
              + style.length(wish.lengthMm())
              + " by "
              + style.length(wish.widthMm())
              + " cannot be had over "
              + named(formersMm, style)
              + "; the nearest is "
              + style.length(expected.lengthMm())
              + " by "
              + style.length(expected.widthMm())
              + ".");
    }
    if (overlapMm > 0) {
      sentences.add(
          "Over "
              + named(formersMm, style)
              + " the wire presses "
              + style.length(overlapMm)
              + " into itself.");
    }
    if (sentences.isEmpty()) {
      return Optional.empty();
    }
    sentences.add(
        instead.map(sizes -> "Take " + named(sizes, style) + ".").orElseGet(this::giveWay));
    return Optional.of(String.join(" ", sentences));
  }

  /** Where no formers would do, the wish has to give way. */
  private String giveWay() {
    return "No formers give that: "
        + switch (reach) {
          case TOO_LONG -> "wish for a longer link.";
          case TOO_SHORT -> "wish for a shorter link.";
          case WIDTH_OFF ->
              expected.widthMm() > wish.widthMm()
                  ? "wish for a wider link, or a longer one."
                  : "wish for a narrower link, or a longer one.";
          case REACHED -> "wish for a longer or a wider link, or turn the tips less.";
        };
  }

  private static String named(Map<String, Double> formersMm, UnitStyle style) {
    return formersMm.entrySet().stream()
        .map(each -> each.getKey() + " " + style.length(each.getValue()))
        .collect(Collectors.joining(", "));
  }
}
