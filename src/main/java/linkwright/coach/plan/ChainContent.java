package linkwright.coach.plan;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Row;
import linkwright.coach.content.Rows;
import linkwright.plan.ChainWish;
import linkwright.plan.FinenessWord;
import linkwright.plan.Plan;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Reference;
import linkwright.routine.TradeWords;

/**
 * What the plan of a chain comes to: the figures one decides by, what to mind, then all that is
 * needed at the bench.
 *
 * @param units how amounts are shown
 * @param words whose trade words
 * @param reference where fineness rules are looked up
 * @param solders whether the joints take solder
 */
public record ChainContent(
    UnitStyle units, TradeWords words, Reference reference, boolean solders) {

  /** What it comes to. */
  public List<Part> of(Plan plan) {
    List<Part> parts = new ArrayList<>();
    parts.add(new Rows(figures(plan)));
    plan.remarks().forEach(each -> parts.add(Prose.stop(words.show(each))));
    FinenessWord.of(plan.wish().metal(), plan.massChainG(), reference)
        .forEach(each -> parts.add(Prose.says(words.show(each))));
    parts.addAll(new ChainDetails(units, words, solders).of(plan));
    return parts;
  }

  private List<Row> figures(Plan plan) {
    List<Row> rows = new ArrayList<>();
    rows.add(row("links", Integer.toString(plan.links())).with(Emphasis.MAIN));
    if (plan.rings() > 0) {
      rows.add(row("rings", Integer.toString(plan.rings())).with(Emphasis.MAIN));
    }
    rows.add(row("length", units.length(plan.lengthMm())).with(Emphasis.MAIN));
    rows.add(row("wished", units.length(plan.wish().finishedMm())));
    rows.add(row("chain weighs", units.mass(plan.massChainG())).with(Emphasis.MAIN));
    mark(rows, plan);
    int remarks = plan.remarks().size();
    if (remarks > 0) {
      String things = remarks == 1 ? "1 thing, below" : remarks + " things, below";
      rows.add(row("mind", things).with(Emphasis.TROUBLE));
    }
    String fewer =
        plan.oneFewerMm().isPresent() ? units.length(plan.oneFewerMm().getAsDouble()) : "none";
    rows.add(row("one fewer", fewer));
    rows.add(row("one more", units.length(plan.oneMoreMm())));
    plan.exactRingInsideMm().ifPresent(mm -> rows.add(row("exact ring", units.length(mm))));
    sizes(rows, plan);
    wire(rows, plan);
    rows.add(row("holds", "%.0f N".formatted(plan.pull().solderedN())));
    return rows;
  }

  /** Where a fineness mark is needed; the sentences with the limits come after the figures. */
  private void mark(List<Row> rows, Plan plan) {
    if (plan.wish().metal().finenessPermille().isPresent()) {
      List<String> needed = FinenessWord.needed(plan.wish().metal(), plan.massChainG(), reference);
      String where = needed.isEmpty() ? "none known" : "needed: " + String.join(", ", needed);
      rows.add(row("mark", where));
    }
  }

  private void sizes(List<Row> rows, Plan plan) {
    rows.add(row("link blank", units.length(plan.linkBlankMm())));
    rows.add(row("link inside", units.length(plan.linkInsideMm())));
    plan.formed()
        .ifPresent(
            link ->
                rows.add(
                    row(
                        "link",
                        units.length(link.lengthMm()) + " x " + units.length(link.widthMm()))));
    if (plan.rings() > 0) {
      rows.add(row("ring blank", units.length(plan.ringBlankMm())));
    }
  }

  private void wire(List<Row> rows, Plan plan) {
    rows.add(row("to cut", plan.blanksToCut() + " blanks for " + plan.links()));
    rows.add(row("wire", units.length(plan.wireTotalMm())));
    if (!stockIsKnown(plan.wish())) {
      rows.add(row("on hand", "not said"));
      return;
    }
    double missing = plan.wireShortMm();
    rows.add(
        missing > 0
            ? row("wire short", units.length(missing)).with(Emphasis.TROUBLE)
            : row("wire short", "nothing"));
  }

  static boolean stockIsKnown(ChainWish wish) {
    return !wish.stockMm().isEmpty() || wish.ringStockMm().map(all -> !all.isEmpty()).orElse(false);
  }

  private Row row(String label, String value) {
    return Row.of(words.show(label), words.show(value));
  }
}
