package linkwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import linkwright.reference.FinenessRule;
import linkwright.reference.Metal;
import linkwright.reference.Reference;

/** A word where a fineness mark may be needed; never more than a hint to look it up. */
public final class FinenessWord {
  private FinenessWord() {}

  /**
   * What the known rules say of a finished piece, a sentence a country.
   *
   * @param metal the metal
   * @param massG the finished piece, g
   * @param reference the rules
   */
  public static List<String> of(Metal metal, double massG, Reference reference) {
    List<String> words = new ArrayList<>();
    if (metal.finenessPermille().isEmpty()) {
      return words;
    }
    for (FinenessRule rule : reference.finenessRules()) {
      if (rule.family() == metal.family() && rule.compulsory()) {
        words.add(one(rule, massG, metal.finenessPermille().getAsInt()));
      }
    }
    return words;
  }

  /** The countries, of those whose rules are known, in which a piece of that mass needs a mark. */
  public static List<String> needed(Metal metal, double massG, Reference reference) {
    return reference.finenessRules().stream()
        .filter(rule -> rule.family() == metal.family() && rule.needsMark(massG))
        .map(FinenessRule::country)
        .toList();
  }

  /** One sentence that names the substances whose limits a seller should know; empty if none. */
  public static Optional<String> limits(Reference reference) {
    if (reference.limits().isEmpty()) {
      return Optional.empty();
    }
    String named =
        reference.limits().stream()
            .map(limit -> limit.id() + " (" + limit.where() + ": " + limit.source() + ")")
            .collect(Collectors.joining("; "));
    return Optional.of(
        "Limits may apply to what you sell, of " + named + ". Check what applies where you sell.");
  }

  private static String one(FinenessRule rule, double massG, int fineness) {
    String limit =
        rule.exemptBelowG()
            .map(grams -> "%.1f g, the limit is %.2f g".formatted(massG, grams))
            .orElse("there is no limit of weight");
    String mark =
        rule.needsMark(massG)
            ? "a fineness mark is needed to sell it as that metal"
            : "no mark is needed";
    String known =
        rule.finenesses().contains(fineness) ? "" : "; " + fineness + " is no fineness there";
    return rule.country()
        + ": "
        + mark
        + " ("
        + limit
        + known
        + ", as of "
        + rule.date()
        + "). Check what applies where you sell.";
  }
}
