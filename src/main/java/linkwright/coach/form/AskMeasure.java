package linkwright.coach.form;

import linkwright.reckon.Ask;

/** What each thing that a sum asks for takes: most take a length. */
public final class AskMeasure {
  private AskMeasure() {}

  /** What it takes. */
  public static Measure of(Ask ask) {
    return switch (ask.key()) {
      case "wire", "ring-wire", "eye-wire", "from", "to", "holes", "annealed-at" -> Measure.WIRE;
      case "fillet", "confidence", "usual-loss", "loss" -> Measure.SHARE;
      case "want", "want-rings", "more", "good", "lost", "fineness", "wished", "added" ->
          Measure.NUMBER;
      case "mass" -> Measure.MASS;
      case "repeat", "strip", "density", "yield" -> Measure.WORDS;
      default -> Measure.LENGTH;
    };
  }
}
