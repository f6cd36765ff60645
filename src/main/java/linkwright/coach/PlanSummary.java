package linkwright.coach;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.plan.FinenessWord;
import linkwright.plan.PartPlan;
import linkwright.plan.Plan;
import linkwright.quantity.UnitStyle;
import linkwright.routine.Routine;
import linkwright.standing.CountedPlan;
import linkwright.wire.Strength;

/** What a plan comes to, line by line, in the user's units. */
public final class PlanSummary {
  /**
   * One line.
   *
   * @param label what it is; empty for a sentence
   * @param value how much, or the sentence
   * @param main whether it is one of the figures to be seen first
   * @param trouble whether something is wrong
   */
  public record Line(String label, String value, boolean main, boolean trouble) {}

  private PlanSummary() {}

  /** The lines for a plan, or for what is still missing. */
  public static List<Line> of(CountedPlan counted, Model model) {
    List<Line> lines = new ArrayList<>();
    if (counted.plan().isPresent()) {
      figures(lines, counted.plan().get(), model);
      how(lines, model);
    } else if (counted.part().isPresent()) {
      part(lines, counted.part().get(), model);
      how(lines, model);
    } else if (!counted.sentence().isEmpty()) {
      lines.add(new Line("", counted.sentence(), false, true));
      how(lines, model);
    } else {
      how(lines, model);
      lines.add(new Line("", "Results come as you type. Still missing or wrong:", false, false));
      counted.troubles().values().forEach(each -> lines.add(new Line("", each, false, false)));
    }
    return lines;
  }

  /** How the routine is planned, in its own words. */
  private static void how(List<Line> lines, Model model) {
    routine(model)
        .map(Routine::plan)
        .filter(text -> !text.isBlank())
        .ifPresent(text -> lines.add(new Line("", JobWords.fill(text, model), false, false)));
  }

  private static boolean fuses(Routine routine) {
    return routine.pieces().values().stream().anyMatch(stages -> stages.contains("fused"));
  }

  private static Optional<Routine> routine(Model model) {
    return model.job().flatMap(job -> model.handbook().routine(job.state().course().routine()));
  }

  private static void figures(List<Line> lines, Plan plan, Model model) {
    UnitStyle units = model.settings().units();
    boolean solders = routine(model).map(known -> !fuses(known)).orElse(true);
    main(lines, "links", Integer.toString(plan.links()));
    if (plan.rings() > 0) {
      main(lines, "rings", Integer.toString(plan.rings()));
    }
    main(lines, "length", units.length(plan.lengthMm()));
    main(lines, "chain weighs", units.mass(plan.massChainG()));
    mark(lines, plan, model);
    int remarks = plan.remarks().size();
    if (remarks > 0) {
      String things = remarks == 1 ? "1 thing, below" : remarks + " things, below";
      lines.add(new Line("mind", things, false, true));
    }
    String fewer =
        plan.oneFewerMm().isPresent() ? units.length(plan.oneFewerMm().getAsDouble()) : "none";
    line(lines, "one fewer", fewer);
    line(lines, "one more", units.length(plan.oneMoreMm()));
    plan.exactRingInsideMm().ifPresent(ring -> line(lines, "exact ring", units.length(ring)));
    line(lines, "link blank", units.length(plan.linkBlankMm()));
    line(lines, "link inside", units.length(plan.linkInsideMm()));
    plan.formed()
        .ifPresent(
            link ->
                line(
                    lines,
                    "link",
                    units.length(link.lengthMm()) + " x " + units.length(link.widthMm())));
    if (plan.rings() > 0) {
      line(lines, "ring blank", units.length(plan.ringBlankMm()));
    }
    line(lines, "to cut", plan.blanksToCut() + " blanks for " + plan.links());
    line(lines, "wire", units.length(plan.wireTotalMm()));
    boolean known =
        !plan.wish().stockMm().isEmpty()
            || plan.wish().ringStockMm().map(list -> !list.isEmpty()).orElse(false);
    if (known) {
      double missing = plan.wireShortMm();
      lines.add(
          new Line(
              "wire short", missing > 0 ? units.length(missing) : "nothing", false, missing > 0));
    }
    if (solders) {
      line(lines, "solder", plan.joints() + " of " + units.length(plan.solder().pieceMm()));
    }
    line(lines, "holds", "%.0f N".formatted(plan.pull().solderedN()));
    if (solders) {
      line(lines, "unsoldered", "%.0f N".formatted(plan.pull().buttedN()));
    }
    lines.add(new Line("", Strength.PROVISO, false, true));
    plan.remarks().forEach(each -> lines.add(new Line("", each, false, true)));
    FinenessWord.of(plan.wish().metal(), plan.massChainG(), model.handbook().reference())
        .forEach(each -> lines.add(new Line("", each, false, false)));
  }

  /** Where a fineness mark is needed; the sentences with the limits come after the figures. */
  private static void mark(List<Line> lines, Plan plan, Model model) {
    if (plan.wish().metal().finenessPermille().isEmpty()) {
      return;
    }
    List<String> needed =
        FinenessWord.needed(plan.wish().metal(), plan.massChainG(), model.handbook().reference());
    line(lines, "mark", needed.isEmpty() ? "none known" : "needed: " + String.join(", ", needed));
  }

  /** What is no chain: how many, and what its texts will be filled with. */
  private static void part(List<Line> lines, PartPlan part, Model model) {
    UnitStyle units = model.settings().units();
    main(lines, "wanted", Integer.toString(part.pieces()));
    part.wireMm().ifPresent(mm -> line(lines, "wire", units.wire(mm)));
    part.blankMm().ifPresent(mm -> line(lines, "blank", units.length(mm)));
    boolean formers = routine(model).map(known -> known.speaksOf(PlanFields.FORMER)).orElse(false);
    if (formers) {
      part.formersMm().forEach((name, mm) -> line(lines, "former " + name, units.length(mm)));
    }
    part.ringInsideMm().ifPresent(mm -> line(lines, "ring inside", units.length(mm)));
    part.solderPieceMm().ifPresent(mm -> line(lines, "solder piece", units.length(mm)));
    part.ringBlankMm()
        .ifPresent(
            mm -> {
              line(lines, "ring blank", units.length(mm));
              main(lines, "wire for all", units.length(mm * part.pieces()));
            });
    part.metal()
        .ifPresent(
            metal -> metal.warnings().forEach(each -> lines.add(new Line("", each, false, true))));
  }

  private static void main(List<Line> lines, String label, String value) {
    lines.add(new Line(label, value, true, false));
  }

  private static void line(List<Line> lines, String label, String value) {
    lines.add(new Line(label, value, false, false));
  }
}
