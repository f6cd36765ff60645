package linkwright.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import linkwright.quantity.UnitStyle;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class JointGapsTest {
  private static final Offset<Double> EXACT = within(1e-6);

  /** An eye of the radius 2 over wire of 1 mm, turned so far from a straight stem. */
  private static Formed hook(double turnDeg) {
    Pattern hook =
        Shapes.of(
            Map.of("eye", 3.0),
            OtherHalf.TURNED,
            false,
            List.of(Joint.TIP_TO_BODY, Joint.TIP_TO_BODY),
            Bends.eye("eye", turnDeg, Side.LEFT),
            Run.rest());
    return Shapes.form(hook, 1, 60);
  }

  @Test
  void aTipSquareToTheStemStandsOffByItsCentreLessHalfAWire() {
    List<JointGap> gaps = hook(270).jointGaps();
    assertThat(gaps).hasSize(2);
    assertThat(gaps.get(0).gapMm()).isCloseTo(2 - 0.5, EXACT);
    assertThat(gaps.get(0).firstTip()).isTrue();
    assertThat(gaps.get(1).gapMm()).isCloseTo(2 - 0.5, EXACT);
    assertThat(gaps.get(1).firstTip()).isFalse();
    List<JointGap> turned = hook(290).jointGaps();
    assertThat(turned.get(1).andMm()).isCloseTo(60 - turned.get(0).andMm(), EXACT);
  }

  @Test
  void aTipMeetsItsStemWhereTheCosineOfItsTurnIsTheFormerOverTheOutside() {
    // The lower corner of the end touches the stem: R(1 − cos) − (d/2)·cos = d/2.
    double turnDeg = 360 - Math.toDegrees(Math.acos(3.0 / 5.0));
    assertThat(hook(turnDeg).jointGaps().get(0).gapMm()).isCloseTo(0, EXACT);
    assertThat(hook(turnDeg + 5).jointGaps().get(0).gapMm()).isNegative();
  }

  @Test
  void twoTipsStandApartByWhatTheBlankLacksAndOverlapByWhatItHasTooMuch() {
    Formed ring = Shapes.form(PatternFiles.named("round"), 1, 5 * Math.PI + 0.4);
    assertThat(ring.jointGaps().get(0).gapMm()).isCloseTo(-0.4, EXACT);
    assertThat(ring.jointGaps().get(0).says(UnitStyle.METRIC))
        .isEqualTo("One tip runs 0.4 mm into the other: bend it back or cut it shorter.");
  }

  @Test
  void aCurlsSideIsMeasuredWhereItLiesNearestTheStem() {
    Formed scroll = Shapes.usual(PatternFiles.named("scroll"));
    JointGap gap = scroll.jointGaps().get(0);
    // Looked for again, place by place, between the tip's curl and the stem's first 8 mm.
    CentreLine line = scroll.centreLine();
    double curlMm = Math.toRadians(275) * 0.95;
    double stemMm = curlMm + Math.toRadians(285) * 2.2;
    double nearest = Double.POSITIVE_INFINITY;
    for (double at = 0; at < curlMm; at += 0.005) {
      for (double and = stemMm; and < stemMm + 8; and += 0.005) {
        nearest = Math.min(nearest, line.at(at).distanceMm(line.at(and)));
      }
    }
    assertThat(gap.gapMm()).isCloseTo(nearest - 0.9, within(1e-4));
    double fromMeeting = Double.POSITIVE_INFINITY;
    for (double at = 0; at < curlMm; at += 0.005) {
      fromMeeting = Math.min(fromMeeting, line.at(at).distanceMm(line.at(gap.andMm())));
    }
    assertThat(gap.gapMm()).isCloseTo(fromMeeting - 0.9, within(1e-4));
  }

  @Test
  void whatIsSaidGivesTheGapAndTheRemedy() {
    assertThat(hook(300).jointGaps().get(1).says(UnitStyle.METRIC))
        .isEqualTo(
            "The last tip stands 0.25 mm off the wire: close it, solder will not bridge it.");
    assertThat(new JointGap(Joint.TIP_TO_BODY, true, 9, 0.05).says(UnitStyle.METRIC))
        .isEqualTo("The first tip closes.");
  }
}
