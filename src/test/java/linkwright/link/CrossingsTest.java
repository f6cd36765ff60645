package linkwright.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class CrossingsTest {
  private static final Offset<Double> EXACT = within(1e-6);

  /**
   * A tip run, a loop of 270 degrees with the radius 2, a run straight across the tip run's line at
   * a distance of 2 from the loop's start, and an eye far away.
   */
  private static Pattern loop(double tipRunMm, List<Joint> joints, boolean onPurpose) {
    return Shapes.whole(
        3,
        joints,
        Run.of(tipRunMm),
        new Bend("eye", Optional.empty(), 270, Side.LEFT, true, false, onPurpose),
        Run.rest(),
        Bends.eye("eye", 180, Side.LEFT));
  }

  private static final double BLANK_MM = 40;

  @Test
  void aWireThatCrossesItselfIsToldOnceAndExactly() {
    Formed formed = Shapes.form(loop(6, List.of(), false), 1, BLANK_MM);
    assertThat(formed.crossings()).hasSize(1);
    Crossing crossing = formed.crossings().get(0);
    assertThat(crossing.atMm()).isCloseTo(6 - 2, EXACT);
    assertThat(crossing.andMm()).isCloseTo(6 + 1.5 * Math.PI * 2 + 2, EXACT);
    assertThat(crossing.gapMm()).isCloseTo(-1, EXACT);
  }

  @Test
  void aTipNearerThanTheWireIsThickIsACrossingUnlessAJointNamesIt() {
    Formed pressing = Shapes.form(loop(2 - 0.98, List.of(), false), 1, BLANK_MM);
    assertThat(pressing.crossings()).hasSize(1);
    assertThat(pressing.crossings().get(0).atMm()).isCloseTo(0, EXACT);
    assertThat(pressing.crossings().get(0).gapMm()).isCloseTo(-0.02, EXACT);

    Formed clear = Shapes.form(loop(2 - 0.995, List.of(), false), 1, BLANK_MM);
    assertThat(clear.crossings()).isEmpty();

    Formed joined =
        Shapes.form(loop(2 - 0.5, List.of(Joint.FIRST_TIP_TO_BODY), false), 1, BLANK_MM);
    assertThat(joined.crossings()).isEmpty();
  }

  @Test
  void aTipThatRunsRightThroughItsStemIsACrossingAllTheSame() {
    Formed through = Shapes.form(loop(6, List.of(Joint.FIRST_TIP_TO_BODY), false), 1, BLANK_MM);
    assertThat(through.crossings()).hasSize(1);
    assertThat(through.crossings().get(0).atMm()).isCloseTo(4, EXACT);
  }

  @Test
  void aBendThatCrossesOnPurposeIsNotTold() {
    Pattern twice =
        Shapes.whole(
            3,
            List.of(),
            Bends.eye("eye", 400, Side.LEFT),
            Run.rest(),
            Bends.eye("eye", 180, Side.LEFT));
    assertThat(Shapes.form(twice, 1, BLANK_MM).crossings()).hasSize(1);
    Pattern meant =
        Shapes.whole(
            3,
            List.of(),
            new Bend("eye", Optional.empty(), 400, Side.LEFT, true, false, true),
            Run.rest(),
            Bends.eye("eye", 180, Side.LEFT));
    assertThat(Shapes.form(meant, 1, BLANK_MM).crossings()).isEmpty();
  }

  @Test
  void twoSeparateCrossingsAreTwo() {
    Pattern knots =
        Shapes.half(3, OtherHalf.TURNED, Run.of(6), Bends.eye("eye", 270, Side.LEFT), Run.rest());
    Formed formed = Shapes.form(knots, 1, 2 * (6 + 3 * Math.PI) + 40);
    assertThat(formed.crossings()).hasSize(2);
    double lengthMm = formed.centreLine().lengthMm();
    assertThat(formed.crossings().get(1).andMm())
        .isCloseTo(lengthMm - formed.crossings().get(0).atMm(), EXACT);
  }

  @Test
  void inALoopTheWireIsFollowedRoundSoThatItsJointIsNone() {
    assertThat(Shapes.form(PatternFiles.named("round"), 1, 5 * Math.PI).crossings()).isEmpty();
    assertThat(Shapes.usual(PatternFiles.named("long")).crossings()).isEmpty();
  }

  @Test
  void aClosedEightCrossesOnceInItsMiddleThoughTheJointLiesThere() {
    // Tangents at 45 degrees: the straight runs are as long as the radius, 2 mm.
    Pattern eight =
        Shapes.of(
            Map.of("eye", 3.0),
            OtherHalf.TURNED,
            true,
            List.of(Joint.TIP_TO_TIP),
            Run.rest(),
            Bends.eye("eye", 270, Side.LEFT),
            Run.likeRest());
    double blankMm = 4 * 2 + 6 * Math.PI;
    Formed formed = Shapes.form(eight, 1, blankMm);
    assertThat(formed.jointGaps().get(0).gapMm()).isCloseTo(0, within(1e-9));
    assertThat(formed.crossings()).hasSize(1);
    assertThat(formed.crossings().get(0).gapMm()).isCloseTo(-1, EXACT);
  }
}
