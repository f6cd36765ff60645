package linkwright.reckon;

import java.util.List;
import java.util.Optional;
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
              Ask.needed("wire", "ring's wire", "0.9 mm or 19 AWG"),
              Ask.needed("inside", "ring inside", "3 mm"),
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
    Optional<Double> eyeInside = answers.size("eye-inside");
    Optional<Double> eyeWire = answers.wire("eye-wire");
    if (answers.wrong()) {
      return;
    }
    double wireMm = wire.orElseThrow();
    double insideMm = inside.orElseThrow();
    double yield = metal.orElseThrow().yieldMpa(temper);
    Strength.Held butted = new Strength.Held("ring, only closed", wireMm, insideMm, yield, false);
    Strength.Held soldered = new Strength.Held("soldered ring", wireMm, insideMm, yield, true);
    outcome.put("butted_n", butted.collapseN());
    outcome.put("soldered_n", soldered.collapseN());
    outcome.line(
        "Closed but not soldered, the ring opens at "
            + Figures.force(butted.collapseN())
            + "; it is bent for good from 59 % of that, "
            + Figures.force(butted.setN())
            + ".");
    outcome.line(
        "Soldered, it is drawn long at "
            + Figures.force(soldered.collapseN())
            + ", and not broken; it is out of round for good from 46 % of that, "
            + Figures.force(soldered.setN())
            + ".");
    outcome.line(
        "Solder makes it hold "
            + Figures.number(soldered.collapseN() / butted.collapseN())
            + " times as much.");
    chain(outcome, soldered, eyeInside.orElse(insideMm), eyeWire.orElse(wireMm));
    if (insideMm < wireMm) {
      outcome.warn(
          "The wire is thicker than the ring is wide inside: these loads are meant for rings wider"
              + " than their wire.");
    }
    outcome.line(
        "For comparing rings, in "
            + temper.word()
            + " "
            + Figures.named(metal.get())
            + ": not for loads on which anybody's safety hangs.");
  }

  private static void chain(
      Outcome outcome, Strength.Held soldered, double eyeInsideMm, double eyeWireMm) {
    double yield = soldered.yieldMpa();
    Strength.Held open =
        new Strength.Held("eye of the link, unsoldered", eyeWireMm, eyeInsideMm, yield, false);
    Strength.Held closed =
        new Strength.Held("soldered eye of the link", eyeWireMm, eyeInsideMm, yield, true);
    outcome.line("All soldered, the chain's weakest is the " + weakest(soldered, closed) + ".");
    outcome.line(
        "With an eye left unsoldered, the weakest is the " + weakest(soldered, open) + ".");
  }

  private static String weakest(Strength.Held... elements) {
    Strength.Held held = Strength.weakest(List.of(elements));
    return held.says() + ", at " + Figures.force(held.collapseN());
  }
}
