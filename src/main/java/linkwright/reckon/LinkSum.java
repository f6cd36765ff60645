package linkwright.reckon;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import linkwright.link.BendStep;
import linkwright.link.BendSteps;
import linkwright.link.Bending;
import linkwright.link.Crossing;
import linkwright.link.Formed;
import linkwright.link.Forming;
import linkwright.link.JointGap;
import linkwright.link.Passage;
import linkwright.link.Pattern;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Metal;
import linkwright.reference.Temper;

/** The link that comes of a blank: bent true to its pattern, or as its metal springs back. */
final class LinkSum implements Working {
  /** A link is some forty times as long as its wire is thick; far more is a slip of the unit. */
  private static final double LONGEST_IN_WIRES = 5000;

  private static final Sum SUM =
      new Sum(
          "link",
          "the link of a blank",
          "The size, joints and crossings of a link; with its metal, sprung back.",
          List.of(
              Ask.pattern(),
              Ask.needed("wire", "thickness", "0.9 mm or 19 AWG"),
              Ask.needed("blank", "blank", "38 mm"),
              Ask.optional("former", "former", "bow=3.5 mm; the pattern's own").as(Ask.Kind.MANY),
              Ask.metal(false),
              Ask.temper(),
              Ask.optional("ring-inside", "ring inside", "2.5 mm, a ring that goes in the eyes"),
              Ask.optional("ring-wire", "ring wire", "0.9 mm; the link's"),
              Ask.whether("steps", "bend by bend", "each bend, where it lies on the blank")));

  @Override
  public Sum sum() {
    return SUM;
  }

  @Override
  public void work(Answers answers, Outcome outcome) {
    Optional<Double> ringInside = answers.size("ring-inside");
    Optional<Double> ringWire = answers.wire("ring-wire");
    Map<String, Double> formers = formers(answers);
    Optional<Formed> formed = formed(answers, formers);
    if (formed.isEmpty()) {
      return;
    }
    Formed link = formed.get();
    List<JointGap> gaps = link.jointGaps();
    List<Crossing> crossings = link.crossings();
    outcome.put("length_mm", link.lengthMm());
    outcome.put("width_mm", link.widthMm());
    outcome.put("inside_length_mm", link.insideLengthMm());
    outcome.put("shortest_blank_mm", link.shortestBlankMm());
    outcome.put("joint_gaps_mm", gaps.stream().map(JointGap::gapMm).toList());
    outcome.put("crossings", crossings.stream().map(LinkSum::values).toList());
    outcome.draw(link);
    if (answers.has("steps")) {
      bends(outcome, answers.units(), BendSteps.of(link, formers));
    }
    told(outcome, answers.units(), link, gaps, crossings);
    ringInside.ifPresent(
        inside ->
            passes(
                outcome,
                answers.units(),
                Passage.of(link, inside, ringWire.orElse(link.wireMm()))));
  }

  /** The formers that were named, each with its size. */
  static Map<String, Double> formers(Answers answers) {
    return answers
        .pattern()
        .flatMap(
            known ->
                answers.read(
                    "former",
                    text -> FormerSizes.readOneEach(text, known.formersMm().keySet(), "former")))
        .orElse(Map.of());
  }

  /** The link of what is asked for it; empty where something is wrong, which is told. */
  static Optional<Formed> formed(Answers answers, Map<String, Double> formers) {
    Optional<Pattern> pattern = answers.pattern();
    Optional<Double> wire = answers.wire("wire");
    Optional<Double> blank = answers.size("blank");
    Optional<Metal> metal = answers.metal();
    Temper temper = answers.temper();
    if (wire.isPresent() && blank.isPresent()) {
      checkLength(answers, "blank", blank.get(), wire.get());
    }
    if (answers.wrong()) {
      return Optional.empty();
    }
    return answers.found(
        "",
        Forming.form(
            pattern.orElseThrow().withFormersFor(wire.orElseThrow()),
            wire.orElseThrow(),
            blank.orElseThrow(),
            formers,
            metal
                .map(known -> Bending.springing(known.bendingShare(temper)))
                .orElse(Bending.TRUE)));
  }

