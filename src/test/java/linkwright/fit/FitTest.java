package linkwright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import linkwright.link.Bending;
import linkwright.link.Formed;
import linkwright.link.Forming;
import linkwright.link.Pattern;
import linkwright.link.PatternFiles;
import linkwright.quantity.UnitStyle;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class FitTest {
  private static final Pattern HOOK = PatternFiles.named("hook-link");
  private static final Pattern SCROLL = PatternFiles.named("scroll");
  private static final Maker NEW = Maker.unknown(0.0027);
  private static final LinkSize WISH = new LinkSize(15, 5);
  private static final Map<String, List<Double>> OWNED =
      Map.of("eye", List.of(2.0, 2.5, 3.0, 3.5, 4.0));

  private static Maker sure(Bending bending) {
    return new Maker(bending, Covariance.ofSpreads(0, 0, 0, 0), Scatter.USUAL);
  }

  private static Proposal next(Maker maker, LinkSize wish, double stepMm) {
    return Fit.next(HOOK, 0.9, maker, wish, OWNED, stepMm).orThrow();
  }

  @Nested
  class TheNextPiece {
    @Test
    void givesTheWishedLengthAndTheNearestWidth() {
      Proposal proposal = next(NEW, WISH, 0);
      assertThat(proposal.reach()).isEqualTo(Reach.REACHED);
      assertThat(proposal.shortfall(UnitStyle.METRIC)).isEmpty();
      assertThat(proposal.expected().lengthMm()).isCloseTo(15, within(0.01));
      assertThat(proposal.formersMm()).isEqualTo(Map.of("eye", 3.0));
      Expected formed =
          Fit.expect(HOOK, 0.9, NEW, proposal.blankMm(), proposal.formersMm()).orThrow();
      assertThat(formed).isEqualTo(proposal.expected());
    }

    @Test
    void isFoundForAnOvalWhoseShortestBlankIsARing() {
      Pattern oval = PatternFiles.named("oval");
      LinkSize wish = new LinkSize(12, 4.8);

      Proposal proposal = Fit.next(oval, 1, Maker.unknown(0), wish, Map.of(), 0).orThrow();

      // Two half circles over 2.8 mm and two straights between them.
      double straight = 12 - (2.8 + 2 * 1);
      assertThat(proposal.reach()).isEqualTo(Reach.REACHED);
      assertThat(proposal.blankMm()).isCloseTo(Math.PI * (2.8 + 1) + 2 * straight, within(0.01));
    }

    @Test
    void isCutToTheWishedStep() {
      Proposal proposal = next(NEW, WISH, 0.5);
      assertThat(2 * proposal.blankMm()).isEqualTo(Math.rint(2 * proposal.blankMm()));
      assertThat(proposal.blankMm()).isCloseTo(next(NEW, WISH, 0).blankMm(), within(0.25));
      assertThat(proposal.expected().lengthMm()).isCloseTo(15, within(0.3));
    }

    @Test
    void takesThePatternsOwnFormerWhereNoneIsNamed() {
      Proposal proposal = Fit.next(HOOK, 0.9, NEW, WISH, Map.of(), 0).orThrow();
      assertThat(proposal.formersMm()).isEqualTo(HOOK.formersMm());
    }

    @Test
    void comesNearerWithEachMeasuredPiece() {
      Maker hands = sure(new Bending(0.0027, 0.09, 0.6, 15));
      Proposal first = next(NEW, WISH, 0.5);
      Expected made = Fit.expect(HOOK, 0.9, hands, first.blankMm(), first.formersMm()).orThrow();
      Maker learned =
          Fit.learn(
              HOOK,
              0.9,
              NEW,
              List.of(
                  ShortPieces.measured(
                      first.blankMm(), first.formersMm(), made.lengthMm(), made.widthMm())),
              WISH);
      Proposal second = next(learned, WISH, 0);
      Expected again = Fit.expect(HOOK, 0.9, hands, second.blankMm(), second.formersMm()).orThrow();
      assertThat(Math.abs(made.lengthMm() - 15)).isGreaterThan(0.8);
      assertThat(Math.abs(again.lengthMm() - 15)).isLessThan(0.3);
      assertThat(second.expected().lengthSpreadMm())
          .isLessThan(first.expected().lengthSpreadMm() / 1.8);
    }

    @Test
    void followsAVerdictWithoutAnyMeasure() {
      Proposal first = next(NEW, WISH, 0);
      for (Verdict verdict : List.of(Verdict.LONGER, Verdict.SHORTER)) {
        Tried judged = ShortPieces.judged(first.blankMm(), first.formersMm(), List.of(verdict));
        Proposal second = next(Fit.learn(HOOK, 0.9, NEW, List.of(judged), WISH), WISH, 0);
        double longer = second.blankMm() - first.blankMm();
        assertThat(verdict == Verdict.LONGER ? longer : -longer).isBetween(0.3, 2.0);
      }
    }

    @Test
    void staysWhereItWasOnceAPieceIsRight() {
      Proposal first = next(NEW, WISH, 0);
      Tried right = ShortPieces.judged(first.blankMm(), first.formersMm(), List.of(Verdict.RIGHT));
      Proposal second = next(Fit.learn(HOOK, 0.9, NEW, List.of(right), WISH), WISH, 0);
      assertThat(second.blankMm()).isCloseTo(first.blankMm(), within(0.1));
      assertThat(second.expected().lengthSpreadMm())
          .isLessThan(first.expected().lengthSpreadMm() / 1.5);
    }
  }

  @Nested
  class WhatCannotBeHad {
    @Test
    void aLinkShorterThanItsBendsIsToldWithTheNearest() {
      Proposal proposal = next(NEW, new LinkSize(6, 5), 0);
      assertThat(proposal.reach()).isEqualTo(Reach.TOO_LONG);
      assertThat(proposal.shortfall(UnitStyle.METRIC).orElseThrow())
          .startsWith("A link of 6 mm by 5 mm cannot be had over eye 2 mm; the nearest is")
          .endsWith("No formers give that: wish for a longer link.");
    }

    @Test
    void aWidthThatNoFormerOwnedGivesIsToldWithWhatToTake() {
      Proposal wide = next(NEW, new LinkSize(18, 7), 0);
      assertThat(wide.reach()).isEqualTo(Reach.WIDTH_OFF);
      assertThat(wide.instead().orElseThrow().get("eye")).isGreaterThan(4.0);
      assertThat(wide.shortfall(UnitStyle.METRIC).orElseThrow())
          .contains("over eye 4 mm")
          .endsWith("Take eye 5 mm.");
      Proposal narrow = next(NEW, new LinkSize(15, 3.4), 0);
      assertThat(narrow.instead().orElseThrow().get("eye")).isLessThan(2.0);
    }

    /** Round cable of 18 AWG, links of 5/16 in, from the default mandrel of 4 mm. */
    @Test
    void aRoundLinkTooShortTakesALargerMandrelAndNamesIt() {
      Pattern round = PatternFiles.named("round");
      double wire = 1.024;
      LinkSize wish = new LinkSize(7.94, 7.94);
      Proposal proposal = Fit.next(round, wire, NEW, wish, Map.of(), 0).orThrow();
      assertThat(proposal.reach()).isEqualTo(Reach.TOO_SHORT);
      assertThat(proposal.shortfall(UnitStyle.METRIC).orElseThrow())
          .contains("over ring 4 mm")
          .endsWith("Take ring 5.7 mm.");
      Proposal taken = Fit.next(round, wire, NEW, wish, Map.of("ring", List.of(5.7)), 0).orThrow();
      assertThat(taken.reach()).isEqualTo(Reach.REACHED);
      assertThat(taken.shortfall(UnitStyle.METRIC)).isEmpty();
    }

    /** What is told to take is taken, and then nothing is told any more. */
    @Test
    void adviceDoesNotGoRoundInCircles() {
      int advised = 0;
      for (double length = 12; length <= 20; length += 2) {
        LinkSize wish = new LinkSize(length, 5);
        Proposal proposal = Fit.next(SCROLL, 0.9, NEW, wish, Map.of(), 0).orThrow();
        Map<String, List<Double>> owned = new LinkedHashMap<>();
        proposal.instead().ifPresent(i -> i.forEach((name, mm) -> owned.put(name, List.of(mm))));
        if (!owned.isEmpty()) {
          advised++;
          assertThat(
                  Fit.next(SCROLL, 0.9, NEW, wish, owned, 0).orThrow().shortfall(UnitStyle.METRIC))
              .as("a scroll of %s mm over %s", length, owned)
              .isEmpty();
        }
      }
      assertThat(advised).isPositive();
    }

    @Test
    void wireThatWouldPressIntoItselfIsTold() {
      Proposal proposal =
          Fit.next(
                  SCROLL,
                  0.9,
                  Maker.unknown(0),
                  new LinkSize(15, 4.3),
                  Map.of("tip", List.of(1.5), "bow", List.of(2.5)),
                  0)
              .orThrow();
      assertThat(proposal.overlapMm()).isGreaterThan(0.1);
      assertThat(proposal.shortfall(UnitStyle.METRIC).orElseThrow()).contains("into itself");
    }

    @Test
    void aFormerThatThePatternDoesNotKnowIsNamedWithTheNearest() {
      assertThat(
              Fit.next(HOOK, 0.9, NEW, WISH, Map.of("eyes", List.of(2.5)), 0)
                  .problem()
                  .orElseThrow())
          .contains("no former \"eyes\"")
          .contains("did you mean \"eye\"?");
    }

    @Test
    void aFormerWithoutASizeIsTold() {
      assertThat(
              Fit.next(HOOK, 0.9, NEW, WISH, Map.of("eye", List.of()), 0).problem().orElseThrow())
          .contains("No size is given for the former \"eye\"");
    }

    @Test
    void aFormerThinnerThanTheWireSaysSo() {
      assertThat(
              Fit.next(HOOK, 0.9, NEW, WISH, Map.of("eye", List.of(0.5)), 0)
                  .problem()
                  .orElseThrow())
          .contains("thicker than the former");
      assertThat(Fit.expect(HOOK, 0.9, NEW, 5, Map.of()).problem().orElseThrow())
          .contains("too short");
    }

    @Test
    void argumentsOutsideTheirDomainAreNamed() {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> new LinkSize(0, 5))
          .withMessageContaining("lengthMm");
      assertThatIllegalArgumentException()
          .isThrownBy(() -> ShortPieces.measured(30, Map.of("eye", -1.0), 15, 5))
          .withMessageContaining("former eye");
      assertThatIllegalArgumentException()
          .isThrownBy(() -> next(NEW, WISH, Double.NaN))
          .withMessageContaining("stepMm");
      assertThatIllegalArgumentException()
          .isThrownBy(() -> Maker.unknown(Double.NaN))
          .withMessageContaining("stressShare");
    }
  }

  @Nested
  class WhatIsHonest {
    /** Two pieces of one blank that measure 14.0 and 15.4 must not say ± 0.24. */
    @Test
    void twoPiecesOfOneBlankThatDifferWidenTheSpread() {
      Map<String, Double> eye = Map.of("eye", 2.5);
      Maker maker =
          Fit.learn(
              HOOK,
              0.9,
              NEW,
              List.of(
                  ShortPieces.measured(27.5, eye, 14.0, 4.6),
                  ShortPieces.measured(27.5, eye, 15.4, 4.6)),
              new LinkSize(14, 4.6));
      Expected expected = Fit.expect(HOOK, 0.9, maker, 27.5, eye).orThrow();
      // Two readings as far apart have themselves a standard deviation of 1.4/√2, 0.99.
      assertThat(expected.lengthSpreadMm()).isBetween(0.5, 1.2);
      assertThat(expected.lengthMm()).isBetween(14.0, 15.4);
    }

    @Test
    void onePieceMisreadHardlyTurnsTheHandsOnceOthersSpeakAgainstIt() {
      Map<String, Double> eye = Map.of("eye", 2.5);
      Tried good = ShortPieces.measured(27.5, eye, 14.1, 4.6);
      Maker clean = Fit.learn(HOOK, 0.9, NEW, List.of(good, good, good), WISH);
      Tried slip = ShortPieces.measured(27.5, eye, 12.6, 4.6);
      Maker slipped = Fit.learn(HOOK, 0.9, NEW, List.of(good, slip, good), WISH);
      double off =
          Fit.expect(HOOK, 0.9, slipped, 27.5, eye).orThrow().lengthMm()
              - Fit.expect(HOOK, 0.9, clean, 27.5, eye).orThrow().lengthMm();
      // The mean of the three lies 0.5 lower.
      assertThat(off).isBetween(-0.25, 0.0);
    }

    @Test
    void aMakerWhosePiecesAgreeIsToldLessSpreadThanOneWhoseScatter() {
      Map<String, Double> eye = Map.of("eye", 2.5);
      List<Tried> alike = new ArrayList<>();
      List<Tried> unlike = new ArrayList<>();
      for (int i = 0; i < 8; i++) {
        alike.add(ShortPieces.measured(27.5, eye, 14.1 + (i % 2 == 0 ? 0.03 : -0.03), 4.6));
        unlike.add(ShortPieces.measured(27.5, eye, 14.1 + (i % 2 == 0 ? 0.6 : -0.6), 4.6));
      }
      Maker steady = Fit.learn(HOOK, 0.9, NEW, alike, WISH);
      Maker loose = Fit.learn(HOOK, 0.9, NEW, unlike, WISH);
      assertThat(steady.scatter().share()).isLessThan(0.8);
      assertThat(loose.scatter().share()).isGreaterThan(1.3);
      assertThat(Fit.expect(HOOK, 0.9, loose, 27.5, eye).orThrow().lengthSpreadMm())
          .isGreaterThan(2 * Fit.expect(HOOK, 0.9, steady, 27.5, eye).orThrow().lengthSpreadMm());
    }

    /** A blank that was found and typed back in gives the link that was found with it. */
    @Test
    void theBlankFoundAndTypedBackGivesTheSameLink() {
      for (Wish wish :
          List.of(new Wish(HOOK, 15, 5), new Wish(SCROLL, 15, 4.9), new Wish(oval(), 12, 4.8))) {
        Proposal proposal =
            Fit.next(wish.pattern, 0.9, NEW, new LinkSize(wish.length, wish.width), Map.of(), 0.1)
                .orThrow();
        Formed typed =
            Forming.form(wish.pattern, 0.9, proposal.blankMm(), proposal.formersMm(), NEW.bending())
                .orThrow();
        assertThat(typed.lengthMm()).isEqualTo(proposal.expected().lengthMm());
        assertThat(typed.widthMm()).isEqualTo(proposal.expected().widthMm());
      }
    }

    private record Wish(Pattern pattern, double length, double width) {}

    private static Pattern oval() {
      return PatternFiles.named("oval");
    }
  }

  @Nested
  class Properties {
    private static final long SEED = 9_1938;

    @Test
    void scaledByTwoTheProposalIsTwiceAsLarge() {
      Maker sure = sure(new Bending(0.0027, 0.02, 0, 5));
      Random random = new Random(SEED);
      for (int i = 0; i < 50; i++) {
        LinkSize wish = new LinkSize(12 + 6 * random.nextDouble(), 4.5 + 1.7 * random.nextDouble());
        Proposal one = Fit.next(HOOK, 0.9, sure, wish, OWNED, 0).orThrow();
        Proposal two =
            Fit.next(
                    HOOK,
                    1.8,
                    sure,
                    new LinkSize(2 * wish.lengthMm(), 2 * wish.widthMm()),
                    Map.of("eye", List.of(4.0, 5.0, 6.0, 7.0, 8.0)),
                    0)
                .orThrow();
        assertThat(two.blankMm())
            .as("seed %d, run %d, %s", SEED, i, wish)
            .isCloseTo(2 * one.blankMm(), within(0.01));
      }
    }

    @Test
    void everyProposalCanBeFormed() {
      Random random = new Random(SEED);
      for (int i = 0; i < 200; i++) {
        Maker sure =
            sure(
                new Bending(
                    0.0027,
                    0.07 * random.nextGaussian(),
                    0.5 * random.nextGaussian(),
                    12 * random.nextGaussian()));
        LinkSize wish = new LinkSize(3 + 20 * random.nextDouble(), 1 + 8 * random.nextDouble());
        Proposal proposal = next(sure, wish, 0.5);
        assertThat(Fit.expect(HOOK, 0.9, sure, proposal.blankMm(), proposal.formersMm()).isGood())
            .as("seed %d, run %d, %s", SEED, i, proposal)
            .isTrue();
      }
    }
  }
}
