package linkwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import linkwright.cutting.Cut;
import linkwright.plan.ChainWish;
import linkwright.plan.FinenessWord;
import linkwright.plan.Plan;
import linkwright.quantity.Decimals;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Reference;
import linkwright.routine.TradeWords;
import linkwright.wire.Strength;

/** A plan for reading at the bench, in the user's units and trade words. */
final class PlanText {
  private final Plan plan;
  private final ChainWish wish;
  private final UnitStyle units;
  private final Sheet sheet = new Sheet();

  private PlanText(Plan plan, UnitStyle units) {
    this.plan = plan;
    this.wish = plan.wish();
    this.units = units;
  }

  /**
   * The lines of the plan.
   *
   * @param name what the job is called; empty if it has no name
   */
  static List<String> of(
      String name, Plan plan, Reference reference, UnitStyle units, TradeWords words) {
    PlanText text = new PlanText(plan, units);
    text.sheet.heading(name.isBlank() ? "A chain" : name);
    text.chain();
    text.link();
    text.ring();
    text.wire();
    text.cuts();
    text.rest(reference);
    return text.sheet.lines().stream().map(words::show).toList();
  }

  private void chain() {
    sheet.heading("The chain");
    sheet.line("links", Integer.toString(plan.links()));
    if (plan.rings() > 0) {
      sheet.line("rings", plan.rings() + ", one at each end of a link");
    }
    sheet.line("length", length(plan.lengthMm()) + ", wished " + length(wish.finishedMm()));
    String fewer =
        plan.oneFewerMm().isPresent()
            ? length(plan.oneFewerMm().getAsDouble()) + " with one link fewer, "
            : "";
    sheet.line("", fewer + length(plan.oneMoreMm()) + " with one more");
    plan.exactRingInsideMm()
        .ifPresent(mm -> sheet.line("", "to the wish with rings of " + length(mm) + " inside"));
    List<String> parts = new ArrayList<>(List.of("links " + units.mass(plan.massLinksG())));
    if (plan.rings() > 0) {
      parts.add("rings " + units.mass(plan.massRingsG()));
    }
    parts.add("solder " + units.mass(plan.massSolderG()));
    if (wish.claspG() > 0) {
      parts.add("clasp " + units.mass(wish.claspG()));
    }
    sheet.line("weighs", units.mass(plan.massChainG()) + ": " + String.join(", ", parts));
  }

  private void link() {
    sheet.heading("One link");
    wish.link().pattern().ifPresent(pattern -> sheet.line(pattern.id(), pattern.says()));
    sheet.line("wire", units.wire(wish.wireMm()) + " " + wish.metal().name() + ", " + temper());
    sheet.line("blank", length(plan.linkBlankMm()) + formers());
    plan.formed()
        .ifPresent(
            formed ->
                sheet.line(
                    "size",
                    length(formed.lengthMm()) + " x " + length(formed.widthMm()) + wished()));
    sheet.line("adds", length(plan.linkInsideMm()) + " to the chain, inside to inside");
  }

  private String temper() {
    return wish.temper().word();
  }

  private String formers() {
    return plan.formed()
        .map(
            formed ->
                formed.pattern().formersMm().entrySet().stream()
                    .map(
                        each ->
                            each.getKey()
                                + " "
                                + length(
                                    wish.link()
                                        .formersMm()
                                        .getOrDefault(each.getKey(), each.getValue())))
                    .collect(Collectors.joining(", ", " over the formers: ", "")))
        .orElse("");
  }

  private String wished() {
    OptionalDouble wide = wish.link().widthMm();
    return wish.link().lengthMm().isPresent()
        ? ", wished "
            + length(wish.link().lengthMm().getAsDouble())
            + (wide.isPresent() ? " x " + length(wide.getAsDouble()) : "")
        : "";
  }

  private void ring() {
    wish.ring()
        .ifPresent(
            ring -> {
              sheet.heading("One ring");
              sheet.line("wire", units.wire(ring.wireMm()));
              String oval =
                  ring.ovalInsideMm().isPresent()
                      ? ", squeezed to " + length(ring.ovalInsideMm().getAsDouble())
                      : "";
              sheet.line("inside", length(ring.insideMm()) + oval);
              sheet.line("blank", length(plan.ringBlankMm()));
              sheet.line("adds", length(plan.ringInsideLengthMm()) + " to the chain");
            });
  }

  private void wire() {
    sheet.heading("Wire to take");
    sheet.line(
        "blanks",
        "cut "
            + plan.blanksToCut()
            + ": so "
            + plan.links()
            + " come good with a chance of "
            + percent(wish.confidence())
            + ", "
            + percent(wish.usualLoss())
            + " being lost as a rule");
    sheet.line("links", length(plan.wireLinksMm()));
    if (plan.rings() > 0) {
      sheet.line("rings", length(plan.wireRingsMm()));
    }
    sheet.line("spare", length(plan.wireSpareMm()));
    sheet.line("together", length(plan.wireTotalMm()));
  }

  private void cuts() {
    boolean known = !wish.stockMm().isEmpty() || !wish.ringStockMm().orElse(List.of()).isEmpty();
    if (!known) {
      sheet.line("on hand", "not said");
      return;
    }
    sheet.line(
        "short",
        plan.wireShortMm() > 0
            ? length(plan.wireShortMm()) + " are missing: see what is cut below"
            : "nothing: the wire on hand will do");
    sheet.heading("Cut the wire on hand so");
    for (Cut cut : plan.cuts().cuts()) {
      sheet.line(length(cut.stockMm()) + (cut.fromRingStock() ? " (rings)" : ""), cut(cut));
    }
  }

  private String cut(Cut cut) {
    if (!cut.opened()) {
      return "stays whole";
    }
    List<String> parts = new ArrayList<>();
    int blanks = cut.blanks().stream().mapToInt(Integer::intValue).sum();
    if (blanks > 0) {
      parts.add(blanks + (blanks == 1 ? " blank" : " blanks"));
    }
    if (cut.rings() > 0) {
      parts.add("a coil for " + cut.rings() + (cut.rings() == 1 ? " ring" : " rings"));
    }
    parts.add(length(cut.restMm()) + " left");
    return String.join(", ", parts);
  }

  private void rest(Reference reference) {
    sheet.heading("Joints");
    sheet.line(
        "solder", plan.joints() + " pieces, each " + length(plan.solder().pieceMm()) + " long");
    sheet.line(
        "holds",
        String.format(
            Locale.ROOT,
            "%.0f N with its joints soldered, %.0f N without (%s)",
            plan.pull().solderedN(),
            plan.pull().buttedN(),
            plan.pull().what()));
    sheet.sentence(Strength.PROVISO);
    List<String> mind = new ArrayList<>(plan.remarks());
    mind.addAll(FinenessWord.of(wish.metal(), plan.massChainG(), reference));
    if (!mind.isEmpty()) {
      sheet.heading("Mind");
      mind.forEach(sheet::sentence);
    }
  }

  private String length(double mm) {
    return units.length(mm);
  }

  private static String percent(double share) {
    return Decimals.percent(share, 0);
  }
}
