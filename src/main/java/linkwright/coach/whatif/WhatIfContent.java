package linkwright.coach.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Table;
import linkwright.plan.Plan;
import linkwright.plan.WireToOrder;
import linkwright.quantity.Decimals;
import linkwright.quantity.SaidIn;
import linkwright.quantity.UnitStyle;
import linkwright.standing.Quote;
import linkwright.standing.Standing;
import linkwright.standing.reach.WhatIf;

/**
 * Variants of one wish in one table, a column each.
 *
 * @param units how amounts are shown
 */
public record WhatIfContent(UnitStyle units) {
  private static final String NONE = "-";

  /** The table, and what is wrong with a variant that comes to nothing. */
  public List<Part> of(List<WhatIf> variants) {
    List<Table.Column> columns = new ArrayList<>(List.of(Table.Column.words("")));
    List<String> legend = new ArrayList<>();
    for (WhatIf each : variants) {
      columns.add(Table.Column.numbers("" + columns.size()));
      legend.add(legend.size() + 1 + ": " + each.says());
    }
    List<Table.Line> lines = new ArrayList<>();
    line(lines, variants, "links", plan -> Integer.toString(plan.links()));
    line(lines, variants, "rings", plan -> Integer.toString(plan.rings()));
    line(lines, variants, "length", plan -> units.roundedBy(plan.lengthMm(), plan.plusMinusMm()));
    line(lines, variants, "chain weighs", plan -> units.mass(plan.massChainG()));
    line(lines, variants, "wire in all", plan -> units.mass(WireToOrder.of(plan).massG()));
    line(
        lines,
        variants,
        "holds",
        plan -> plan.pullIsKnown() ? units.pull(plan.pull().solderedN()) : "-");
    quoted(lines, variants, "hours", quote -> hours(quote.hoursFirst(), quote.hoursPlusMinus()));
    quoted(lines, variants, "hours again", quote -> hours(quote.hoursAgain(), 0));
    if (variants.stream()
        .anyMatch(each -> each.standing().quote().filter(Quote::priced).isPresent())) {
      quoted(lines, variants, "price", WhatIfContent::first);
      quoted(lines, variants, "price again", quote -> money(quote, quote.again().total()));
    }
    if (variants.stream().anyMatch(each -> each.standing().chance().isPresent())) {
      cells(lines, variants, "the wire will do", WhatIfContent::chance);
    }
    List<Part> parts = new ArrayList<>(List.of(new Table(columns, lines, -1)));
    parts.add(Prose.says(String.join("; ", legend) + "."));
    for (WhatIf each : variants) {
      if (each.standing().quote().filter(Quote::lacksMetal).isPresent()) {
        parts.add(Prose.stop(each.says() + ": no price of its metal is known, so none is in it."));
      }
      if (each.standing().counted().plan().isEmpty()) {
        parts.add(Prose.stop(each.says() + ": " + SaidIn.units(why(each.standing()), units)));
      }
    }
    return parts;
  }

  private static String why(Standing standing) {
    return standing.counted().sentence().isEmpty()
        ? standing.counted().troubles().values().stream()
            .findFirst()
            .orElse("there is no plan yet.")
        : standing.counted().sentence();
  }

  private static void line(
      List<Table.Line> lines, List<WhatIf> variants, String label, Function<Plan, String> says) {
    cells(lines, variants, label, standing -> standing.counted().plan().map(says).orElse(NONE));
  }

  private static void quoted(
      List<Table.Line> lines, List<WhatIf> variants, String label, Function<Quote, String> says) {
    if (variants.stream().anyMatch(each -> each.standing().quote().isPresent())) {
      cells(lines, variants, label, standing -> standing.quote().map(says).orElse(NONE));
    }
  }

  private static void cells(
      List<Table.Line> lines,
      List<WhatIf> variants,
      String label,
      Function<Standing, String> says) {
    List<String> cells = new ArrayList<>(List.of(label));
    variants.forEach(each -> cells.add(says.apply(each.standing())));
    lines.add(new Table.Line(cells, List.of(), Emphasis.PLAIN));
  }

  /** How sure it is that links and rings come good from the wire on hand. */
  private static String chance(Standing standing) {
    return standing.chance().isPresent()
        ? Decimals.percent(standing.chance().getAsDouble(), 0)
        : NONE;
  }

  private static String hours(double hours, double plusMinus) {
    String doubt = plusMinus > 0 ? " ± " + Decimals.fixed(plusMinus, 1) : "";
    return Decimals.fixed(hours, 1) + doubt + " h";
  }

  private static String first(Quote quote) {
    return quote.priced() && quote.pricePlusMinus() > 0
        ? "%s ± %s %s"
            .formatted(
                Decimals.fixed(quote.first().total(), 0),
                Decimals.fixed(quote.pricePlusMinus(), 0),
                quote.currency())
        : money(quote, quote.first().total());
  }

  private static String money(Quote quote, double amount) {
    return quote.priced() ? Decimals.money(amount, quote.currency()) : NONE;
  }
}