  private static void bends(Outcome outcome, UnitStyle units, BendSteps bends) {
    outcome.put("bends", bends.steps().stream().map(LinkSum::values).toList());
    outcome.bends(bends);
    bends.says(units).forEach(outcome::line);
    if (bends.steps().isEmpty()) {
      outcome.line("A ring is wound on its former and cut: there is nothing to mark.");
    }
  }

  private static Map<String, Object> values(BendStep step) {
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("from_mm", step.fromMm());
    values.put("to_mm", step.toEndMm());
    values.put("ends", step.ends().name().toLowerCase(Locale.ROOT));
    values.put("former", step.former());
    values.put("former_mm", step.formerMm());
    values.put("side", step.side().name().toLowerCase(Locale.ROOT));
    values.put("turn_deg", step.turnDeg());
    values.put("on_former_deg", step.overDeg());
    return values;
  }

  static void checkLength(Answers answers, String key, double lengthMm, double wireMm) {
    answers.check(
        key,
        lengthMm <= LONGEST_IN_WIRES * wireMm,
        "That is more than 5000 times as long as the wire is thick: check the units.");
  }

  private static Map<String, Double> values(Crossing crossing) {
    Map<String, Double> values = new LinkedHashMap<>();
    values.put("at_mm", crossing.atMm());
    values.put("and_mm", crossing.andMm());
    values.put("gap_mm", crossing.gapMm());
    return values;
  }

  private static void told(
      Outcome outcome,
      UnitStyle units,
      Formed link,
      List<JointGap> gaps,
      List<Crossing> crossings) {
    outcome.line(
        "The link is "
            + units.length(link.lengthMm())
            + " long and "
            + units.length(link.widthMm())
            + " wide, and adds "
            + units.length(link.insideLengthMm())
            + " to the chain.");
    outcome.line(
        "The shortest blank that reaches round its bends is "
            + units.length(link.shortestBlankMm())
            + ".");
    gaps.forEach(
        gap -> {
          if (gap.closes()) {
            outcome.line(gap.says(units));
          } else {
            outcome.warn(gap.says(units));
          }
        });
    crossings.forEach(crossing -> outcome.warn(says(crossing, link.wireMm(), units)));
    if (crossings.isEmpty()) {
      outcome.line("The wire does not cross itself.");
    }
  }

  /** Wire that lies into wire by less than half its thickness presses; by more it crosses. */
  private static String says(Crossing crossing, double wireMm, UnitStyle units) {
    String places =
        units.length(crossing.atMm())
            + " and "
            + units.length(crossing.andMm())
            + " along the blank: ";
    return -crossing.gapMm() < wireMm / 2
        ? "The wire would press "
            + units.length(-crossing.gapMm())
            + " into itself "
            + places
            + "open a bend a little, or take other formers."
        : "The wire would cross itself " + places + "take other formers or another blank.";
  }

  private static void passes(Outcome outcome, UnitStyle units, List<Passage> passages) {
    passages.stream()
        .map(
            passage ->
                "An eye of "
                    + units.length(passage.eye().insideMm())
                    + " is open "
                    + units.length(Math.max(0, passage.openMm()))
                    + " for a wire; its mouth is "
                    + (passage.soldered()
                        ? "closed by its joint."
                        : units.length(passage.mouthMm()) + " wide."))
        .distinct()
        .forEach(outcome::line);
    List<String> troubles =
        passages.stream().flatMap(passage -> passage.troubles().stream()).distinct().toList();
    outcome.warn(troubles);
    if (troubles.isEmpty()) {
      outcome.line("That ring goes into the eyes and moves there.");
    }
  }
}
