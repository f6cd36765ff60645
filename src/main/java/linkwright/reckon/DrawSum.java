package linkwright.reckon;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import linkwright.quantity.Gauge;
import linkwright.quantity.Length;
import linkwright.quantity.Read;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Metal;
import linkwright.wire.DrawPlan;
import linkwright.wire.Pass;
import linkwright.wire.WireDrawing;

/** Wire drawn down through a plate: its length, the passes, the anneals, the rod. */
final class DrawSum implements Working {
  /** Where no metal is named. Common practice, no source. */
  private static final double USUAL_REDUCTION = 0.5;

  private static final Sum SUM =
      new Sum(
          "draw",
          "drawing wire down",
          "The length after drawing, the passes through the plate, and where to anneal.",
          List.of(
              Ask.needed("from", "wire now", "2 mm"),
              Ask.needed("to", "wire wished", "1 mm"),
              Ask.needed("length", "start length", "1 m"),
              Ask.optional("holes", "plate's holes", "1.8 mm,1.6 mm,1.4 mm,1.2 mm,1 mm"),
              Ask.metal(false),
              Ask.optional("annealed-at", "last anneal", "at 2 mm; the wire as it is now"),
              Ask.optional("pointing", "pointing loss", "15 mm at each pass; none"),
              Ask.optional("finished", "finished wire", "3 m needed; what comes out")));

  @Override
  public Sum sum() {
    return SUM;
  }

  @Override
  public void work(Answers answers, Outcome outcome) {
    Optional<Double> from = answers.wire("from");
    Optional<Double> to = answers.wire("to");
    Optional<Double> length = answers.length("length");
    Optional<List<Length>> holes = answers.read("holes", DrawSum::holes);
    Optional<Metal> metal = answers.metal();
    Optional<Double> annealedAt = answers.wire("annealed-at");
    Optional<Double> pointing = answers.length("pointing");
    Optional<Double> finished = answers.size("finished");
    if (from.isPresent() && annealedAt.isPresent()) {
      answers.check(
          "annealed-at",
          annealedAt.get() >= from.get(),
          "Wire only becomes thinner: at its last anneal it was no thinner than it is now.");
    }
    if (answers.wrong()) {
      return;
    }
    Optional<WireDrawing> drawing =
        answers.found(
            "to", WireDrawing.of(from.orElseThrow(), to.orElseThrow(), length.orElseThrow()));
    if (drawing.isEmpty()) {
      return;
    }
    double limit = metal.map(known -> known.reductionShare().value()).orElse(USUAL_REDUCTION);
    List<Double> plate =
        holes
            .map(list -> list.stream().map(Length::mm).toList())
            .orElseGet(() -> gaugePlate(from.get(), to.get()));
    Optional<DrawPlan> plan =
        answers.found(
            "holes",
            WireDrawing.passes(
                plate,
                from.get(),
                to.get(),
                limit,
                pointing.orElse(0.0),
                annealedAt.orElse(from.get())));
    if (plan.isEmpty()) {
      return;
    }
    Optional<Double> after =
        pointing.orElse(0.0) > 0
            ? answers.found("length", plan.get().lengthMm(length.get()))
            : Optional.of(drawing.get().lengthMm());
    if (after.isEmpty()) {
      return;
    }
    List<Pass> passes = plan.get().passes();
    outcome.put("length_mm", after.get());
    outcome.put("reduction_percent", 100 * drawing.get().reduction());
    outcome.put("passes", passes.size());
    outcome.put(
        "anneal_before",
        IntStream.range(0, passes.size())
            .filter(i -> passes.get(i).annealBefore())
            .mapToObj(i -> i + 1)
            .toList());
    UnitStyle units = answers.units();
    outcome.line(
        units.length(length.get())
            + " of "
            + units.wire(from.get())
            + " becomes "
            + units.length(after.get())
            + " of "
            + units.wire(to.get())
            + "; "
            + Figures.percent(drawing.get().reduction())
            + " of the area is drawn off.");
    if (holes.isEmpty() && !passes.isEmpty()) {
      outcome.line(
          "No holes were given: reckoned with a plate whose holes are one number of the American"
              + " gauge apart.");
    }
    passes(outcome, plan.get(), limit, metal, units);
    double wished = finished.orElse(after.get());
    outcome.line(
        "For "
            + units.length(wished)
            + " of finished wire begin with a rod of "
            + units.length(plan.get().rodLengthMm(wished))
            + (pointing.isPresent()
                ? "."
                : " and as much more as the pointed ends take, one at each pass."));
    outcome.warn(plan.get().warnings());
  }

  private static void passes(
      Outcome outcome, DrawPlan plan, double limit, Optional<Metal> metal, UnitStyle units) {
    if (plan.passes().isEmpty()) {
      outcome.line("The wire has that size already: no pass is needed.");
      return;
    }
    List<String> told = new ArrayList<>();
    for (Pass pass : plan.passes()) {
      told.add((pass.annealBefore() ? "anneal, then " : "") + units.wire(pass.toMm()));
    }
    outcome.line(
        Figures.count(plan.passes().size(), "pass") + ": " + String.join(", ", told) + ".");
    outcome.line(
        (plan.annealBeforeMm().isEmpty() ? "No anneal is needed on the way" : "Anneal in between")
            + ": "
            + metal.map(Figures::named).orElse("metal that is not named")
            + " takes "
            + Figures.percent(limit)
            + " off the area between anneals"
            + (metal.isPresent() ? "." : " as a rule."));
  }

  /** A hole for the wish and one more at each gauge number above it, up to the wire. */
  private static List<Double> gaugePlate(double fromMm, double toMm) {
    double step = Gauge.awgMm(0) / Gauge.awgMm(1);
    List<Double> holes = new ArrayList<>();
    for (double hole = toMm; hole < fromMm; hole *= step) {
      holes.add(hole);
    }
    return holes;
  }

  private static Read<List<Length>> holes(String typed) {
    return Length.readWireList(typed);
  }
}
