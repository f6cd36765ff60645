package linkwright.reckon;

import java.util.List;
import java.util.Optional;
import linkwright.quantity.Share;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Solder;
import linkwright.wire.JointKind;
import linkwright.wire.Section;
import linkwright.wire.SolderNeed;
import linkwright.wire.WireSection;

/** What one joint takes of solder. */
final class SolderSum implements Working {
  /** The solder that a first joint in silver is made with. */
  private static final String USUAL_SOLDER = "hard-silver";

  private static final Sum SUM =
      new Sum(
          "solder",
          "solder for a joint",
          "The piece of solder that fills one joint, and its mass.",
          List.of(
              Ask.needed("wire", "thickness", "0.9 mm, 19 AWG, or half-round 2 mm x 1 mm"),
              Ask.needed("gap", "gap", "0.05 mm"),
              Ask.needed("strip", "solder strip", "1 mm x 0.3 mm"),
              Ask.optional("density", "density", "9.6 g/cm3; from the solder"),
              Ask.optional("solder", "solder", USUAL_SOLDER).as(Ask.Kind.SOLDER),
              Ask.optional("fillet", "fillet", "50 % of what the gap takes"),
              Ask.words(
                  "joint",
                  "joint",
                  "butt (end to end) or side (tip against a wire); butt",
                  "butt",
                  "side")));

  @Override
  public Sum sum() {
    return SUM;
  }

  @Override
  public void work(Answers answers, Outcome outcome) {
    Optional<Double> wire = answers.read("wire", WireSection::read).map(WireSection::roundOfAreaMm);
    Optional<Double> gap = answers.length("gap");
    Optional<WireSection> strip =
        answers.read("strip", text -> WireSection.read(Section.STRIP, text));
    Optional<Double> typedDensity = answers.read("density", PlainNumbers::density);
    Optional<Solder> solder =
        answers.has("solder")
            ? answers.read("solder", answers.given().reference()::solder)
            : answers.given().reference().solder(USUAL_SOLDER).found();
    double fillet =
        answers
            .read("fillet", Share::readAny)
            .map(Share::value)
            .orElse(SolderNeed.USUAL_FILLET_SHARE);
    JointKind joint = answers.read("joint", JointKind::read).orElse(JointKind.BUTT);
    Optional<Double> density = typedDensity.or(() -> solder.map(Solder::densityGCm3));
    if (density.isEmpty() && !answers.has("density")) {
      answers.ask("density", "Give the solder's density, such as 9.6 g/cm3.");
    }
    if (answers.wrong()) {
      return;
    }
    SolderNeed need =
        SolderNeed.of(
            wire.orElseThrow(),
            gap.orElseThrow(),
            fillet,
            strip.orElseThrow().widthMm(),
            strip.get().thicknessMm(),
            density.orElseThrow(),
            joint);
    outcome.put("least_piece_mm", need.leastPieceMm());
    outcome.put("piece_mm", need.pieceMm());
    outcome.put("mass_g", need.massG());
    outcome.put("placed_g", need.placedG());
    UnitStyle units = answers.units();
    outcome.line(
        "The joint takes at least "
            + units.length(need.leastPieceMm())
            + " of that strip, "
            + Figures.number(need.massG() * 1000)
            + " mg.");
    outcome.line(
        "Cut pieces of "
            + units.length(need.pieceMm())
            + ": about as long as the wire is thick, rarely over 1 mm. That places "
            + Figures.number(need.placedG() * 1000)
            + " mg, all of which stays in the chain.");
    if (typedDensity.isEmpty()) {
      outcome.line(
          "Reckoned with "
              + Figures.inside(solder.orElseThrow().name())
              + ", "
              + Figures.number(density.get())
              + " g/cm³; makers differ.");
    }
    outcome.warn(need.warnings());
  }
}
