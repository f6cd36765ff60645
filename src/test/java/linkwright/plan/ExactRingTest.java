package linkwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ExactRingTest {
  @Test
  void aRoundRingAddsItsInsideDiameter() {
    WishedRing round = new WishedRing(3, 0.9, OptionalDouble.empty());

    assertThat(ExactRing.insideMm(round, 3.4)).hasValue(3.4);
  }

  @Test
  void theRingFoundForAnOvalAddsWhatWasAskedWhenItIsSqueezed() {
    WishedRing oval = new WishedRing(3, 0.9, OptionalDouble.of(2.2));

    double ring = ExactRing.insideMm(oval, 4.6).orElseThrow();

    assertThat(ring).isBetween(3.0, 4.6);
    assertThat(RingLength.insideLengthMm(new WishedRing(ring, 0.9, OptionalDouble.of(2.2))))
        .isCloseTo(4.6, within(1e-9));
  }

  @Test
  void noRingAddsLessThanItsOvalIsWide() {
    WishedRing oval = new WishedRing(3, 0.9, OptionalDouble.of(2.2));

    assertThat(ExactRing.insideMm(oval, 2)).isEmpty();
  }
}
