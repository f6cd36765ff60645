package linkwright.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.quantity.Read;
import linkwright.wire.Springback;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class FormingTest {
  private static final Offset<Double> EXACT = within(1e-9);

  @Nested
  class ShapesComputedByHand {
    @Test
    void aRingIsAsLongAndWideAsItsFormerAndTwoWires() {
      Formed ring = Shapes.form(PatternFiles.named("round"), 1.0, 5 * Math.PI);
      assertThat(ring.lengthMm()).isCloseTo(6.0, EXACT);
      assertThat(ring.widthMm()).isCloseTo(6.0, EXACT);
      assertThat(ring.insideLengthMm()).isCloseTo(4.0, EXACT);
      assertThat(ring.wireMm()).isEqualTo(1.0);
      assertThat(ring.shortestBlankMm()).isCloseTo(5 * Math.PI, EXACT);
    }

    @Test
    void anOvalsSidesTakeWhatItsTwoEndsLeaveOfTheBlank() {
      // Ends: a full circle of radius 2; 20 mm of wire beyond it make two sides of 10 mm.
      Pattern oval =
          Shapes.of(
              Map.of("end", 3.0),
              OtherHalf.MIRRORED,
              true,
              List.of(Joint.TIP_TO_TIP),
              Run.rest(),
              Bends.eye("end", 180, Side.LEFT),
              Run.likeRest());
      Formed formed = Shapes.form(oval, 1.0, 4 * Math.PI + 20);
      assertThat(formed.lengthMm()).isCloseTo(10 + 3 + 2, EXACT);
      assertThat(formed.widthMm()).isCloseTo(3 + 2, EXACT);
      assertThat(formed.insideLengthMm()).isCloseTo(10 + 3, EXACT);
      assertThat(formed.jointGaps().get(0).gapMm()).isCloseTo(0, EXACT);
    }

    @Test
    void anSOfTwoHalfCirclesIsPulledAlongTheDiagonal() {
      // Centres 8 mm apart along the stem and 2 × 1.5 mm across it: 2·√(4² + 1.5²) apart.
      Pattern s = Shapes.half(2.0, OtherHalf.TURNED, Bends.eye("eye", 180, Side.LEFT), Run.rest());
      Formed formed = Shapes.form(s, 1.0, 2 * Math.PI * 1.5 + 8);
      double centres = 2 * Math.hypot(4, 1.5);
      assertThat(formed.lengthMm()).isCloseTo(centres + 3 + 1, EXACT);
      assertThat(formed.insideLengthMm()).isCloseTo(centres + 2, EXACT);
      assertThat(formed.eyes().get(0).centre().distanceMm(formed.eyes().get(1).centre()))
          .isCloseTo(centres, EXACT);
      assertThat(formed.eyes().get(0).insideMm()).isCloseTo(2.0, EXACT);
    }

    @Test
    void aMirroredHalfMakesAC() {
      Pattern c =
          Shapes.half(2.0, OtherHalf.MIRRORED, Bends.eye("eye", 180, Side.LEFT), Run.rest());
      Formed formed = Shapes.form(c, 1.0, 2 * Math.PI * 1.5 + 8);
      assertThat(formed.lengthMm()).isCloseTo(8 + 3 + 1, EXACT);
      assertThat(formed.widthMm()).isCloseTo(3 + 1, EXACT);
      assertThat(formed.insideLengthMm()).isCloseTo(8 + 2, EXACT);
    }

    @Test
    void whereTheEyesDoNotEndTheLinkTheInsideIsMeasuredAtTheEyes() {
      // Each tip's run of 4 mm stands out at 45 degrees, from where the wire left the eye's end.
      Pattern horns =
          Shapes.half(
              2.0,
              OtherHalf.MIRRORED,
              Run.of(4),
              Bends.of("eye", 90, Side.RIGHT),
              Bends.eye("eye", 135, Side.LEFT),
              Run.rest());
      Formed formed = Shapes.form(horns, 1.0, 2 * (4 + Math.toRadians(225) * 1.5) + 8);
      assertThat(formed.insideLengthMm()).isCloseTo(8 + 2, EXACT);
      double out = 4 * Math.cos(Math.PI / 4) - 1.5 * (1 - Math.cos(Math.PI / 4));
      assertThat(formed.lengthMm()).isCloseTo(8 + 2 * (1.5 + out) + 1, EXACT);
    }

    @Test
    void aBendThatGrowsToAnotherFormerHasTheMeanRadiusForItsLength() {
      Pattern spiral =
          Shapes.of(
              Map.of("small", 1.0, "large", 3.0),
              OtherHalf.TURNED,
              false,
              List.of(),
              new Bend("small", Optional.of("large"), 180, Side.LEFT, true, false, false),
              Run.rest());
      Formed formed = Shapes.form(spiral, 1.0, 20);
      assertThat(formed.shortestBlankMm()).isCloseTo(2 * Math.PI * 1.5, EXACT);
      // The pull goes through the centre of the last, large radius: 2 mm off the stem.
      double stem = 20 - 2 * Math.PI * 1.5;
      assertThat(formed.eyes().get(0).centre().distanceMm(formed.eyes().get(1).centre()))
          .isCloseTo(2 * Math.hypot(stem / 2, 2), EXACT);
      assertThat(formed.eyes().get(0).insideMm()).isCloseTo(3.0, EXACT);
    }

    @Test
    void aHandsClearanceLossAndExtraTurnShowInTheLink() {
      Pattern c =
          Shapes.half(2.0, OtherHalf.MIRRORED, Bends.eye("eye", 180, Side.LEFT), Run.rest());
      Formed grown = Forming.form(c, 1.0, 30, Map.of(), new Bending(0, 0.15, 2, 10)).orThrow();
      double arc = Math.toRadians(190) * 1.65;
      assertThat(grown.shortestBlankMm()).isCloseTo(2 * arc + 2, EXACT);
      assertThat(grown.centreLine().lengthMm()).isCloseTo(28, EXACT);
      assertThat(grown.lengthMm()).isCloseTo(28 - 2 * arc + 2 * 1.65 + 1, EXACT);
    }

    /** The same wire opens more over a wide former than over a tight one, as {@link Springback}. */
    @Test
    void everyBendSpringsBackByItsOwnFormer() {
      Bending springs = Bending.springing(200.0 / 75_000);
      for (double former : new double[] {1, 3, 12}) {
        Pattern c =
            Shapes.half(former, OtherHalf.MIRRORED, Bends.eye("eye", 180, Side.LEFT), Run.rest());
        Formed formed = Forming.form(c, 0.9, 200, Map.of(), springs).orThrow();
        assertThat(formed.eyes().get(0).insideMm())
            .isCloseTo(Springback.insideMm(0.9, former, 75_000, 200).orElseThrow(), EXACT);
      }
    }

    @Test
    void wireThatOnlySpringsIsTold() {
      Pattern c =
          Shapes.half(600, OtherHalf.MIRRORED, Bends.eye("eye", 180, Side.LEFT), Run.rest());
      assertThat(
              Forming.form(c, 0.9, 9000, Map.of(), Bending.springing(124.0 / 75_000))
                  .problem()
                  .orElseThrow())
          .contains("\"eye\" of 600 mm")
          .contains("goes straight again");
    }

    @Test
    void theUsersFormersReplaceThePatternsByName() {
      Pattern c =
          Shapes.half(2.0, OtherHalf.MIRRORED, Bends.eye("eye", 180, Side.LEFT), Run.rest());
      Formed formed = Forming.form(c, 1.0, 30, Map.of("eye", 3.0), Bending.TRUE).orThrow();
      assertThat(formed.widthMm()).isCloseTo(5, EXACT);
    }

    @Test
    void planishingSpreadsTheWireAndShortensTheInside() {
      Formed ring = Shapes.form(PatternFiles.named("round"), 1.0, 5 * Math.PI);
      Planished flat = ring.planished(0.7);
      double wide = Math.PI / (4 * 0.7);
      assertThat(flat.wireWidthMm()).isCloseTo(wide, EXACT);
      assertThat(flat.lengthMm()).isCloseTo(5 + wide, EXACT);
      assertThat(flat.insideLengthMm()).isCloseTo(5 - wide, EXACT);
      assertThatThrownBy(() -> ring.planished(1.2)).hasMessageContaining("1.2");
    }
  }

  @Nested
  class TheFrame {
    @Test
    void liesAlongThePullWithTheMiddleOfTheLengthAtTheOrigin() {
      Formed scroll = Shapes.usual(PatternFiles.named("scroll"));
      List<Point> points = scroll.centreLine().points(0.01);
      double least = points.stream().mapToDouble(Point::xMm).min().orElseThrow();
      double most = points.stream().mapToDouble(Point::xMm).max().orElseThrow();
      assertThat(most - least + 0.9).isCloseTo(scroll.lengthMm(), within(1e-4));
      assertThat(most + least).isCloseTo(0, within(1e-4));
      assertThat(scroll.eyes().get(0).centre().yMm()).isCloseTo(0, EXACT);
      assertThat(scroll.eyes().get(1).centre().yMm()).isCloseTo(0, EXACT);
      assertThat(scroll.eyes().get(0).centre().xMm()).isNegative();
    }

    @Test
    void pointsAreNoFurtherApartThanTheStepAndEndAtTheTips() {
      Formed scroll = Shapes.usual(PatternFiles.named("scroll"));
      List<Point> points = scroll.centreLine().points(0.1);
      for (int i = 1; i < points.size(); i++) {
        assertThat(points.get(i).distanceMm(points.get(i - 1))).isLessThanOrEqualTo(0.1 + 1e-9);
      }
      assertThat(points.get(0)).isEqualTo(scroll.centreLine().at(0));
      assertThat(points.get(points.size() - 1)).isEqualTo(scroll.centreLine().at(38.1));
      assertThatThrownBy(() -> scroll.centreLine().points(0)).hasMessageContaining("stepMm");
    }
  }

  @Nested
  class WhatCannotBe {
    private final Pattern scroll = PatternFiles.named("scroll");

    @Test
    void aBlankTooShortIsToldWithTheShortestThatWorks() {
      assertThat(bad(Shapes.read(scroll, 0.9, 25.4)))
          .isEqualTo(
              "A blank of 25.4 mm is too short for the bends of \"scroll\": the shortest that works"
                  + " is 31.34 mm, or take smaller formers.");
      assertThat(Shapes.read(scroll, 0.9, 31.34).isGood()).isTrue();
    }

    @Test
    void aBlankExactlyTheShortestWorks() {
      double shortest = Shapes.form(scroll, 0.9, 38.1).shortestBlankMm();
      Formed formed = Shapes.form(scroll, 0.9, shortest);
      assertThat(formed.centreLine().lengthMm()).isCloseTo(shortest, EXACT);
      assertThat(Shapes.read(scroll, 0.9, shortest - 0.01).isGood()).isFalse();
    }

    @Test
    void aWireThickerThanItsFormerIsTold() {
      assertThat(bad(Shapes.read(scroll, 1.1, 45)))
          .isEqualTo(
              "The wire of 1.1 mm is thicker than the former \"tip\" of 1 mm: take a former of at"
                  + " least 1.1 mm, or thinner wire.");
      assertThat(Shapes.read(scroll, 1.0, 45).isGood()).isTrue();
    }

    @Test
    void aSizeThatWasGivenInFractionsOfAnInchIsToldAsItWasGiven() {
      String told = bad(Shapes.read(scroll, 5 / 16.0 * 25.4, 45));
      assertThat(told).startsWith("The wire of 7.9375 mm").contains("at least 7.9375 mm");
      assertThat(linkwright.quantity.SaidIn.units(told, linkwright.quantity.UnitStyle.INCH))
          .contains("at least 0.3125 in");
    }

    @Test
    void sizesThatAreNotAboveZeroAreTold() {
      assertThat(bad(Shapes.read(scroll, 0, 38)))
          .isEqualTo("The wire is 0 mm: it must be more than 0 mm.");
      assertThat(bad(Shapes.read(scroll, -3, 38))).startsWith("The wire is −3 mm");
      assertThat(bad(Shapes.read(scroll, 0.9, -38))).startsWith("The blank is −38 mm");
      assertThat(bad(Shapes.read(scroll, Double.NaN, 38))).startsWith("The wire is not a number");
      assertThat(bad(Shapes.read(scroll, 0.9, Double.POSITIVE_INFINITY)))
          .isEqualTo("The blank is more than a kilometre: look at the unit.");
      assertThat(bad(Forming.form(scroll, 0.9, 38, Map.of("bow", 0.0), Bending.TRUE)))
          .isEqualTo("The former \"bow\" is 0 mm: it must be more than 0 mm.");
    }

    @Test
    void aFormerThatThePatternDoesNotKnowIsTold() {
      assertThat(bad(Forming.form(scroll, 0.9, 38, Map.of("body", 3.0), Bending.TRUE)))
          .isEqualTo("\"scroll\" has no former \"body\": it has bow, tip.");
    }

    @Test
    void twoEyesInOnePlaceCannotBePulled() {
      Pattern pretzel =
          Shapes.whole(
              3,
              List.of(),
              Bends.eye("eye", 180, Side.LEFT),
              Bends.eye("eye", 90, Side.LEFT),
              Run.rest());
      assertThat(bad(Shapes.read(pretzel, 1, 20))).startsWith("The two eyes have the same centre");
    }

    @Test
    void anEyeTurnedBackToStraightIsTold() {
      assertThat(bad(Forming.form(scroll, 0.9, 38, Map.of(), new Bending(0, 0, 0, -285))))
          .contains("no further than straight");
    }

    @Test
    void sizesAtTheEdgeOfReasonStillComeOutAsNumbers() {
      for (double[] sizes : new double[][] {{1e-9, 1e6}, {1e-6, 38}, {1, 1e6}}) {
        Formed formed = Shapes.form(scroll, sizes[0], sizes[1]);
        assertThat(formed.lengthMm()).isFinite().isPositive();
        assertThat(formed.jointGaps()).allSatisfy(gap -> assertThat(gap.gapMm()).isFinite());
        assertThat(formed.crossings()).allSatisfy(each -> assertThat(each.gapMm()).isFinite());
        assertThat(Passage.of(formed, 3, 1))
            .allSatisfy(passage -> assertThat(passage.mouthMm()).isFinite());
      }
    }

    @Test
    void aHandThatCannotBeIsTheProgrammersFault() {
      assertThatThrownBy(() -> new Bending(-1, 0, 0, 0)).hasMessageContaining("stressShare");
      assertThatThrownBy(() -> new Bending(0, Double.NaN, 0, 0))
          .hasMessageContaining("clearanceShare");
      assertThatThrownBy(() -> new Bending(0, 0, Double.NaN, 0)).hasMessageContaining("lostMm");
      assertThatThrownBy(() -> new Bending(0, 0, 0, Double.NaN))
          .hasMessageContaining("extraTurnDeg");
    }

    private static String bad(Read<?> read) {
      return read.problem().orElseThrow();
    }
  }
}
