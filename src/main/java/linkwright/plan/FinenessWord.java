package linkwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import linkwright.quantity.Decimals;
import linkwright.quantity.UnitStyle;
import linkwright.reference.FinenessRule;
import linkwright.reference.Metal;
import linkwright.reference.Reference;
import linkwright.reference.Solder;

/** A word where a fineness mark may be needed; never more than a hint to look it up. */
public final class FinenessWord {
  private FinenessWord() {}

  /**
   * What the known rules say of a finished piece, a sentence a country.
   *
   * @param metal the metal
   * @param massG the finished piece, g
   * @param reference the rules
   * @param units those in which masses are told; what a law says in grams stands beside
   * @param soldered whether it has joints that take solder; else nothing is said of solder
   */
  public static List<String> of(
      Metal metal, double massG, Reference reference, UnitStyle units, boolean soldered) {
    List<String> words = new ArrayList<>();
    if (metal.finenessPermille().isEmpty()) {
      return words;
    }
    for (FinenessRule rule : reference.finenessRules()) {
      if (rule.family() == metal.family() && rule.compulsory()) {
        words.add(one(rule, massG, metal, reference, units, soldered));
      }
    }
    return words;
  }

  /**
   * How well a mass is known before the chain is weighed, as a share: wire of one per cent more is
   * two per cent heavier. Common practice, no source.
   */
  private static final double MASS_DOUBT = 0.02;

  /**
   * What the rules known say of a mark, in a few words: where it is needed, where the weight is too
   * near the limit to say, or that it is not needed; empty where no rule is known.
   */
  public static Optional<String> inShort(Metal metal, double massG, Reference reference) {
    List<FinenessRule> all =
        reference.finenessRules().stream()
            .filter(rule -> rule.family() == metal.family() && rule.compulsory())
            .toList();
    if (all.isEmpty() || metal.finenessPermille().isEmpty()) {
      return Optional.empty();
    }
    int fineness = metal.finenessPermille().getAsInt();
    List<FinenessRule> rules =
        all.stream().filter(rule -> rule.markedAs(fineness).isPresent()).toList();
    List<String> needed =
        countries(
            rules,
            rule -> !near(rule, rule.weighedG(massG, fineness)) && rule.needsMark(massG, fineness));
    List<String> near = countries(rules, rule -> near(rule, rule.weighedG(massG, fineness)));
    List<String> words = new ArrayList<>();
    if (!needed.isEmpty()) {
      words.add("needed: " + String.join(", ", needed));
    }
    List<String> below = countries(all, rule -> rule.markedAs(fineness).isEmpty());
    if (!below.isEmpty()) {
      words.add("too low to be sold as " + metal.family().word() + ": " + String.join(", ", below));
    }
    if (!near.isEmpty()) {
      words.add("near the limit: " + String.join(", ", near));
    }
    return Optional.of(words.isEmpty() ? "not needed" : String.join("; ", words));
  }

  private static String mass(double grams, UnitStyle units) {
    return units == UnitStyle.METRIC ? Decimals.fixed(grams, 2) + " g" : units.mass(grams);
  }

  /** A limit as the law says it, in grams; before that in the user's unit. */
  public static String limit(double grams, UnitStyle units) {
    String law = Decimals.fixed(grams, 2) + " g";
    return units == UnitStyle.METRIC ? law : units.mass(grams) + " (" + law + ")";
  }

  private static boolean near(FinenessRule rule, double massG) {
    return rule.exemptBelowG()
        .filter(limit -> Math.abs(massG - limit) <= MASS_DOUBT * massG)
        .isPresent();
  }

  private static List<String> countries(List<FinenessRule> rules, Predicate<FinenessRule> which) {
    return rules.stream().filter(which).map(FinenessRule::country).toList();
  }

  /** One sentence that names the substances whose limits a seller should know; empty if none. */
  public static Optional<String> limits(Reference reference) {
    if (reference.limits().isEmpty()) {
      return Optional.empty();
    }
    String named =
        reference.limits().stream()
            .map(limit -> limit.id() + ": " + limit.where() + ", " + limit.source())
            .collect(Collectors.joining("; "));
    return Optional.of(
        "Limits may apply to what you sell, of " + named + ". Check what applies where you sell.");
  }

  private static String one(
      FinenessRule rule,
      double massG,
      Metal metal,
      Reference reference,
      UnitStyle units,
      boolean soldered) {
    int fineness = metal.finenessPermille().orElseThrow();
    String limit =
        rule.exemptBelowG()
            .map(
                grams ->
                    "%s%s, the limit is %s"
                        .formatted(
                            mass(rule.weighedG(massG, fineness), units),
                            rule.ofContained() ? " of the metal itself" : "",
                            limit(grams, units)))
            .orElse("there is no limit of weight");
    String mark =
        near(rule, rule.weighedG(massG, fineness))
            ? "weigh it: it is too near the limit to say whether a fineness mark is needed"
            : rule.needsMark(massG, fineness)
                ? "a fineness mark is needed to sell it as that metal"
                : "no mark is needed";
    String known =
        rule.markedAs(fineness)
            .map(marked -> marked == fineness ? "" : "; " + fineness + " is marked as " + marked)
            .orElse("; " + fineness + " is below its least fineness, not to be sold as that metal");
    return rule.country()
        + ": "
        + mark
        + " ("
        + limit
        + known
        + ", as of "
        + rule.date()
        + ")."
        + rule.markedAs(fineness)
            .filter(marked -> soldered)
            .flatMap(rule::solderAtLeast)
            .map(least -> solder(rule, least, metal, reference))
            .orElse("")
        + " Check what applies where you sell.";
  }

  /** Which grades of solder are fine enough and flow before the metal itself melts. */
  private static String solder(FinenessRule rule, int least, Metal metal, Reference reference) {
    String fine =
        reference.soldersFor(rule.family()).stream()
            .filter(solder -> solder.isAsFineAs(least) && !SolderHeat.tooHot(metal, solder))
            .map(Solder::grade)
            .filter(grade -> !grade.isEmpty())
            .distinct()
            .collect(Collectors.joining(", "));
    return " Solder has to be at least "
        + least
        + " of 1000"
        + (fine.isEmpty()
            ? "."
            : " for the mark: " + fine + " are, by these figures; the maker's sheet decides.");
  }
}
