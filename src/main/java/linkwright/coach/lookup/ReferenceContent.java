package linkwright.coach.lookup;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Row;
import linkwright.coach.content.Rows;
import linkwright.plan.FinenessWord;
import linkwright.quantity.Decimals;
import linkwright.quantity.Degrees;
import linkwright.quantity.SaidIn;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Clasp;
import linkwright.reference.FinenessRule;
import linkwright.reference.Limit;
import linkwright.reference.Metal;
import linkwright.reference.PublishedFigure;
import linkwright.reference.Range;
import linkwright.reference.Reference;
import linkwright.reference.Solder;

/** The trade's data as it is looked up: every figure with where it comes from. */
public final class ReferenceContent {
  private ReferenceContent() {}

  /** Everything, kind by kind, in the order of the files. */
  public static List<LookUpItem> of(Reference reference, UnitStyle units) {
    List<LookUpItem> all = new ArrayList<>();
    reference.metals().forEach(metal -> all.add(metal(metal, units)));
    reference.solders().forEach(solder -> all.add(solder(solder, reference, units)));
    reference.clasps().forEach(clasp -> all.add(clasp(clasp, units)));
    reference.finenessRules().forEach(rule -> all.add(mark(rule, units)));
    reference.limits().forEach(limit -> all.add(limit(limit)));
    return List.copyOf(all);
  }

  static LookUpItem metal(Metal metal, UnitStyle units) {
    List<String> names = new ArrayList<>(metal.alsoCalled());
    List<Row> rows = new ArrayList<>();
    rows.add(figure("density", metal.densityGCm3(), 2, "g/cm³"));
    rows.add(range("melts", metal.meltC(), units));
    rows.add(
        Row.of("anneals", Degrees.heat(metal.annealC().from(), metal.annealC().to(), units))
            .remark(SaidIn.units(metal.annealC().source(), units)));
    rows.add(
        Row.of("anneal after", Decimals.percent(metal.reductionShare().value(), 0) + " drawn off")
            .remark(metal.reductionShare().source()));
    rows.add(figure("modulus", metal.modulusGpa(), 0, "GPa"));
    rows.add(stress("yields, soft", metal.yieldSoftMpa(), units));
    rows.add(stress("yields, hard", metal.yieldHardMpa(), units));
    rows.add(stress("tensile, soft", metal.tensileSoftMpa(), units));
    rows.add(stress("tensile, hard", metal.tensileHardMpa(), units));
    List<Part> parts = new ArrayList<>();
    if (!metal.notPlanned().isEmpty()) {
      parts.add(Prose.stop(metal.notPlanned()));
    }
    metal.finenessPermille().ifPresent(fine -> names.add(Integer.toString(fine)));
    parts.add(new Rows(rows));
    if (!metal.alsoCalled().isEmpty()) {
      parts.add(Prose.says("Also called: " + String.join(", ", metal.alsoCalled()) + "."));
    }
    parts.add(Prose.says("At annealing heat: " + metal.glow() + ". " + metal.quench()));
    metal.warnings().forEach(each -> parts.add(Prose.stop(SaidIn.units(each, units))));
    return new LookUpItem("metal", metal.id(), metal.name(), names, parts);
  }

  private static Row figure(String label, PublishedFigure figure, int digits, String unit) {
    return Row.of(label, Decimals.upTo(figure.value(), digits) + " " + unit)
        .remark(figure.source());
  }

  private static Row stress(String label, PublishedFigure mpa, UnitStyle units) {
    return Row.of(label, units.stress(mpa.value())).remark(SaidIn.units(mpa.source(), units));
  }

  private static Row range(String label, Range range, UnitStyle units) {
    String from = units.temperature(range.from());
    String to = units.temperature(range.to());
    String unit = from.substring(from.indexOf(' '));
    return Row.of(label, (from.equals(to) ? "" : from.replace(unit, "") + " to ") + to)
        .remark(SaidIn.units(range.source(), units));
  }

