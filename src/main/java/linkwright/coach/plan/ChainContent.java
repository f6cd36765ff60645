package linkwright.coach.plan;

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
import linkwright.hands.Fineness;
import linkwright.job.ChainMade;
import linkwright.plan.EndRings;
import linkwright.plan.FigureSource;
import linkwright.plan.FinenessWord;
import linkwright.plan.Plan;
import linkwright.plan.SettledLink;
import linkwright.plan.SolderHeat;
import linkwright.quantity.Decimals;
import linkwright.quantity.SaidIn;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Reference;
import linkwright.routine.PieceKind;
import linkwright.routine.Routine;
import linkwright.routine.TradeWords;
import linkwright.standing.Quote;
import linkwright.standing.Standing;
import linkwright.standing.StillToDo;
import linkwright.standing.WireStand;
import linkwright.standing.typed.RoutineFits;

/**
 * What the plan of a chain comes to: the figures one decides by, what to mind, then all that is
 * needed at the bench.
 *
 * @param units how amounts are shown
 * @param words whose trade words
 * @param reference where fineness rules are looked up
 */
public record ChainContent(UnitStyle units, TradeWords words, Reference reference) {

  /** What it comes to. */
  public List<Part> of(Standing standing) {
    Plan plan = standing.counted().plan().orElseThrow();
    List<Part> parts = new ArrayList<>();
    parts.add(new Rows(figures(standing, plan)));
    standing
        .counted()
        .instead()
        .ifPresent(
            ring ->
                parts.add(
                    Prose.stop(
                        "The trial length that is followed hung with rings of "
                            + units.length(ring.tried().insideMm())
                            + "; the rings wished since, of "
                            + units.length(ring.wished().insideMm())
                            + ", are counted in their place. Open those that hung: their links"
                            + " are to be joined with these.")));
    if (!standing.since().isEmpty()) {
      parts.add(
          Prose.says(
              words.show(
                  "Kept with values that would be others today; they are held, and told below.")));
    }
    standing
        .counted()
        .remarks(units)
        .forEach(each -> parts.add(Prose.stop(words.show(SaidIn.units(each, units)))));
    RoutineFits.told(standing).forEach(each -> parts.add(Prose.stop(words.show(each))));
    SolderHeat.of(plan.wish().metal(), reference, units)
        .forEach(each -> parts.add(Prose.stop(words.show(each))));
    boolean solders = standing.walked().map(Routine::takesSolder).orElse(true);
    double massG = standing.made().massG(plan.massChainG());
    FinenessWord.of(plan.wish().metal(), massG, reference, units, solders)
        .forEach(each -> parts.add(Prose.says(words.show(each))));
    parts.addAll(new ChainDetails(units, words, solders).of(standing, plan));
    return parts;
  }

