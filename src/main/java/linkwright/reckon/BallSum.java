package linkwright.reckon;

import java.util.List;
import java.util.Optional;

/** How much wire draws up into a ball at its end. */
final class BallSum implements Working {
  private static final Sum SUM =
      new Sum(
          "ball",
          "wire for a ball",
          "The length of wire that the flame draws up into a ball.",
          List.of(
              Ask.needed("wire", "thickness", "0.8 mm or 20 AWG"),
              Ask.needed("ball", "ball's width", "2 mm")));

  @Override
  public Sum sum() {
    return SUM;
  }

  /** Equal volume: πD³/6 = πd²L/4, so L = ⅔·D³/d². */
  @Override
  public void work(Answers answers, Outcome outcome) {
    Optional<Double> wire = answers.wire("wire");
    Optional<Double> ball = answers.size("ball");
    if (answers.wrong()) {
      return;
    }
    double d = wire.orElseThrow();
    double across = ball.orElseThrow();
    if (across <= d) {
      answers.problem("ball", "A ball is thicker than its wire: give more than the wire.");
      return;
    }
    double length = 2.0 / 3 * across * across * across / (d * d);
    outcome.put("length_mm", length);
    outcome.line(
        answers.units().length(length)
            + " of wire draw up into a ball of "
            + answers.units().length(across)
            + ".");
    outcome.line("Beyond some three times the wire a ball hangs and drops: use a charcoal hollow.");
  }
}
