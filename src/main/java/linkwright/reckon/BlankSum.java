package linkwright.reckon;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import linkwright.fit.Expected;
import linkwright.fit.Fit;
import linkwright.fit.LinkSize;
import linkwright.fit.Maker;
import linkwright.fit.Misfit;
import linkwright.fit.Proposal;
import linkwright.fit.Tried;
import linkwright.link.Forming;
import linkwright.link.Pattern;
import linkwright.plan.FormersOwned;
import linkwright.quantity.Nearest;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Metal;
import linkwright.reference.Temper;

/** The blank and the formers for a wished link, from what test pieces taught. */
final class BlankSum implements Working {
  /** The step that blanks are cut to. */
  private static final double STEP_MM = 0.1;

  private static final Sum SUM =
      new Sum(
          "blank",
          "the blank of a link",
          "The blank and the formers to try next for a wished link.",
          List.of(
              Ask.pattern(),
              Ask.metal(true),
              Ask.temper(),
              Ask.needed("wire", "thickness", "0.9 mm or 19 AWG"),
              Ask.needed("length", "length wished", "14 mm"),
              Ask.needed("width", "width wished", "5 mm"),
              Ask.optional("tried", "file of test pieces", "my-pieces.yaml").as(Ask.Kind.FILE),
              Ask.optional("owned", "formers owned", "bow=3 mm,3.5 mm,4 mm; the pattern's own")
                  .as(Ask.Kind.MANY)));

  @Override
  public Sum sum() {
    return SUM;
  }

  @Override
  public void work(Answers answers, Outcome outcome) {
    Optional<Pattern> pattern = answers.pattern();
    Optional<Metal> metal = answers.metal();
    Temper temper = answers.temper();
    Optional<Double> wire = answers.wire("wire");
    Optional<Double> length = answers.size("length");
    Optional<Double> width = answers.size("width");
    Map<String, List<Double>> owned =
        pattern
            .flatMap(
                known ->
                    answers.read(
                        "owned",
                        text -> FormerSizes.read(text, known.formersMm().keySet(), "former")))
            .orElse(Map.of());
    if (wire.isPresent() && length.isPresent()) {
      LinkSum.checkLength(answers, "length", length.get(), wire.get());
    }
    if (wire.isPresent() && width.isPresent()) {
      LinkSum.checkLength(answers, "width", width.get(), wire.get());
    }
    pattern.ifPresent(known -> checkTried(answers, known));
    if (answers.wrong()) {
      return;
    }
    List<Tried> tried = answers.given().tried();
    LinkSize wish = new LinkSize(length.orElseThrow(), width.orElseThrow());
    double wireMm = wire.orElseThrow();
    Pattern bent = pattern.orElseThrow().withFormersFor(wireMm);
    Maker prior = Maker.unknown(metal.orElseThrow().bendingShare(temper));
    askOutOfReason(answers, bent, wireMm, prior, wish);
    if (answers.wrong()) {
      return;
    }
    Maker maker = Fit.learn(bent, wireMm, prior, tried, wish);
    Optional<Proposal> found =
        answers.found(
            "",
            Fit.next(
                bent,
                wireMm,
                maker,
                wish,
                owned.isEmpty() && bent.isRing()
                    ? FormersOwned.mandrel(bent, wireMm, maker, wish.lengthMm())
                    : owned,
                STEP_MM));
    found.ifPresent(
        proposal -> {
          put(outcome, proposal);
          told(outcome, answers.units(), proposal, maker, tried.size());
          Forming.form(bent, wireMm, proposal.blankMm(), proposal.formersMm(), maker.bending())
              .found()
              .ifPresent(outcome::draw);
        });
  }

  private static void checkTried(Answers answers, Pattern pattern) {
    for (Tried piece : answers.given().tried()) {
      for (String name : piece.formersMm().keySet()) {
        answers.check(
            "tried",
            pattern.formersMm().containsKey(name),
            "A test piece was bent over a former “"
                + name
                + "”, which "
                + pattern.id()
                + " has not. "
                + Nearest.of(name, pattern.formersMm().keySet())
                    .map(near -> "Did you mean " + near + "?")
                    .orElse("It has: " + String.join(", ", pattern.formersMm().keySet()) + "."));
      }
    }
  }

