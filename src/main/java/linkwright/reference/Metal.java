package linkwright.reference;

import java.util.List;
import java.util.OptionalInt;

/**
 * A metal that wire is made of.
 *
 * @param id the short word that names it in files and commands
 * @param name its name for reading
 * @param alsoCalled other names that find it
 * @param family the metal it is named for
 * @param finenessPermille parts of precious metal in a thousand, if it has any to declare
 * @param densityGCm3 density, g/cm³
 * @param meltC from solidus to liquidus, °C
 * @param annealC annealing range, °C
 * @param glow what its glow looks like at that heat, and in what light
 * @param quench how to cool it
 * @param modulusGpa Young's modulus, GPa
 * @param yieldSoftMpa yield stress annealed, MPa
 * @param yieldHardMpa yield stress hard drawn, MPa
 * @param tensileSoftMpa tensile strength annealed, MPa
 * @param tensileHardMpa tensile strength hard drawn, MPa
 * @param reductionShare share of the area that may be drawn off between two anneals, 0 to 1
 * @param warnings what to mind with it
 * @param notPlanned why no new plan is made with it; empty if one is
 */
public record Metal(
    String id,
    String name,
    List<String> alsoCalled,
    Family family,
    OptionalInt finenessPermille,
    PublishedFigure densityGCm3,
    Range meltC,
    Range annealC,
    String glow,
    String quench,
    PublishedFigure modulusGpa,
    PublishedFigure yieldSoftMpa,
    PublishedFigure yieldHardMpa,
    PublishedFigure tensileSoftMpa,
    PublishedFigure tensileHardMpa,
    PublishedFigure reductionShare,
    List<String> warnings,
    String notPlanned) {
  /** Copies the lists. */
  public Metal {
    alsoCalled = List.copyOf(alsoCalled);
    warnings = List.copyOf(warnings);
  }

  /** The yield stress at a temper, MPa. */
  public double yieldMpa(Temper temper) {
    return temper == Temper.SOFT ? yieldSoftMpa.value() : yieldHardMpa.value();
  }

  /**
   * The stress to reckon bending with, MPa: the mean of yield and tensile strength at a temper,
   * because wire hardens as it is bent.
   */
  public double bendingMpa(Temper temper) {
    double tensile = temper == Temper.SOFT ? tensileSoftMpa.value() : tensileHardMpa.value();
    return (yieldMpa(temper) + tensile) / 2;
  }

  /** Young's modulus in MPa, as the formulas of bending take it. */
  public double modulusMpa() {
    return modulusGpa.value() * 1000;
  }

  /** The stress to reckon bending with as a share of the modulus: how springy the wire is. */
  public double bendingShare(Temper temper) {
    return bendingMpa(temper) / modulusMpa();
  }
}