  static LookUpItem solder(Solder solder, Reference reference, UnitStyle units) {
    List<String> names = new ArrayList<>(solder.alsoCalled());
    solder.finenessPermille().ifPresent(fine -> names.add(Integer.toString(fine)));
    List<Row> rows = new ArrayList<>();
    if (!solder.grade().isEmpty()) {
      rows.add(Row.of("grade", solder.grade()));
    }
    rows.add(
        Row.of(
            "melts",
            units.temperature(solder.solidusC())
                + ", flows at "
                + units.temperature(solder.liquidusC())));
    rows.add(Row.of("density", Decimals.upTo(solder.densityGCm3(), 2) + " g/cm³"));
    if (!solder.alloy().isEmpty()) {
      rows.add(Row.of("alloy", solder.alloy()));
    }
    solder.finenessPermille().ifPresent(fine -> rows.add(Row.of("fineness", fine + " in 1000")));
    rows.add(Row.of("a mark", marks(solder, reference)));
    return new LookUpItem(
        "solder",
        solder.id(),
        solder.name(),
        names,
        List.of(
            new Rows(rows),
            Prose.says(SaidIn.units(solder.note(), units)),
            Prose.aside("Source: " + SaidIn.units(solder.source(), units))));
  }

  /** Where a law names a least fineness of solder: whether this one reaches it. */
  private static String marks(Solder solder, Reference reference) {
    String words =
        reference.finenessRules().stream()
            .filter(rule -> rule.family() == solder.family() && !rule.solderAtLeast().isEmpty())
            .map(rule -> rule.country() + ": " + passes(solder, rule))
            .collect(Collectors.joining("; "));
    return words.isEmpty() ? "ask your assay office" : words;
  }

  private static String passes(Solder solder, FinenessRule rule) {
    List<String> words = new ArrayList<>();
    rule.solderAtLeast()
        .forEach(
            (marked, least) ->
                words.add(
                    (solder.isAsFineAs(least) ? "passes" : "too low")
                        + (marked == 0 ? "" : " for " + marked)
                        + " (at least "
                        + least
                        + " of 1000)"));
    return String.join(", ", words);
  }

  static LookUpItem clasp(Clasp clasp, UnitStyle units) {
    List<Part> parts = new ArrayList<>();
    parts.add(
        new Rows(
            List.of(
                Row.of("inside", units.length(clasp.insideLengthMm()))
                    .remark("from inside end to inside end, pulled"),
                Row.of("mass", units.mass(clasp.massG())))));
    if (clasp.springInside()) {
      parts.add(Prose.stop("A steel spring inside: never heated, never pickled; it goes on last."));
    }
    parts.add(Prose.aside("Source: " + clasp.source()));
    return new LookUpItem("clasp", clasp.id(), SaidIn.units(clasp.name(), units), List.of(), parts);
  }

  static LookUpItem mark(FinenessRule rule, UnitStyle units) {
    List<Row> rows = new ArrayList<>();
    rows.add(Row.of("compulsory", rule.compulsory() ? "yes" : "no"));
    rows.add(
        Row.of(
            "finenesses",
            rule.finenesses().stream().map(String::valueOf).collect(Collectors.joining(", "))
                + (rule.anyFineness() ? ", or any" : "")));
    rule.exemptBelowG()
        .ifPresent(
            grams ->
                rows.add(
                    Row.of("exempt below", FinenessWord.limit(grams, units))
                        .remark(rule.ofContained() ? "of the precious metal in it" : "")));
    rule.solderAtLeast()
        .forEach(
            (marked, least) ->
                rows.add(
                    Row.of("solder", "at least " + least + " of 1000")
                        .remark(marked == 0 ? "" : "for " + marked)));
    return new LookUpItem(
        "mark",
        rule.country() + ", " + rule.family().word(),
        rule.country() + ", " + rule.family().word(),
        List.of("hallmark", "fineness", rule.country()),
        List.of(
            new Rows(rows),
            Prose.says(rule.note()),
            Prose.aside("Source: " + rule.source() + ". As of " + rule.date() + "."),
            Prose.aside("Not legal advice: check what applies where you sell.")));
  }

  static LookUpItem limit(Limit limit) {
    return new LookUpItem(
        "limit",
        limit.id(),
        limit.id().substring(0, 1).toUpperCase(Locale.ROOT)
            + limit.id().substring(1)
            + ", "
            + limit.where(),
        List.of(limit.where()),
        List.of(
            Prose.says(limit.says()),
            Prose.aside("Source: " + limit.source() + ". As of " + limit.date() + ".")));
  }
}
