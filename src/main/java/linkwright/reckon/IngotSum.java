package linkwright.reckon;

import java.util.List;
import java.util.Optional;
import linkwright.quantity.Mass;
import linkwright.reference.Metal;
import linkwright.wire.Section;
import linkwright.wire.WireSection;

/** How long a rod an ingot gives, what melting takes first. */
final class IngotSum implements Working {
  /** What melting and pouring take. Common practice, no source. */
  private static final double MELT_LOSS = 0.01;

  private static final double MOST_LOSS = 0.5;

  private static final Sum SUM =
      new Sum(
          "ingot",
          "what an ingot gives",
          "The length of rod, strip or wire that a melt of that mass gives.",
          List.of(
              Ask.metal(true),
              Ask.needed("mass", "mass melted", "42 g"),
              Ask.needed("size", "size rolled or drawn to", "2 mm, a strip 3 mm x 1 mm"),
              Ask.words("section", "section", "square", "round", "square", "half-round", "strip"),
              Ask.optional("loss", "loss in the melt", "1 %")));

  @Override
  public Sum sum() {
    return SUM;
  }

  /** L = 1000·m·(1 − loss)/(ρ·A). */
  @Override
  public void work(Answers answers, Outcome outcome) {
    Optional<Metal> metal = answers.metal();
    Optional<Double> mass = answers.read("mass", Mass::read).map(Mass::grams);
    Section section = answers.read("section", Section::read).orElse(Section.SQUARE);
    Optional<WireSection> size = answers.read("size", text -> WireSection.read(section, text));
    double loss = answers.share("loss").orElse(MELT_LOSS);
    answers.check(
        "loss",
        loss <= MOST_LOSS,
        "More than half lost is no melt: usual are 0.5 to 2 %, more with dirty scrap.");
    if (answers.wrong()) {
      return;
    }
    double density = metal.orElseThrow().densityGCm3().value();
    double left = mass.orElseThrow() * (1 - loss);
    double length = 1000 * left / (density * size.orElseThrow().areaMm2());
    outcome.put("mass_left_g", left);
    outcome.put("length_mm", length);
    outcome.line(
        answers.units().mass(left)
            + " are left of the melt; they give "
            + answers.units().length(length)
            + " ("
            + Figures.named(metal.get())
            + ", "
            + Figures.number(density)
            + " g/cm³).");
    outcome.line("Ends cut off the ingot and pointing the wire come off that.");
  }
}
