package linkwright.coach.again;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Row;
import linkwright.coach.content.Rows;
import linkwright.coach.kernel.Clock;
import linkwright.job.Accounts;
import linkwright.plan.Plan;
import linkwright.plan.WireToOrder;
import linkwright.quantity.Decimals;
import linkwright.quantity.UnitStyle;
import linkwright.standing.Closing;
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
  private static final double SECONDS_PER_HOUR = 3600;

  /** The parts, in the order in which they are read. */
  public List<Part> of(MadeAgain again, Standing standing) {
    List<Part> parts = new ArrayList<>();
    List<Row> rows = new ArrayList<>();
    standing.counted().plan().ifPresent(plan -> chain(rows, plan));
    again
        .earlier()
        .ifPresentOrElse(
            earlier -> work(rows, earlier, again, standing), () -> quoted(rows, standing));
    parts.add(new Rows(rows));
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

  private void chain(List<Row> rows, Plan plan) {
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
    rows.add(Row.of("it weighs", units.mass(order.massG())));
  }

  private void work(List<Row> rows, Closing earlier, MadeAgain again, Standing standing) {
    if (earlier.hours() > 0) {
      rows.add(Row.of("the first took", Clock.spoken(earlier.hours() * SECONDS_PER_HOUR)));
      double second = Math.max(0, earlier.hours() - earlier.trialHours());
      rows.add(Row.of("without trials", Clock.spoken(second * SECONDS_PER_HOUR)));
    }
    if (!accounts.prices().isEmpty()) {
      rows.add(Row.of("its price", money(earlier.first().total())));
      rows.add(Row.of("made again", madeAgain(earlier, again, standing)));
    }
  }

  /** Of an earlier one that was never made nothing is told: what this one costs is reckoned. */
  private void quoted(List<Row> rows, Standing standing) {
    if (!accounts.prices().isEmpty()) {
      rows.add(Row.of("made again", reckoned(standing)));
    }
  }

  /** In another metal or wire by the new plan and the prices known for it; never by the old. */
  private String madeAgain(Closing earlier, MadeAgain again, Standing standing) {
    if (again.anew().isEmpty()) {
      return money(earlier.again().total());
    }
    return reckoned(standing);
  }

  private static String reckoned(Standing standing) {
    return standing
        .quote()
        .filter(quote -> quote.priced() && !quote.lacksMetal())
        .map(quote -> Decimals.money(quote.again().total(), quote.currency()))
        .orElse("not known: no price for this metal");
  }

  private String money(double amount) {
    return Decimals.money(amount, accounts.currency());
  }
}
