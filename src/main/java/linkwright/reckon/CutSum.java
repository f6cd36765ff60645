package linkwright.reckon;

import java.util.List;
import java.util.Optional;
import linkwright.cutting.BlanksWanted;
import linkwright.cutting.CutOrder;
import linkwright.cutting.CutPlan;
import linkwright.cutting.Cutting;
import linkwright.cutting.LengthCut;
import linkwright.cutting.RingsWanted;
import linkwright.plan.UsualFigures;
import linkwright.quantity.Length;
import linkwright.quantity.UnitStyle;

/** What the lengths on hand give of blanks and rings. */
final class CutSum implements Working {
  private static final Sum SUM =
      new Sum(
          "cut",
          "cutting the wire on hand",
          "The best way to cut blanks and rings from the lengths on hand.",
          List.of(
              Ask.needed("stock", "lengths on hand", "412 mm,96 mm"),
              Ask.optional("blank", "link's blank", "38 mm"),
              Ask.optional("want", "blanks wanted", "12"),
              Ask.optional(
                  "ring", "ring's turn", "12.3 mm of wire, one turn of the coil with its kerf"),
              Ask.optional("want-rings", "rings wanted", "13; one more than blanks"),
              Ask.optional("kerf", "kerf", "0.3 mm with a saw; none with cutters"),
              Ask.optional("coil-tail", "coil tail", "10 mm by which the coil is held")),
          List.of("blank", "want"));

  @Override
  public Sum sum() {
    return SUM;
  }

  @Override
  public void work(Answers answers, Outcome outcome) {
    Optional<List<Length>> stock = answers.read("stock", Length::readList);
    Optional<Double> blank = answers.size("blank");
    Optional<Integer> want = answers.count("want");
    Optional<Double> turn = answers.size("ring");
    Optional<Integer> wantRings = answers.count("want-rings");
    double kerf = answers.length("kerf").orElse(0.0);
    double tail = answers.length("coil-tail").orElse(UsualFigures.COIL_TAIL_MM);
    together(answers, "blank", "want", "Give the blank too, such as 38 mm.");
    together(answers, "want", "blank", "Say how many blanks are wanted, such as 12.");
    together(answers, "ring", "want-rings", "Give the wire of one ring too, such as 12.3 mm.");
    if (!answers.has("ring")) {
      answers.ask("blank", "Give the blank and how many, or the ring's turn and how many.");
    }
    if (answers.wrong()) {
      return;
    }
    int rings = turn.isEmpty() ? 0 : wantRings.orElseGet(() -> want.orElse(0) + 1);
    List<BlanksWanted> blanks =
        blank.map(mm -> List.of(BlanksWanted.each(mm, want.orElse(0)))).orElse(List.of());
    Optional<RingsWanted> ring =
        turn.filter(mm -> rings > 0).map(mm -> RingsWanted.each(mm, tail, rings));
    CutOrder order =
        CutOrder.of(stock.orElseThrow().stream().map(Length::mm).toList(), blanks, ring, kerf);
    if (!order.problems().isEmpty()) {
      answers.problem("", String.join(" ", order.problems()));
      return;
    }
    CutPlan plan = Cutting.plan(order);
    int cut = plan.blanks().stream().mapToInt(Integer::intValue).sum();
    int missing = plan.shortBlanks().stream().mapToInt(Integer::intValue).sum() + plan.shortRings();
    outcome.put("blanks", cut);
    outcome.put("rings", plan.rings());
    outcome.put("left_mm", plan.leftMm());
    outcome.put("short", missing);
    told(outcome, answers.units(), plan, blank.isPresent(), ring.isPresent());
  }

  private static void together(Answers answers, String key, String with, String sentence) {
    if (answers.has(with)) {
      answers.ask(key, sentence);
    }
  }

  private static void told(
      Outcome outcome, UnitStyle units, CutPlan plan, boolean blanks, boolean rings) {
    if (blanks) {
      outcome.line(
          "In all "
              + Figures.count(plan.blanks().get(0), "blank")
              + (rings ? " and " + Figures.count(plan.rings(), "ring") : "")
              + ".");
    } else {
      outcome.line("In all " + Figures.count(plan.rings(), "ring") + ".");
    }
    for (LengthCut cut : plan.cuts()) {
      outcome.line(says(cut, units));
    }
    if (!plan.complete()) {
      int noBlanks = blanks ? plan.shortBlanks().get(0) : 0;
      outcome.warn(
          "The wire will not do: "
              + (noBlanks > 0 ? Figures.count(noBlanks, "blank") : "")
              + (noBlanks > 0 && plan.shortRings() > 0 ? " and " : "")
              + (plan.shortRings() > 0 ? Figures.count(plan.shortRings(), "ring") : "")
              + " short, about "
              + units.length(plan.shortMm())
              + " of wire.");
    }
    if (!plan.proved()) {
      outcome.warn("This is the best way found, not proved to be the best there is.");
    }
  }

  private static String says(LengthCut cut, UnitStyle units) {
    int blanks = cut.blanks().stream().mapToInt(Integer::intValue).sum();
    String pieces =
        (blanks > 0 ? Figures.count(blanks, "blank") : "")
            + (blanks > 0 && cut.rings() > 0 ? " and " : "")
            + (cut.rings() > 0 ? "a coil of " + Figures.count(cut.rings(), "ring") : "");
    return "From "
        + units.length(cut.stockMm())
        + ": "
        + (cut.opened() ? pieces : "nothing")
        + ", "
        + units.length(cut.restMm())
        + " left.";
  }
}
