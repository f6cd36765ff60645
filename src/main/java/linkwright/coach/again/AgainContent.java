package linkwright.coach.again;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Row;
import linkwright.coach.content.Rows;
import linkwright.coach.form.ForecastWords;
import linkwright.coach.kernel.Clock;
import linkwright.job.Accounts;
import linkwright.plan.Plan;
import linkwright.plan.WireToOrder;
import linkwright.quantity.Decimals;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Metal;
import linkwright.standing.Closing;
import linkwright.standing.Quote;
import linkwright.standing.Standing;
import linkwright.standing.again.MadeAgain;

/**
 * What a chain made again comes to: the counts, what to order, the time and money of the first
 * beside those of this one, what carries over and what is to be tried anew.
 *
 * @param units how amounts are shown
 * @param accounts the earlier job's money
 */
public record AgainContent(UnitStyle units, Accounts accounts) {
  /** A chain that is neither weighed nor closed has cost nothing that could be told. */
  private static final String NOT_YET = "not known yet: it is not weighed";

  /** The parts, in the order in which they are read. */
  public List<Part> of(MadeAgain again, Standing standing) {
    List<Part> parts = new ArrayList<>();
    List<Row> rows = new ArrayList<>();
    standing.counted().plan().ifPresent(plan -> chain(rows, plan));
    again.earlier().ifPresent(earlier -> work(rows, earlier, again));
    standing.quote().ifPresent(quote -> quoted(rows, quote));
    parts.add(new Rows(rows));
    again.earlier().flatMap(first -> ofThePrice(first, again)).ifPresent(parts::add);
    if (!standing.counted().sentence().isEmpty()) {
      parts.add(Prose.stop(standing.counted().saidIn(units).sentence()));
    }
    list(parts, "To be tried anew:", again.anew());
    list(parts, "Carries over:", again.carries());
    return parts;
  }

  private static void list(List<Part> parts, String head, List<String> sentences) {
    if (!sentences.isEmpty()) {
      parts.add(new Prose(Prose.Kind.MAIN, head));
      sentences.forEach(each -> parts.add(Prose.says(each)));
    }
  }

  /** What the first one's price holds, where it is no measure of what is made now. */
  private Optional<Part> ofThePrice(Closing earlier, MadeAgain again) {
    boolean untimed = earlier.hours() <= 0;
    boolean other = again.inAnotherMetal();
    if (accounts.prices().isEmpty() || earlier.first().lines().isEmpty() || !(untimed || other)) {
      return Optional.empty();
    }
    return Optional.of(
        Prose.says(
            "The first one's price is"
                + (other ? " of its own metal, " + again.firstMetal() : "")
                + (untimed && other ? ", and" : "")
                + (untimed ? " without any work: none of its hours were timed." : ".")));
  }

  private void chain(List<Row> rows, Plan plan) {
    Metal metal = plan.wish().metal();
    rows.add(
        Row.of("metal", metal.name())
            .remark(Decimals.upTo(metal.densityGCm3().value(), 2) + " g/cm³"));
    rows.add(Row.of("links", Integer.toString(plan.links())).with(Emphasis.MAIN));
    if (plan.rings() > 0) {
      rows.add(Row.of("rings", Integer.toString(plan.rings())).with(Emphasis.MAIN));
    }
    rows.add(
        Row.of("length", units.about(plan.lengthMm(), plan.plusMinusMm())).with(Emphasis.MAIN));
    rows.add(Row.of("chain weighs", units.mass(plan.massChainG())).with(Emphasis.MAIN));
    if (plan.linkBlankMm() > 0) {
      rows.add(Row.of("link blank", units.length(plan.linkBlankMm())));
    }
    WireToOrder order = WireToOrder.of(plan);
    rows.add(Row.of("wire to take", units.length(order.linksMm())));
    if (order.ringsMm() > 0) {
      rows.add(Row.of("for rings", units.length(order.ringsMm())));
    }
    rows.add(Row.of("all wire weighs", units.mass(order.massG())));
  }

  /** What the first one took and cost, and what of that was no trial. */
  private void work(List<Row> rows, Closing earlier, MadeAgain again) {
    if (earlier.hours() > 0) {
      rows.add(Row.of("the first took", Clock.spoken(earlier.seconds())));
      rows.add(Row.of("without trials", Clock.spoken(earlier.secondsWithoutTrials())));
    }
    if (!accounts.prices().isEmpty()) {
      boolean priced = !earlier.first().lines().isEmpty();
      rows.add(Row.of("first's price", priced ? money(earlier.first().total()) : NOT_YET));
      if (again.anew().isEmpty() && priced) {
        rows.add(Row.of("without trials", money(earlier.again().total())));
      }
    }
  }

  /** What this one is reckoned to take and cost, as its own plan will tell it. */
  private void quoted(List<Row> rows, Quote quote) {
    rows.add(Row.of("hours again", ForecastWords.hoursAgain(quote)));
    if (!accounts.prices().isEmpty() || quote.priced()) {
      rows.add(
          Row.of(
              "made again",
              quote.priced() && !quote.lacksMetal()
                  ? ForecastWords.priceAgain(quote)
                  : "not known: no price for this metal"));
    }
  }

  private String money(double amount) {
    return Decimals.money(amount, accounts.currency());
  }
}
