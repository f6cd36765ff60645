package linkwright.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PassageTest {
  /** Eyes of the radius 2 over wire of 1 mm, turned by 270 degrees, their tips 1 mm off. */
  private static Formed open(List<Joint> joints) {
    Pattern pattern =
        Shapes.of(
            Map.of("eye", 3.0),
            OtherHalf.TURNED,
            false,
            joints,
            Bends.eye("eye", 270, Side.LEFT),
            Run.rest());
    return Shapes.form(pattern, 1, 60);
  }

  @Test
  void theMouthIsTheNarrowestWayIn() {
    List<Passage> passages = Passage.of(open(List.of()), 3, 0.9);
    assertThat(passages).hasSize(2);
    assertThat(passages.get(0).openMm()).isCloseTo(3, within(1e-3));
    // The tip's centre lies one radius off the stem's: 2 mm, less one wire.
    assertThat(passages.get(0).mouthMm()).isCloseTo(1, within(1e-3));
    assertThat(passages.get(0).troubles()).isEmpty();
  }

  @Test
  void aRingTooThickForAnOpenMouthIsToldUnlessTheMouthIsSoldered() {
    assertThat(Passage.of(open(List.of()), 3, 1.2).get(0).troubles())
        .containsExactly(
            "The ring's wire of 1.2 mm does not pass the eye's mouth, which is 1 mm wide: open the"
                + " mouth, or solder it and open the ring.");
    List<Passage> soldered =
        Passage.of(open(List.of(Joint.TIP_TO_BODY, Joint.TIP_TO_BODY)), 3, 1.2);
    assertThat(soldered.get(1).soldered()).isTrue();
    assertThat(soldered.get(1).troubles()).isEmpty();
  }

  @Test
  void aRingTooThickForTheEyeOrTooSmallForTwoWiresIsTold() {
    assertThat(
            Passage.of(open(List.of(Joint.TIP_TO_BODY, Joint.TIP_TO_BODY)), 1.5, 3.2)
                .get(0)
                .troubles())
        .hasSize(2)
        .anySatisfy(
            trouble -> assertThat(trouble).contains("does not pass the eye, which is open 3 mm"))
        .anySatisfy(
            trouble -> assertThat(trouble).contains("does not hold the wires of two links, 2 mm"));
  }
}
