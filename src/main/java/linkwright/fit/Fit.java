package linkwright.fit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.link.Formed;
import linkwright.link.Pattern;
import linkwright.quantity.LastAnswers;
import linkwright.quantity.Nearest;
import linkwright.quantity.Read;

/**
 * Learns a maker's hands from test pieces and proposes the next blank and formers.
 *
 * <p>Every measured length and width, and every verdict that stands where a measurement is missing,
 * is an observation of four unknowns: the stress at which the wire gives way, its winding
 * clearance, the wire λ lost from a blank, and the turn τ given to an eye beyond the pattern's.
 * Springback follows from the stress for each former by itself. What is not known of the noise is
 * weighed with them: how much her pieces differ, whether a reading was misread, whether her turn
 * drifts. So one slip does not turn the hands, and the spread widens with misfit. Useful after one
 * piece, better after each.
 *
 * <p>The turn of an eye is taken to be free: where a curl comes to lie against the stem the stem
 * stops it, which is not reckoned with. Not reliable, too, where the turn drifts by degrees with
 * every piece: before some five pieces that cannot be told from chance.
 */
public final class Fit {
  /** More choices of formers than this are not gone through. */
  private static final int MOST_CHOICES = 20_000;

  private static final LastAnswers<Read<Proposal>> PROPOSALS = new LastAnswers<>(100);

  private Fit() {}

  /**
   * What is known of a maker after some test pieces.
   *
   * @param pattern the link pattern of all of them
   * @param wireMm their wire's diameter, above 0
   * @param prior what was known before; {@link Maker#unknown} for a new maker
   * @param tried the pieces, in any order; one that such hands could not have formed at all teaches
   *     nothing
   * @param wish the size that the verdicts speak of
   * @throws IllegalArgumentException if the wire is not a finite number above 0
   */
  public static Maker learn(
      Pattern pattern, double wireMm, Maker prior, List<Tried> tried, LinkSize wish) {
    FitArguments.positive("wireMm", wireMm);
    return new Learning(new PatternShape(pattern, wireMm), prior, tried, wish).learn();
  }

  /**
   * What a blank is expected to become, to set beside what a test piece measured.
   *
   * @param formersMm the formers taken; the pattern's own for names left out
   * @return a sentence in place of a size if the blank cannot be formed by this maker
   */
  public static Read<Expected> expect(
      Pattern pattern, double wireMm, Maker maker, double blankMm, Map<String, Double> formersMm) {
    PatternShape shape = new PatternShape(pattern, wireMm);
    Map<String, Double> formers = Formers.complete(shape, formersMm);
    return shape
        .formMade(blankMm, formers, maker.bending())
        .map(
            link ->
                Sensitivity.of(shape, blankMm, formers, maker, maker.covariance().root())
                    .map(piece -> Expected.of(piece, maker.scatter()))
                    .orElse(new Expected(link.lengthMm(), link.widthMm(), 0, 0)));
  }

  /**
   * A piece that was made, as those hands bend it: a ring had wire enough to close, whatever its
   * blank says.
   *
   * @param wireMm the wire's diameter, mm
   * @param blankMm its blank, mm
   * @param formersMm the formers it was bent over, mm
   * @return empty if it cannot be formed
   */
  public static Optional<Formed> made(
      Pattern pattern, double wireMm, Maker maker, double blankMm, Map<String, Double> formersMm) {
    return new PatternShape(pattern, wireMm).formMade(blankMm, formersMm, maker.bending()).found();
  }

  /**
   * The blank and, among the formers she owns, the formers for a wish.
   *
   * @param pattern the link pattern
   * @param wireMm the wire's diameter, above 0
   * @param maker whose hands
   * @param wish the outside size wished
   * @param ownedMm inside diameters owned, by the pattern's former names; a name left out means the
   *     pattern's own former
   * @param stepMm to what step the blank is cut, 0.5 mm for instance; 0 for no rounding
   * @return a proposal, which says itself whether it reaches the wish; or a sentence if nothing can
   *     be formed at all
   * @throws IllegalArgumentException if the step is negative or not finite
   */
  public static Read<Proposal> next(
      Pattern pattern,
      double wireMm,
      Maker maker,
      LinkSize wish,
      Map<String, List<Double>> ownedMm,
      double stepMm) {
    if (!(stepMm >= 0 && stepMm < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("stepMm must be finite and 0 or more: " + stepMm);
    }
    PatternShape shape = new PatternShape(pattern, wireMm);
    Optional<String> wrong = wrongFormers(shape, ownedMm);
    if (wrong.isPresent()) {
      return Read.bad(wrong.get());
    }
    return PROPOSALS.of(
        List.of(pattern, wireMm, maker, wish, ownedMm, stepMm),
        () -> proposed(shape, maker, wish, ownedMm, stepMm));
  }

  private static Read<Proposal> proposed(
      PatternShape shape,
      Maker maker,
      LinkSize wish,
      Map<String, List<Double>> ownedMm,
      double stepMm) {
    List<Map<String, Double>> choices = Formers.choices(shape, ownedMm);
    Optional<Proposal> best = new NextBlank(shape, maker, wish, stepMm).best(choices);
    if (best.isPresent()) {
      return Read.good(best.get());
    }
    // Nothing forms: the first choice, with wire to spare, says why.
    return Read.bad(
        shape
            .form(100 * wish.lengthMm(), choices.get(0), maker.bending())
            .problem()
            .orElse("No blank comes near a link of that length: check the pattern and the wish."));
  }

  private static Optional<String> wrongFormers(Shape shape, Map<String, List<Double>> ownedMm) {
    for (Map.Entry<String, List<Double>> former : ownedMm.entrySet()) {
      if (!shape.formersMm().containsKey(former.getKey())) {
        String meant =
            Nearest.of(former.getKey(), shape.formersMm().keySet())
                .map(name -> "; did you mean \"" + name + "\"?")
                .orElse(".");
        return Optional.of(
            "The pattern has no former \""
                + former.getKey()
                + "\": it has "
                + String.join(", ", shape.formersMm().keySet())
                + meant);
      }
      if (former.getValue().isEmpty()) {
        return Optional.of(
            "No size is given for the former \""
                + former.getKey()
                + "\": name at least one, or leave the former out to take the pattern's own.");
      }
    }
    return Formers.count(shape, ownedMm) > MOST_CHOICES
        ? Optional.of(
            "There are too many choices of formers to go through: name at most a dozen sizes of"
                + " each.")
        : Optional.empty();
  }
}
