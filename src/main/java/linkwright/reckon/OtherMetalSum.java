package linkwright.reckon;

import java.util.List;
import java.util.Optional;
import linkwright.quantity.Mass;
import linkwright.reference.Metal;

/** What the same piece weighs in another metal. */
final class OtherMetalSum implements Working {
  private static final Sum SUM =
      new Sum(
          "other-metal",
          "the same piece in another metal",
          "The mass of a piece in another metal: the same volume.",
          List.of(
              Ask.metal(true),
              Ask.needed("mass", "mass now", "11.5 g"),
              new Ask("into", "other metal", "gold-14k-yellow", true, Ask.Kind.METAL, List.of())));

  @Override
  public Sum sum() {
    return SUM;
  }

  /** m₂ = m₁·ρ₂/ρ₁. */
  @Override
  public void work(Answers answers, Outcome outcome) {
    Optional<Metal> metal = answers.metal();
    Optional<Double> mass = answers.read("mass", Mass::read).map(Mass::grams);
    Optional<Metal> into = answers.read("into", answers.given().reference()::metal);
    if (answers.wrong()) {
      return;
    }
    double from = metal.orElseThrow().densityGCm3().value();
    double to = into.orElseThrow().densityGCm3().value();
    double other = mass.orElseThrow() * to / from;
    outcome.put("mass_g", other);
    outcome.put("density_from_g_cm3", from);
    outcome.put("density_to_g_cm3", to);
    outcome.line(
        answers.units().mass(mass.get())
            + " of "
            + Figures.named(metal.get())
            + " are "
            + answers.units().mass(other)
            + " of "
            + Figures.named(into.get())
            + ", by "
            + Figures.number(from)
            + " and "
            + Figures.number(to)
            + " g/cm³.");
    outcome.line(
        "Densities of gold alloys differ by recipe: your supplier's goes before this. Kerf, tails"
            + " and spares are not in it; a plan in that metal counts them.");
  }
}