  private List<Row> figures(Standing standing, Plan plan) {
    List<Row> rows = new ArrayList<>();
    rows.add(row("links", Integer.toString(plan.links())).with(Emphasis.MAIN));
    if (plan.sized()) {
      plan.sizes().forEach(size -> rows.add(row(size.name(), size.links() + " of them")));
    }
    if (plan.rings() > 0) {
      rows.add(row("rings", Integer.toString(plan.rings())).with(Emphasis.MAIN));
    }
    plan.endRings()
        .ifPresent(
            ends ->
                rows.add(
                    row("at the ends", EndRings.COUNT + " of " + units.length(ends.insideMm()))));
    ChainMade made = standing.made();
    rows.add(
        row("length", made.lengthSaid(plan.lengthMm(), plan.plusMinusMm(), units))
            .from(made.measured() ? FigureSource.MEASURED.word() : "")
            .with(Emphasis.MAIN));
    plan.plusMinusTrialMm().stream()
        .filter(mm -> !made.closed())
        .forEach(mm -> rows.add(row("after a trial", "± " + units.roundedBy(mm, mm))));
    rows.add(row("wished", units.length(plan.wish().finishedMm())));
    plan.extender()
        .ifPresent(
            extender ->
                rows.add(
                    row("closes from", units.length(extender.closesFromMm()))
                        .remark(
                            "an extender of "
                                + extender.links()
                                + (extender.links() == 1 ? " link, " : " links, ")
                                + units.length(extender.lengthMm()))));
    if (!made.closed()) {
      ringForThat(rows, plan);
    }
    double massG = made.massG(plan.massChainG());
    String weighed = made.weighed() ? FigureSource.MEASURED.word() : "";
    rows.add(row("chain weighs", units.mass(massG)).from(weighed).with(Emphasis.MAIN));
    mark(rows, plan, massG);
    int remarks =
        standing.counted().remarks(units).size()
            + RoutineFits.told(standing).size()
            + SolderHeat.of(plan.wish().metal(), reference, units).size();
    if (remarks > 0) {
      String things = remarks == 1 ? "1 thing, below" : remarks + " things, below";
      rows.add(row("mind", things).with(Emphasis.TROUBLE));
    }
    if (!made.closed()) {
      others(rows, plan);
    }
    sizes(rows, standing, plan);
    wire(rows, standing, plan);
    rows.add(
        plan.pullIsKnown()
            ? row("holds", units.pull(plan.pull().solderedN()))
            : row("holds", "not reckoned: wires share the pull"));
    return rows;
  }

  private void ringForThat(List<Row> rows, Plan plan) {
    plan.exactRingInsideMm().ifPresent(mm -> rows.add(row("ring for that", units.length(mm))));
    plan.tightRingInsideMm()
        .ifPresent(
            mm ->
                rows.add(
                    row("ring for that", units.length(mm))
                        .remark(
                            "too tight: two wires need "
                                + units.length(plan.leastRingInsideMm()))));
  }

  private void others(List<Row> rows, Plan plan) {
    String fewer =
        plan.oneFewerMm().isPresent() ? other(plan, plan.oneFewerMm().getAsDouble()) : "none";
    String one = plan.sized() ? "one repeat " : "one ";
    rows.add(row(one + "fewer", fewer));
    rows.add(row(one + "more", other(plan, plan.oneMoreMm())));
  }

  /** The length with a link fewer or more, where its doubt lets it be told from the planned one. */
  private String other(Plan plan, double mm) {
    return plan.toldApart(mm) ? units.roundedBy(mm, plan.plusMinusMm()) : "about as long";
  }

  /** Where a fineness mark is needed; the sentences with the limits come after the figures. */
  private void mark(List<Row> rows, Plan plan, double massG) {
    FinenessWord.inShort(plan.wish().metal(), massG, reference)
        .ifPresent(where -> rows.add(row("mark", where)));
  }

  private void sizes(List<Row> rows, Standing standing, Plan plan) {
    SettledLink link = plan.link();
    rows.add(row("link blank", units.length(plan.linkBlankMm())).from(link.blankFrom().word()));
    boolean turned =
        standing.walked().flatMap(routine -> routine.detail().linkAdds()).isPresent()
            && RoutineFits.told(standing).isEmpty();
    rows.add(
        row(turned ? "link adds" : "link inside", units.length(plan.linkInsideMm()))
            .from(link.insideFrom().word()));
    if (link.lengthMm().isPresent() && link.widthMm().isPresent()) {
      String length = units.length(link.lengthMm().getAsDouble());
      rows.add(
          row("link", length + " x " + units.length(link.widthMm().getAsDouble()))
              .from(link.sizeFrom() == link.insideFrom() ? "" : link.sizeFrom().word()));
    }
    if (plan.rings() > 0) {
      rows.add(row("ring blank", units.length(plan.ringBlankMm())));
    }
  }

