package linkwright.reckon;

import java.util.List;
import java.util.Optional;
import linkwright.plan.SolderHeat;
import linkwright.quantity.Degrees;
import linkwright.quantity.SaidIn;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Family;
import linkwright.reference.Metal;
import linkwright.reference.Solder;

/** Annealing and hardening, and what the solder in the chain allows of it. */
final class HeatSum implements Working {
  /** Solution anneal of sterling, °C. From memory; go by the metal's sheet. */
  private static final double SOLUTION_FROM_C = 700;

  private static final double SOLUTION_TO_C = 750;

  private static final Sum SUM =
      new Sum(
          "heat",
          "annealing and hardening",
          "At what heat a metal is annealed and hardened, and whether the solder bears it.",
          List.of(
              Ask.metal(true),
              new Ask("solder", "solder in it", "hard-silver", false, Ask.Kind.SOLDER, List.of())));

  @Override
  public Sum sum() {
    return SUM;
  }

  @Override
  public void work(Answers answers, Outcome outcome) {
    Optional<Metal> metal = answers.metal();
    Optional<Solder> solder = answers.read("solder", answers.given().reference()::solder);
    if (answers.wrong()) {
      return;
    }
    Metal of = metal.orElseThrow();
    outcome.put("anneal_from_c", of.annealC().from());
    outcome.put("anneal_to_c", of.annealC().to());
    outcome.put("melts_from_c", of.meltC().from());
    UnitStyle units = answers.units();
    outcome.line(
        "Anneal at "
            + Degrees.heat(of.annealC().from(), of.annealC().to(), units)
            + " ("
            + SaidIn.units(of.annealC().source(), units)
            + "). "
            + of.quench());
    solder.ifPresent(known -> bears(outcome, units, "annealing", of.annealC().to(), known));
    solder
        .filter(known -> known.family() == of.family())
        .flatMap(known -> SolderHeat.of(of, known, units))
        .ifPresent(outcome::warn);
    if (of.family() == Family.SILVER && of.finenessPermille().orElse(0) < 999) {
      outcome.put("solution_from_c", SOLUTION_FROM_C);
      outcome.put("solution_to_c", SOLUTION_TO_C);
      outcome.line(
          Degrees.inUnits(
              "Hardening by heat: 700 to 750 °C through and through, quenched in water at once,"
                  + " then about 300 °C for half an hour to an hour (from memory: go by the metal's"
                  + " sheet).",
              units));
      solder.ifPresent(
          known -> bears(outcome, units, "that solution anneal", SOLUTION_TO_C, known));
      if (solder.isEmpty()) {
        outcome.warn(
            Degrees.inUnits("Which solder is in it? At 700 to 750 °C easy solder runs.", units));
      }
    } else {
      outcome.line(
          "Hardening by heat: ask the maker of the metal; hammering and drawing harden it.");
    }
    outcome.warn(of.warnings().stream().map(says -> Degrees.inUnits(says, units)).toList());
  }

  private static void bears(
      Outcome outcome, UnitStyle units, String what, double heatC, Solder solder) {
    if (solder.solidusC() <= heatC) {
      outcome.warn(
          Figures.begun(solder.name())
              + " begins to melt at "
              + units.temperature(solder.solidusC())
              + ": it does not bear "
              + what
              + " at "
              + Degrees.heat(heatC, units)
              + ".");
    }
  }
}
