package linkwright.reckon;

import java.util.List;
import java.util.Optional;
import linkwright.link.Oval;
import linkwright.link.Ring;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Metal;
import linkwright.reference.Temper;
import linkwright.wire.Strength;

/** What a ring holds when it is pulled, and which element of a chain is weakest. */
final class PullSum implements Working {
  private static final Sum SUM =
      new Sum(
          "pull",
          "what a ring holds",
          "The pull at which a ring opens or is drawn long, and the weakest of a chain.",
          List.of(
              Ask.metal(true),
              Ask.temper(),
              Ask.needed("wire", "ring wire's thickness", "0.9 mm or 19 AWG"),
              Ask.needed("inside", "ring inside", "3 mm"),
              Ask.optional("oval-inside", "oval inside", "2.4 mm wide once squeezed; stays round"),
              Ask.optional("eye-inside", "eye inside", "2.5 mm; the ring's"),
              Ask.optional("eye-wire", "link's wire", "0.9 mm; the ring's")));

  @Override
  public Sum sum() {
    return SUM;
  }

  @Override
  public void work(Answers answers, Outcome outcome) {
    Optional<Metal> metal = answers.metal();
    Temper temper = answers.temper();
    Optional<Double> wire = answers.wire("wire");
    Optional<Double> inside = answers.size("inside");
    Optional<Double> oval = answers.size("oval-inside");
    Optional<Double> eyeInside = answers.size("eye-inside");
    Optional<Double> eyeWire = answers.wire("eye-wire");
    if (answers.wrong()) {
      return;
    }
    // A ring narrower inside than its wire gets its loads too, with a warning.
    Ring ring = new Ring(inside.orElseThrow(), wire.orElseThrow());
    Optional<Oval> squeezed =
        oval.flatMap(mm -> answers.found("oval-inside", Oval.squeeze(ring, mm)));
    if (answers.wrong()) {
      return;
    }
    UnitStyle units = answers.units();
    double wireMm = wire.get();
    double insideMm = inside.get();
    Loads loads =
        new Loads(
            metal.orElseThrow(),
            temper,
            wireMm,
            oval.orElse(insideMm),
            squeezed.map(Oval::insideLengthMm).orElse(insideMm));
    Strength.Element butted = loads.ring("ring, only closed", false);
    Strength.Element soldered = loads.ring("soldered ring", true);
    outcome.put("butted_n", butted.collapseN());
    outcome.put("soldered_n", soldered.collapseN());
    outcome.line(
        "Closed but not soldered, the ring opens at "
            + Figures.force(butted.collapseN(), units)
            + "; it is bent for good from "
            + set(butted, units)
            + ".");
    outcome.line(
        "Soldered, it is drawn long at "
            + Figures.force(soldered.collapseN(), units)
            + ", and not broken; it is out of shape for good from "
            + set(soldered, units)
            + ".");
    outcome.line(
        "Solder makes it hold "
            + Figures.number(soldered.collapseN() / butted.collapseN())
            + " times as much"
            + (temper == Temper.HARD ? ", though its heat has made the wire soft." : "."));
    chain(outcome, units, loads, eyeInside.orElse(insideMm), eyeWire.orElse(wireMm));
    if (insideMm < wireMm) {
      outcome.warn(
          "The wire is thicker than the ring is wide inside: these loads are meant for rings wider"
              + " than their wire.");
    }
    outcome.line(
        "Reckoned in "
            + temper.word()
            + " "
            + Figures.named(metal.get())
            + ", what is soldered as soft. "
            + Strength.PROVISO);
  }

  private record Loads(Metal metal, Temper temper, double wireMm, double acrossMm, double alongMm) {
    Strength.Element ring(String says, boolean soldered) {
      return Strength.Element.of(says, wireMm, acrossMm, alongMm, metal, temper, soldered);
    }

    Strength.Element eye(String says, double wireMm, double insideMm, boolean soldered) {
      return Strength.Element.of(says, wireMm, insideMm, insideMm, metal, temper, soldered);
    }
  }

  private static String set(Strength.Element held, UnitStyle units) {
    return Figures.percent(Math.rint(100 * held.setN() / held.collapseN()) / 100)
        + " of that, "
        + Figures.force(held.setN(), units);
  }

  private static void chain(
      Outcome outcome, UnitStyle units, Loads loads, double eyeInsideMm, double eyeWireMm) {
    Strength.Element ring = loads.ring("soldered ring", true);
    Strength.Element open = loads.eye("eye of the link, unsoldered", eyeWireMm, eyeInsideMm, false);
    Strength.Element closed = loads.eye("soldered eye of the link", eyeWireMm, eyeInsideMm, true);
    outcome.line("All soldered, the chain's weakest is the " + weakest(units, ring, closed) + ".");
    outcome.line(
        "With an eye left unsoldered, the weakest is the " + weakest(units, ring, open) + ".");
  }

  private static String weakest(UnitStyle units, Strength.Element... elements) {
    Strength.Element held = Strength.weakest(List.of(elements));
    return held.says() + ", at " + Figures.force(held.collapseN(), units);
  }
}