  /** A measure that such a blank does not come to is asked about, with what was likely meant. */
  private static void askOutOfReason(
      Answers answers, Pattern pattern, double wireMm, Maker prior, LinkSize wish) {
    List<Tried> sound = new ArrayList<>(answers.given().tried());
    sound.removeAll(answers.given().toAsk());
    for (Tried piece : answers.given().toAsk()) {
      Maker known = Fit.learn(pattern, wireMm, prior, sound, wish);
      Optional<Expected> expected =
          Fit.expect(pattern, wireMm, known, piece.blankMm(), piece.formersMm()).found();
      ask(
          answers,
          piece,
          "long",
          piece.lengthMm(),
          expected.flatMap(size -> size.misfitOfLength(piece.lengthMm())));
      ask(
          answers,
          piece,
          "wide",
          piece.widthMm(),
          expected.flatMap(size -> size.misfitOfWidth(piece.widthMm())));
      sound.add(piece);
    }
  }

  private static void ask(
      Answers answers,
      Tried piece,
      String which,
      OptionalDouble measured,
      Optional<Misfit> misfit) {
    UnitStyle units = answers.units();
    boolean tooLong = measured.orElse(0) > piece.blankMm();
    if (misfit.isEmpty() && !tooLong) {
      return;
    }
    String meant =
        misfit
            .map(
                far ->
                    far.meantMm().isPresent()
                        ? " Did you mean " + units.length(far.meantMm().getAsDouble()) + "?"
                        : " About "
                            + units.about(far.expectedMm(), far.spreadMm())
                            + " was expected.")
            .orElse("");
    answers.check(
        "tried",
        false,
        "A test piece "
            + units.length(measured.orElse(0))
            + " "
            + which
            + " from a blank of "
            + units.length(piece.blankMm())
            + "?"
            + meant
            + " Put it right in the file, or write confirmed: yes to that piece if it is so.");
  }

  private static void put(Outcome outcome, Proposal proposal) {
    outcome.put("blank_mm", proposal.blankMm());
    outcome.put("formers", proposal.formersMm());
    outcome.put("length_mm", proposal.expected().lengthMm());
    outcome.put("width_mm", proposal.expected().widthMm());
    outcome.put("length_spread_mm", proposal.expected().lengthSpreadMm());
    outcome.put("width_spread_mm", proposal.expected().widthSpreadMm());
  }

  private static void told(
      Outcome outcome, UnitStyle units, Proposal proposal, Maker maker, int pieces) {
    outcome.line(
        "Cut "
            + units.length(proposal.blankMm())
            + " and bend it over "
            + proposal.formersMm().entrySet().stream()
                .map(each -> each.getKey() + " " + units.length(each.getValue()))
                .collect(Collectors.joining(", "))
            + ".");
    outcome.line(
        "Expected: "
            + units.length(proposal.expected().lengthMm())
            + " ± "
            + units.length(proposal.expected().lengthSpreadMm())
            + " long, "
            + units.length(proposal.expected().widthMm())
            + " ± "
            + units.length(proposal.expected().widthSpreadMm())
            + " wide.");
    if (pieces == 0) {
      outcome.line("Reckoned from springback alone: the first test piece will teach more.");
    } else {
      taught(outcome, units, maker, pieces);
    }
    proposal.shortfall(units).ifPresent(outcome::warn);
  }

  private static void taught(Outcome outcome, UnitStyle units, Maker maker, int pieces) {
    double lost = maker.bending().lostMm();
    long turn = Math.round(maker.bending().extraTurnDeg());
    double off = maker.bending().clearanceShare();
    outcome.line(
        Figures.count(pieces, "test piece")
            + " taught: the wire stands "
            + Figures.percent(Math.abs(off))
            + " of its thickness "
            + (off < 0 ? "into" : "off")
            + " its formers before it springs, "
            + (lost < 0
                ? "a link comes out as from a blank " + units.length(-lost) + " longer"
                : units.length(lost) + " of a blank is lost")
            + ", and an eye is turned "
            + Math.abs(turn)
            + (turn < 0 ? "° less" : "° more")
            + " than the pattern says.");
  }
}
