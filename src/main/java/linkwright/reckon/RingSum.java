package linkwright.reckon;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.link.Coil;
import linkwright.link.Oval;
import linkwright.link.Ring;
import linkwright.quantity.Decimals;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Metal;
import linkwright.reference.Temper;
import linkwright.wire.Springback;
import linkwright.wire.WireSection;

/** A ring's blank, its oval, and the coil it is sawn from. */
final class RingSum implements Working {
  private static final Sum SUM =
      new Sum(
          "ring",
          "rings and ovals",
          "A ring's blank, what it adds to the chain, and the coil it is cut from.",
          List.of(
              Ask.needed("wire", "thickness", "0.9 mm or 19 AWG"),
              Ask.needed("inside", "inside diameter", "3 mm"),
              Ask.optional("oval-inside", "oval inside", "2.4 mm wide once squeezed; stays round"),
              Ask.optional("kerf", "kerf", "0.3 mm with a saw; none with cutters"),
              Ask.metal(false),
              Ask.temper()));

  @Override
  public Sum sum() {
    return SUM;
  }

  @Override
  public void work(Answers answers, Outcome outcome) {
    Optional<WireSection> wire = answers.read("wire", WireSection::read);
    Optional<Double> inside = answers.size("inside");
    Optional<Double> width = answers.size("oval-inside");
    double kerf = answers.length("kerf").orElse(0.0);
    Optional<Metal> metal = answers.metal();
    Temper temper = answers.temper();
    if (answers.wrong()) {
      return;
    }
    Optional<Ring> ring =
        answers.found("inside", Ring.of(inside.orElseThrow(), wire.orElseThrow()));
    if (ring.isEmpty()) {
      return;
    }
    Optional<Oval> oval =
        width.flatMap(mm -> answers.found("oval-inside", Oval.squeeze(ring.get(), mm)));
    Optional<Coil> coil = answers.found("kerf", Coil.of(ring.get(), kerf));
    if (answers.wrong()) {
      return;
    }
    double length = oval.map(Oval::insideLengthMm).orElse(inside.get());
    outcome.put("blank_mm", ring.get().blankMm());
    outcome.put("inside_length_mm", length);
    outcome.put("aspect_ratio", ring.get().aspectRatio());
    outcome.put("turn_mm", coil.orElseThrow().turnMm());
    UnitStyle units = answers.units();
    outcome.line(
        "A ring of "
            + units.length(inside.get())
            + " inside takes a blank of "
            + units.length(ring.get().blankMm())
            + "; it is "
            + Decimals.upTo(ring.get().aspectRatio(), 2)
            + " times as wide inside as its wire is thick.");
    outcome.line(
        (oval.isPresent()
                ? "Squeezed to " + units.length(width.orElseThrow()) + " inside it"
                : "It")
            + " adds "
            + units.length(length)
            + " to the chain.");
    outcome.line(
        "On a coil"
            + (kerf > 0 ? " sawn with a kerf of " + units.length(kerf) : "")
            + " each ring takes "
            + units.length(coil.orElseThrow().turnMm())
            + "; the coil is "
            + units.length(coil.get().insideMm())
            + " inside, the former smaller by the springback.");
    metal.ifPresent(known -> mandrel(outcome, units, known, temper, coil.get()));
    oval.flatMap(squeezed -> squeezed.told(wire.get().thicknessMm())).ifPresent(outcome::warn);
  }

  private static void mandrel(
      Outcome outcome, UnitStyle units, Metal metal, Temper temper, Coil coil) {
    OptionalDouble former =
        Springback.formerFor(
            coil.insideMm(), coil.ring().wireMm(), metal.modulusMpa(), metal.bendingMpa(temper));
    outcome.line(
        former.isPresent()
            ? "In "
                + temper.word()
                + " "
                + Figures.named(metal)
                + " a former of "
                + units.length(former.getAsDouble())
                + " leaves that."
            : "In "
                + temper.word()
                + " "
                + Figures.named(metal)
                + " no former leaves that: anneal first.");
  }
}
