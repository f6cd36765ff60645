package linkwright.link;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PatternCheckTest {
  private static final Bend EYE = Bends.eye("eye", 180, Side.LEFT);

  @Test
  void everythingWrongIsToldAtOnceWithItsPlace() {
    Pattern pattern =
        Shapes.of(
            Map.of("eye", -2.0),
            OtherHalf.TURNED,
            false,
            List.of(),
            Bends.eye("eyes", 0, Side.LEFT),
            Run.of(-1));
    assertThat(PatternCheck.of(pattern))
        .extracting(PatternCheck.PatternFault::sentence)
        .containsExactly(
            "The former \"eye\" is −2 mm: an inside diameter of more than 0 mm.",
            "There is no former \"eyes\": one of the pattern's formers, eye.",
            "The bend turns 0 degrees: more than 0, at most 3600 (ten turns); the side says to"
                + " which hand.",
            "The run is −1 mm long: a length of more than 0 mm.",
            "The path has no \"run: rest\": exactly one, so that the blank decides its length;"
                + " repeat it as \"run: as rest\".");
    assertThat(PatternCheck.of(pattern).get(1).bit()).hasValue(0);
    assertThat(PatternCheck.of(pattern).get(3).bit()).hasValue(1);
    assertThat(PatternCheck.of(pattern).get(4).bit()).isEmpty();
  }

  @Test
  void twoRestsAreOneTooMany() {
    assertThat(sentences(Shapes.half(3, OtherHalf.TURNED, Run.rest(), EYE, Run.rest())))
        .containsExactly(
            "The path has 2 \"run: rest\": exactly one, so that the blank decides its length;"
                + " repeat it as \"run: as rest\".");
  }

  @Test
  void aHalfHasOneEyeAndAWholeTwo() {
    assertThat(sentences(Shapes.half(3, OtherHalf.TURNED, EYE, EYE, Run.rest())))
        .singleElement()
        .asString()
        .startsWith("The path has 2 bends with \"eye: true\": one in the half");
    assertThat(sentences(Shapes.whole(3, List.of(), EYE, Run.rest())))
        .singleElement()
        .asString()
        .startsWith("The path has 1 bend with \"eye: true\": two");
  }

  @Test
  void aClosedPatternComesBackToItsHeadingAndHasAJoint() {
    Pattern gaping =
        Shapes.of(
            Map.of("eye", 3.0), OtherHalf.NONE, true, List.of(), Bends.of("eye", 350, Side.LEFT));
    assertThat(sentences(gaping))
        .containsExactly(
            "The pattern is closed, yet no joint closes it: a joint \"tip to tip\".",
            "The pattern is closed, yet its bends come to 350 degrees: bends that come to a whole"
                + " turn, so that the tips face each other.");
  }

  @Test
  void threeTipsAreOneTooMany() {
    Pattern pattern =
        Shapes.whole(
            3,
            List.of(Joint.TIP_TO_BODY, Joint.TIP_TO_BODY, Joint.TIP_TO_BODY),
            EYE,
            Run.rest(),
            EYE);
    assertThat(sentences(pattern)).singleElement().asString().contains("more tips than a wire has");
  }

  @Test
  void anEmptyPathIsTold() {
    assertThat(sentences(Shapes.half(3, OtherHalf.TURNED)))
        .singleElement()
        .asString()
        .contains("no runs");
  }

  private static List<String> sentences(Pattern pattern) {
    return PatternCheck.of(pattern).stream().map(PatternCheck.PatternFault::sentence).toList();
  }
}
