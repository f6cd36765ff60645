package linkwright.reckon;

import java.util.List;
import java.util.Optional;
import linkwright.link.Formed;
import linkwright.link.Planished;
import linkwright.quantity.UnitStyle;

/** What planishing makes of a link: wire hammered thinner spreads, and the link grows with it. */
final class PlanishSum implements Working {
  /** Below that share of its thickness wire tears. Common practice, no source. */
  private static final double LEAST_SHARE = 0.25;

  /** What links are planished to, of the wire's thickness. Common practice, no source. */
  private static final double USUAL_FROM = 0.6;

  private static final double USUAL_TO = 0.9;

  private static final Sum SUM =
      new Sum(
          "planish",
          "a link planished",
          "How a link grows, and loses inside, as its wire is hammered thinner.",
          List.of(
              Ask.pattern(),
              Ask.needed("wire", "thickness", "0.9 mm or 19 AWG"),
              Ask.needed("blank", "blank", "38 mm"),
              Ask.needed("thickness", "planished to", "0.7 mm"),
              Ask.optional("former", "former", "bow=3.5 mm; the pattern's own").as(Ask.Kind.MANY),
              Ask.metal(false),
              Ask.temper()));

  @Override
  public Sum sum() {
    return SUM;
  }

  @Override
  public void work(Answers answers, Outcome outcome) {
    Optional<Double> thickness = answers.size("thickness");
    Optional<Double> wire = answers.wire("wire");
    if (thickness.isPresent() && wire.isPresent()) {
      answers.check(
          "thickness",
          thickness.get() <= wire.get(),
          "That is thicker than the wire: planishing makes it thinner.");
      answers.check(
          "thickness",
          thickness.get() >= LEAST_SHARE * wire.get(),
          "That is less than a quarter of the wire, which no link stands: usual are "
              + answers.units().length(USUAL_FROM * wire.get())
              + " to "
              + answers.units().length(USUAL_TO * wire.get())
              + ".");
    }
    LinkSum.formed(answers, LinkSum.formers(answers))
        .ifPresent(link -> told(outcome, answers.units(), link, thickness.orElseThrow()));
  }

  private static void told(Outcome outcome, UnitStyle units, Formed link, double thicknessMm) {
    Planished flat = link.planished(thicknessMm);
    outcome.put("wire_width_mm", flat.wireWidthMm());
    outcome.put("length_mm", flat.lengthMm());
    outcome.put("width_mm", flat.widthMm());
    outcome.put("inside_length_mm", flat.insideLengthMm());
    outcome.line(
        "Planished to "
            + units.length(flat.thicknessMm())
            + " the wire is about "
            + units.length(flat.wireWidthMm())
            + " wide with square edges"
            + (flat.roundEdgesWidthMm() > flat.wireWidthMm()
                ? ", up to " + units.length(flat.roundEdgesWidthMm()) + " with its edges left round"
                : "")
            + ".");
    outcome.line(
        "The link becomes "
            + units.length(flat.lengthMm())
            + " long and "
            + units.length(flat.widthMm())
            + " wide, and adds "
            + units.length(flat.insideLengthMm())
            + " to the chain in place of "
            + units.length(link.insideLengthMm())
            + ".");
    outcome.line(
        "A first estimate: hammer a few, and measure the inside on a trial length before the run is"
            + " cut.");
  }
}
