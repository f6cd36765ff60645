package linkwright.reckon;

import java.util.List;
import java.util.Optional;
import linkwright.quantity.UnitStyle;
import linkwright.wire.Section;
import linkwright.wire.WireSection;

/** Which round wire gives another section: the same area, whatever is lost to trueing apart. */
final class SectionSum implements Working {
  /** What makers take more of the area for trueing and edges. Common practice, no source. */
  private static final double ALLOWANCE = 0.25;

  private static final Sum SUM =
      new Sum(
          "section",
          "which round for another section",
          "The round wire of the same area as half-round, square or strip.",
          List.of(
              Ask.words(
                  "section",
                  "section wished",
                  "half-round",
                  "half-round",
                  "square",
                  "strip",
                  "round"),
              Ask.needed("size", "size wished", "2 mm or 3 mm x 1 mm for strip")));

  @Override
  public Sum sum() {
    return SUM;
  }

  /** Equal area: a half-round of width d is πd²/8, so the round is d/√2. */
  @Override
  public void work(Answers answers, Outcome outcome) {
    Section section = answers.read("section", Section::read).orElse(Section.HALF_ROUND);
    Optional<WireSection> size = answers.read("size", text -> WireSection.read(section, text));
    if (answers.wrong()) {
      return;
    }
    double round = Math.sqrt(4 * size.orElseThrow().areaMm2() / Math.PI);
    double start = round * Math.sqrt(1 + ALLOWANCE);
    outcome.put("area_mm2", size.get().areaMm2());
    outcome.put("round_mm", round);
    outcome.put("start_mm", start);
    outcome.line("Round wire of " + said(answers, round) + " has the same area.");
    outcome.line(
        "Makers start thicker, from about "
            + said(answers, start)
            + ": a quarter more area, of which trueing and edges take a fifth (common practice, no"
            + " source).");
  }

  /** A thickness, with the nearest gauge for whoever asked in gauge. */
  private static String said(Answers answers, double mm) {
    String size = answers.units().wire(mm);
    return answers.inGauge("size") && !size.contains("AWG")
        ? size + " (near " + UnitStyle.INCH.wireExample(mm) + ")"
        : size;
  }
}
