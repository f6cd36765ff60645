package linkwright.reckon;

import java.util.List;
import java.util.Optional;
import linkwright.quantity.Count;
import linkwright.quantity.Mass;
import linkwright.quantity.Read;

/** What to add to scrap so that the melt has the fineness wished. */
final class AlloySum implements Working {
  private static final Sum SUM =
      new Sum(
          "alloy",
          "what to add to scrap",
          "The fine metal, or the alloying metal, that brings clean scrap to a fineness.",
          List.of(
              Ask.needed("mass", "mass of the scrap", "20 g"),
              Ask.needed("fineness", "its fineness", "800, parts in a thousand"),
              Ask.needed("wished", "fineness wished", "925, parts in a thousand"),
              Ask.optional("added", "fineness of what is added", "999; 0 for alloying metal")));

  @Override
  public Sum sum() {
    return SUM;
  }

  /** x = m·(w − s)/(a − w), all finenesses in parts in a thousand. */
  @Override
  public void work(Answers answers, Outcome outcome) {
    Optional<Double> mass = answers.read("mass", Mass::read).map(Mass::grams);
    Optional<Integer> scrap = answers.read("fineness", AlloySum::permille);
    Optional<Integer> wished = answers.read("wished", AlloySum::permille);
    Optional<Integer> added = answers.read("added", AlloySum::permille);
    if (answers.wrong()) {
      return;
    }
    int from = scrap.orElseThrow();
    int to = wished.orElseThrow();
    int with = added.orElse(to >= from ? 999 : 0);
    double add = mass.orElseThrow() * (to - from) / (with - (double) to);
    if (with == to || add < 0) {
      answers.problem(
          "added",
          "Metal of "
              + with
              + " in a thousand never brings "
              + from
              + " to "
              + to
              + ": add "
              + (to > from ? "finer metal." : "alloying metal, 0."));
      return;
    }
    outcome.put("add_g", add);
    outcome.put("melt_g", mass.get() + add);
    outcome.line(
        "Add "
            + answers.units().mass(add)
            + " of "
            + (with == 0 ? "alloying metal" : "metal of " + with)
            + ": the melt is "
            + answers.units().mass(mass.get() + add)
            + " of "
            + to
            + ".");
    outcome.warn(
        "Only clean scrap of known fineness: soldered scrap brings solder into the melt. Before"
            + " it is marked the melt is assayed.");
  }

  private static Read<Integer> permille(String text) {
    return Count.read(text)
        .flatMap(
            parts ->
                parts <= 1000
                    ? Read.good(parts)
                    : Read.bad("A fineness is parts in a thousand, such as 925."));
  }
}
