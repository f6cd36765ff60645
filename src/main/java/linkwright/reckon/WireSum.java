package linkwright.reckon;

import java.util.List;
import java.util.Optional;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Metal;
import linkwright.wire.Section;
import linkwright.wire.WireMass;
import linkwright.wire.WireSection;

/** What a length of wire weighs. */
final class WireSum implements Working {
  /** More than this no bench has drawn: a unit was slipped, mm. Common practice, no source. */
  private static final double FAR_MM = 500_000;

  private static final double M_PER_KM = 1000;

  private static final Sum SUM =
      new Sum(
          "wire",
          "what wire weighs",
          "The section and the mass of a length of wire.",
          List.of(
              Ask.metal(true),
              Ask.needed("wire", "thickness", "0.9 mm or 19 AWG, a strip 3 mm x 1 mm"),
              Ask.needed("length", "length", "1 m"),
              Ask.words("section", "section", "round", "round", "square", "half-round", "strip")));

  @Override
  public Sum sum() {
    return SUM;
  }

  @Override
  public void work(Answers answers, Outcome outcome) {
    Optional<Metal> metal = answers.metal();
    Section section = answers.read("section", Section::read).orElse(Section.ROUND);
    Optional<WireSection> wire = answers.read("wire", text -> WireSection.read(section, text));
    Optional<Double> length = answers.length("length");
    if (answers.wrong()) {
      return;
    }
    double area = wire.orElseThrow().areaMm2();
    double density = metal.orElseThrow().densityGCm3().value();
    double mass = WireMass.grams(area, length.orElseThrow(), density);
    outcome.put("area_mm2", area);
    outcome.put("mass_g", mass);
    outcome.line(
        answers.units().length(length.get())
            + " of it weighs "
            + answers.units().mass(mass)
            + " ("
            + Figures.named(metal.get())
            + ", "
            + Figures.number(density)
            + " g/cm³).");
    if (length.get() >= FAR_MM) {
      outcome.warn(
          answers.units().length(length.get())
              + " of wire? Did you mean "
              + answers.units().length(length.get() / M_PER_KM)
              + "?");
    }
    outcome.line("The section is " + section(area, answers.units()) + ".");
  }

  private static String section(double mm2, UnitStyle units) {
    return units == UnitStyle.INCH
        ? Figures.number(mm2 / (25.4 * 25.4)) + " in²"
        : Figures.number(mm2) + " mm²";
  }
}