  private void wire(List<Row> rows, Standing standing, Plan plan) {
    rows.add(toCut("to cut", standing, PieceKind.LINK, plan.blanksToCut(), plan.links()));
    if (plan.rings() > 0) {
      rows.add(
          toCut("rings to cut", standing, PieceKind.RING, plan.allRingsToCut(), plan.allRings()));
    }
    rows.add(row("wire", PlanWire.all(plan, units)));
    if (!standing.made().closed()) {
      rows.add(toBuy(standing, plan));
    }
    standing
        .chance()
        .ifPresent(chance -> rows.add(row("will do", Decimals.percent(chance, 0) + " sure")));
    standing
        .jobHours()
        .ifPresent(
            hours ->
                rows.add(
                    hours.hoursToGo() > 0
                        ? Row.of(
                                hours.spentSeconds() > 0 ? "hours in all" : "hours",
                                "about " + ForecastWords.hours(hours.hours(), hours.plusMinus()))
                            .from(hours.from().word())
                            .remark(thinWire(plan))
                        : row("hours spent", spent(hours.spentSeconds()))));
    if (!standing.made().closed()) {
      ForecastWords.redos(standing).ifPresent(redos -> rows.add(row("redone", redos)));
    }
    standing.quote().ifPresent(quote -> quoted(rows, quote));
  }

  /** Blanks of the whole chain; once some were cut, what the bench still asks for beside them. */
  private Row toCut(String label, Standing standing, PieceKind piece, int planned, int wanted) {
    String still = still(standing, piece, planned);
    String start = still.isEmpty() ? "" : " at the start";
    return row(label, planned + " for " + wanted + start).remark(still);
  }

  /** What of that is still to be cut; empty before anything was and when closed. */
  private static String still(Standing standing, PieceKind piece, int planned) {
    boolean over = standing.jobHours().filter(hours -> hours.hoursToGo() == 0).isPresent();
    return Optional.ofNullable(standing.left().get(piece))
        .filter(left -> !over)
        .map(StillToDo::toCutOrAsMany)
        .filter(now -> now != planned)
        .map(now -> now + " still to cut")
        .orElse("");
  }

  /** Why a chain of thin wire takes longer than its routine says; empty for any other. */
  private String thinWire(Plan plan) {
    return Fineness.of(Optional.of(plan.wish())).counts()
        ? "wire below " + units.length(Fineness.ORDINARY_MM) + " counted longer (common practice)"
        : "";
  }

  private Row toBuy(Standing standing, Plan plan) {
    Optional<WireStand> known = standing.wire().filter(WireStand::known);
    return known
        .map(
            wire ->
                wire.shortMm() > 0
                    ? row(
                            "wire to buy",
                            PlanWire.said(plan, wire.shortLinksMm(), wire.shortRingsMm(), units))
                        .with(Emphasis.TROUBLE)
                    : row("wire to buy", "nothing"))
        .orElseGet(() -> row("on hand", "not said"));
  }

  /** What was spent is known: nothing is left to go, or the job is closed. */
  private static String spent(double seconds) {
    return seconds > 0 ? Clock.spoken(seconds) : "none timed";
  }

  /** The price, and what the same takes made again: without test pieces and trial. */
  private void quoted(List<Row> rows, Quote quote) {
    rows.add(row("hours again", ForecastWords.hoursAgain(quote)));
    if (quote.priced()) {
      String money = quote.currency().isBlank() ? "" : " " + quote.currency();
      rows.add(
          row(
              "price",
              quote.pricePlusMinus() > 0
                  ? Decimals.fixed(quote.first().total(), 0)
                      + " ± "
                      + Decimals.fixed(Math.max(1, quote.pricePlusMinus()), 0)
                      + money
                  : Decimals.money(quote.first().total(), quote.currency())));
      rows.add(Row.of("made again", ForecastWords.priceAgain(quote)));
      if (quote.lacksMetal()) {
        rows.add(row("the metal", "has no price yet").with(Emphasis.TROUBLE));
      }
    }
  }

  private Row row(String label, String value) {
    return Row.of(words.show(label), words.show(value));
  }
}
