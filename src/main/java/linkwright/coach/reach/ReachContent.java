package linkwright.coach.reach;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Table;
import linkwright.plan.Plan;
import linkwright.quantity.Decimals;
import linkwright.quantity.UnitStyle;
import linkwright.standing.reach.Bound;
import linkwright.standing.reach.OnHand;
import linkwright.standing.reach.WithinReach;

/**
 * The longest chain and the heaviest wire by each limit, and which of them bind.
 *
 * @param units how amounts are shown
 * @param currency the money prices are in; may be empty
 */
public record ReachContent(UnitStyle units, String currency) {
  private static final String NONE = "none";
  private static final Pattern UNIT = Pattern.compile("\\d\\s*\\p{L}");
  private static final Pattern METRIC = Pattern.compile("\\d\\s*(?:mg|g|kg)\\b");

  /** All of it; typed is what there is, by the words of the limits. */
  public List<Part> of(WithinReach reach, Map<String, String> typed) {
    if (!reach.trouble().isEmpty()) {
      return List.of(Prose.stop(reach.trouble()));
    }
    List<Table.Line> lines = new ArrayList<>();
    for (WithinReach.Within each : reach.each()) {
      Bound limit = each.limits().get(0);
      lines.add(
          Table.Line.of(
              limit.word(),
              there(limit, typed.getOrDefault(limit.word(), ""), reach.there()),
              chain(each),
              takes(limit, each.taken()),
              heaviest(each)));
    }
    List<Part> parts = new ArrayList<>();
    parts.add(
        new Table(
            List.of(
                Table.Column.words(""),
                Table.Column.words("there is"),
                Table.Column.words("longest chain"),
                Table.Column.words("it takes"),
                Table.Column.numbers("heaviest wire")),
            lines,
            -1));
    reach.unknown().forEach(sentence -> parts.add(Prose.stop(sentence)));
    parts.add(Prose.says(together(reach)));
    reach
        .together()
        .longest()
        .ifPresent(
            plan ->
                parts.add(
                    Prose.says(
                        "It has "
                            + counted(plan.links(), "link")
                            + (plan.rings() > 0 ? ", " + counted(plan.rings(), "ring") : "")
                            + " and weighs "
                            + units.mass(plan.massChainG())
                            + ", clasp in it.")));
    parts.add(
        Prose.aside(
            "Each chain is begun from nothing, kerf and spares for the usual loss in it. The"
                + " heaviest wire is for the length as wished, with the link's length and width;"
                + " wire that is there is drawn thinner, never thicker, and what pointing its end"
                + " costs comes off."));
    return parts;
  }

  /** As it was typed; a mass in the other system's unit first in hers, as what it takes is told. */
  private String there(Bound limit, String typed, OnHand there) {
    boolean metric = METRIC.matcher(typed).find();
    boolean theirs = UNIT.matcher(typed).find() && metric == (units == UnitStyle.INCH);
    return limit == Bound.METAL && theirs && Double.isFinite(there.amount(limit))
        ? units.mass(there.amount(limit)) + " (" + typed + ")"
        : typed;
  }

  private static String counted(int count, String what) {
    return count + " " + what + (count == 1 ? "" : "s");
  }

  private String together(WithinReach reach) {
    WithinReach.Within all = reach.together();
    String of = reach.each().size() == 1 ? "" : "From all of it: ";
    if (all.longest().isEmpty()) {
      return capital(
          of
              + "not even one link, or one repeat, can be had"
              + (reach.binding().isEmpty() ? "." : ": " + tooLittle(reach) + "."));
    }
    String wire =
        all.heaviestSaid(units).isPresent()
            ? "; the heaviest wire for the length wished " + all.heaviestSaid(units).get()
            : "; the length wished can be had in no wire";
    String longest = of + "the longest chain " + length(all.longest().get(), false);
    if (all.unbounded()) {
      return capital(longest + " or more" + wire + ". Nothing of it binds.");
    }
    String more =
        reach.onceMore().entrySet().stream()
            .map(each -> more(each.getKey(), each.getValue(), reach.there()))
            .collect(Collectors.joining(", "));
    return capital(
        longest
            + wire
            + ". "
            + bind(reach)
            + (more.isEmpty()
                ? "."
                : ": one " + grows(all.longest().get()) + " more takes " + more + "."));
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  private static String tooLittle(WithinReach reach) {
    return reach.binding().stream()
        .map(bound -> (bound == Bound.HOURS ? "too few " : "too little ") + bound.word())
        .collect(Collectors.joining(" and "));
  }

  /** By what a chain grows. */
  private static String grows(Plan plan) {
    return plan.sized() ? "repeat" : "link";
  }

  private static String words(WithinReach reach) {
    return reach.binding().stream().map(Bound::word).collect(Collectors.joining(" and "));
  }

  private static String bind(WithinReach reach) {
    String words = words(reach);
    boolean many = reach.binding().size() > 1 || reach.binding().contains(Bound.HOURS);
    return (words.isEmpty() ? "All together" : capital(words))
        + (words.isEmpty() || many ? " bind" : " binds");
  }

  private String chain(WithinReach.Within each) {
    return each.longest()
        .map(plan -> counted(plan.links(), "link") + ", " + length(plan, each.unbounded()))
        .orElse(NONE);
  }

  private String length(Plan plan, boolean unbounded) {
    return units.roundedBy(plan.lengthMm(), plan.plusMinusMm()) + (unbounded ? " or more" : "");
  }

  private String heaviest(WithinReach.Within each) {
    return each.heaviestSaid(units).orElse(NONE);
  }

  /** More than there is, in words that say so where rounding hides it. */
  private String more(Bound limit, double amount, OnHand there) {
    String takes = takes(limit, OptionalDouble.of(amount));
    double least = there.amount(limit);
    boolean hidden = Double.isFinite(least) && takes.equals(takes(limit, OptionalDouble.of(least)));
    return (hidden ? "a little over " : "") + takes;
  }

  private String takes(Bound limit, OptionalDouble taken) {
    if (taken.isEmpty()) {
      return "";
    }
    double amount = taken.getAsDouble();
    return switch (limit) {
      case WIRE -> units.length(amount);
      case METAL -> units.mass(amount);
      case MONEY -> Decimals.money(amount, currency);
      case HOURS -> Decimals.fixed(amount, 1) + " h";
    };
  }
}
