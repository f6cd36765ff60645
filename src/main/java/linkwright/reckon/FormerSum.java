package linkwright.reckon;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Metal;
import linkwright.reference.Temper;
import linkwright.wire.Springback;

/** What a former leaves once the wire has sprung back. */
final class FormerSum implements Working {
  private static final Sum SUM =
      new Sum(
          "former",
          "springback on a former",
          "The inside that wire keeps once it is taken off its former.",
          List.of(
              Ask.metal(true),
              Ask.temper(),
              Ask.needed("wire", "thickness", "0.9 mm or 19 AWG"),
              Ask.needed("former", "former", "3 mm"),
              Ask.optional("yield", "stress", "124 MPa; halfway from yield to tensile strength")));

  @Override
  public Sum sum() {
    return SUM;
  }

  @Override
  public void work(Answers answers, Outcome outcome) {
    Optional<Metal> metal = answers.metal();
    Temper temper = answers.temper();
    Optional<Double> wire = answers.wire("wire");
    Optional<Double> former = answers.size("former");
    Optional<Double> typedYield = answers.read("yield", PlainNumbers::stressMpa);
    if (answers.wrong()) {
      return;
    }
    double wireMm = wire.orElseThrow();
    double formerMm = former.orElseThrow();
    double modulus = metal.orElseThrow().modulusMpa();
    double stress = typedYield.orElse(metal.get().bendingMpa(temper));
    OptionalDouble inside = Springback.insideMm(wireMm, formerMm, modulus, stress);
    if (inside.isEmpty()) {
      answers.problem(
          "former",
          "On so wide a former the wire only bends like a spring and goes straight again:"
              + " take a smaller former, or anneal the wire.");
      return;
    }
    outcome.put("inside_mm", inside.getAsDouble());
    outcome.put("stress_mpa", stress);
    UnitStyle units = answers.units();
    outcome.line(
        "A turn over "
            + units.length(formerMm)
            + " opens to "
            + units.length(inside.getAsDouble())
            + " inside ("
            + temper.word()
            + " "
            + Figures.named(metal.get())
            + ", "
            + (typedYield.isPresent()
                ? "stress "
                : "stress halfway from yield to tensile strength, ")
            + Figures.number(stress)
            + " MPa, modulus "
            + Figures.number(modulus / 1000)
            + " GPa).");
    OptionalDouble smaller = Springback.formerFor(formerMm, wireMm, modulus, stress);
    if (smaller.isPresent()) {
      outcome.line(
          "To keep "
              + units.length(formerMm)
              + " inside, take a former of "
              + units.length(smaller.getAsDouble())
              + ". A test piece knows better.");
    }
    Springback.caution(wireMm, formerMm).ifPresent(outcome::warn);
  }
}
