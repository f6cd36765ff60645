package linkwright.coach.handbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Row;
import linkwright.coach.content.Rows;
import linkwright.coach.handbook.HandbookEntry.LookupKind;
import linkwright.quantity.Decimals;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Clasp;
import linkwright.reference.Figure;
import linkwright.reference.FinenessRule;
import linkwright.reference.Limit;
import linkwright.reference.Metal;
import linkwright.reference.Range;
import linkwright.reference.Reference;
import linkwright.reference.Solder;

/** The trade's data as it is looked up: every figure with where it comes from. */
public final class ReferenceContent {
  private ReferenceContent() {}

  /** Everything, kind by kind, in the order of the files. */
  public static List<HandbookEntry> of(Reference reference, UnitStyle units) {
    List<HandbookEntry> all = new ArrayList<>();
    reference.metals().forEach(metal -> all.add(metal(metal)));
    reference.solders().forEach(solder -> all.add(solder(solder, reference)));
    reference.clasps().forEach(clasp -> all.add(clasp(clasp, units)));
    reference.finenessRules().forEach(rule -> all.add(mark(rule)));
    reference.limits().forEach(limit -> all.add(limit(limit)));
    return List.copyOf(all);
  }

  static HandbookEntry metal(Metal metal) {
    List<Row> rows = new ArrayList<>();
    rows.add(figure("density", metal.densityGCm3(), 1, 2, "g/cm³"));
    rows.add(range("melts", metal.meltC()));
    rows.add(range("anneals", metal.annealC()));
    rows.add(figure("anneal after", metal.reductionShare(), 100, 0, "% drawn off"));
    rows.add(figure("modulus", metal.modulusGpa(), 1, 0, "GPa"));
    rows.add(figure("yields, soft", metal.yieldSoftMpa(), 1, 0, "MPa"));
    rows.add(figure("yields, hard", metal.yieldHardMpa(), 1, 0, "MPa"));
    rows.add(figure("tensile, soft", metal.tensileSoftMpa(), 1, 0, "MPa"));
    rows.add(figure("tensile, hard", metal.tensileHardMpa(), 1, 0, "MPa"));
    List<Part> parts = new ArrayList<>();
    if (!metal.notPlanned().isEmpty()) {
      parts.add(Prose.stop(metal.notPlanned()));
    }
    parts.add(new Rows(rows));
    parts.add(Prose.says("At annealing heat: " + metal.glow() + ". " + metal.quench()));
    metal.warnings().forEach(each -> parts.add(Prose.stop(each)));
    return new HandbookEntry(LookupKind.METAL, metal.name(), parts);
  }

  private static Row figure(String label, Figure figure, double times, int digits, String unit) {
    return Row.of(label, Decimals.upTo(figure.value() * times, digits) + " " + unit)
        .remark(figure.source());
  }

  private static Row range(String label, Range range) {
    String from = Decimals.upTo(range.from(), 1);
    String to = Decimals.upTo(range.to(), 1);
    return Row.of(label, (from.equals(to) ? from : from + " to " + to) + " °C")
        .remark(range.source());
  }

  static HandbookEntry solder(Solder solder, Reference reference) {
    List<Row> rows = new ArrayList<>();
    if (!solder.grade().isEmpty()) {
      rows.add(Row.of("grade", solder.grade()));
    }
    rows.add(
        Row.of(
            "melts",
            Decimals.upTo(solder.solidusC(), 0)
                + ", flows at "
                + Decimals.upTo(solder.liquidusC(), 0)
                + " °C"));
    rows.add(Row.of("density", Decimals.upTo(solder.densityGCm3(), 2) + " g/cm³"));
    if (!solder.alloy().isEmpty()) {
      rows.add(Row.of("alloy", solder.alloy()));
    }
    solder.finenessPermille().ifPresent(fine -> rows.add(Row.of("fineness", fine + " in 1000")));
    rows.add(Row.of("a mark", marks(solder, reference)));
    return new HandbookEntry(
        LookupKind.SOLDER,
        solder.name(),
        List.of(
            new Rows(rows), Prose.says(solder.note()), Prose.aside("Source: " + solder.source())));
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
                        + ")"));
    return String.join(", ", words);
  }

  static HandbookEntry clasp(Clasp clasp, UnitStyle units) {
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
    return new HandbookEntry(LookupKind.CLASP, clasp.name(), parts);
  }

  static HandbookEntry mark(FinenessRule rule) {
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
                    Row.of("exempt below", Decimals.upTo(grams, 2) + " g")
                        .remark(rule.ofContained() ? "of the precious metal in it" : "")));
    rule.solderAtLeast()
        .forEach(
            (marked, least) ->
                rows.add(
                    Row.of("solder", "at least " + least)
                        .remark(marked == 0 ? "" : "for " + marked)));
    return new HandbookEntry(
        LookupKind.MARK,
        rule.country() + ", " + rule.family().word(),
        List.of(
            new Rows(rows),
            Prose.says(rule.note()),
            Prose.aside("Source: " + rule.source() + ". As of " + rule.date() + "."),
            Prose.aside("Not legal advice: check what applies where you sell.")));
  }

  static HandbookEntry limit(Limit limit) {
    return new HandbookEntry(
        LookupKind.LIMIT,
        limit.id().substring(0, 1).toUpperCase(Locale.ROOT)
            + limit.id().substring(1)
            + ", "
            + limit.where(),
        List.of(
            Prose.says(limit.says()),
            Prose.aside("Source: " + limit.source() + ". As of " + limit.date() + ".")));
  }
}
