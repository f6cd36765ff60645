package linkwright.reckon;

import java.util.List;
import java.util.Optional;
import linkwright.quantity.Length;

/** The length of a bracelet or necklace from the wrist or the neck. */
final class BodySum implements Working {
  private static final double INCH_MM = 25.4;

  /** A newborn's wrist, and more than any neck, mm. Common practice, no source. */
  private static final double LEAST_MM = 60;

  private static final double MOST_MM = 700;

  /** What is usual of grown people, mm. Common practice, no source. */
  private static final List<Double> WRIST_MM = List.of(130.0, 220.0);

  private static final List<Double> NECK_MM = List.of(300.0, 450.0);

  private static final Sum SUM =
      new Sum(
          "body",
          "a length from the body",
          "The finished length from wrist or neck as measured, with ease.",
          List.of(
              Ask.needed("around", "wrist or neck", "165 mm, measured close"),
              Ask.words("ease", "ease", "comfortable", "snug", "comfortable", "loose"),
              Ask.optional("own-ease", "ease of your own", "20 mm, in place of the word"),
              Ask.optional("thick", "how thick the chain is", "6 mm"),
              Ask.optional("extender", "extender", "50 mm, added at the end")));

  @Override
  public Sum sum() {
    return SUM;
  }

  /**
   * Around + ease; what thick chain takes from the inside of a closed round, π × thickness, is told
   * beside it and not added: customary ease allows for thin chain already.
   */
  @Override
  public void work(Answers answers, Outcome outcome) {
    Optional<Double> around = answers.size("around");
    around.ifPresent(
        mm ->
            answers.check(
                "around",
                mm >= LEAST_MM && mm <= MOST_MM,
                "That is no wrist or neck: a wrist is usually "
                    + answers.units().length(WRIST_MM.get(0))
                    + " to "
                    + answers.units().length(WRIST_MM.get(1))
                    + " around, a neck "
                    + answers.units().length(NECK_MM.get(0))
                    + " to "
                    + answers.units().length(NECK_MM.get(1))
                    + "."));
    String word = answers.read("ease", linkwright.quantity.Read::good).orElse("comfortable");
    Optional<Double> own = answers.read("own-ease", Length::read).map(Length::mm);
    Optional<Double> thick = answers.size("thick");
    Optional<Double> extender = answers.length("extender");
    if (answers.wrong()) {
      return;
    }
    double[] ease =
        own.map(mm -> new double[] {mm, mm})
            .orElseGet(
                () ->
                    switch (word) {
                      case "snug" -> new double[] {INCH_MM / 4, INCH_MM / 2};
                      case "loose" -> new double[] {INCH_MM, 1.25 * INCH_MM};
                      default -> new double[] {0.75 * INCH_MM, INCH_MM};
                    });
    // Between the widest wrist and the narrowest neck nobody is measured.
    boolean neck = around.orElseThrow() > (WRIST_MM.get(1) + NECK_MM.get(0)) / 2;
    double from = around.get() + ease[0];
    double to = around.get() + ease[1];
    outcome.put("from_mm", from);
    outcome.put("to_mm", to);
    String length =
        from == to
            ? answers.units().length(from)
            : answers.units().length(from) + " to " + answers.units().length(to);
    outcome.line("Finished length " + length + ", clasp and its rings in it.");
    if (own.isEmpty()) {
      outcome.line(
          neck
              ? "That is a neck, and the ease a wrist's: give an ease of your own, tried with a strip"
                  + " of paper."
              : "Ease for a wrist, common practice, no source; try it with a strip of paper.");
    }
    thick.ifPresent(
        mm -> {
          outcome.put("thick_takes_mm", Math.PI * mm);
          outcome.line(
              "Closed round the "
                  + (neck ? "neck" : "wrist")
                  + " a chain this thick takes "
                  + answers.units().length(Math.PI * mm)
                  + " from the inside (π × thickness). The ease allows for thin chain already: add"
                  + " what is more than that, not all of both.");
        });
    extender.ifPresent(
        mm -> {
          outcome.put("with_extender_mm", from + mm);
          outcome.line(
              "With an extender of "
                  + answers.units().length(mm)
                  + " plan a finished length of "
                  + answers.units().length(from + mm)
                  + ", the extender in it: it closes from "
                  + answers.units().length(from)
                  + " to "
                  + answers.units().length(from + mm)
                  + ".");
        });
    outcome.warn("A chain that does not let go can hurt: for a child or at machines, none.");
  }
}
