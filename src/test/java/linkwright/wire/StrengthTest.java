package linkwright.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import linkwright.reference.Metal;
import linkwright.reference.Temper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StrengthTest {
  @Test
  void solderingMakesARingFourTimesAsStrong() {
    assertThat(Strength.solderedN(0.9, 3.1, 124) / Strength.buttedN(0.9, 3.1, 124))
        .isCloseTo(4, within(1e-12));
  }

  @Test
  void theWeakestElementIsTheUnsolderedEyeWhenThereIsOne() {
    var ring = new Strength.Element("ring", 0.9, 3.0, 3.0, 124, true);
    var eye = new Strength.Element("eye of the link, not soldered", 0.9, 2.0, 2.0, 124, false);
    assertThat(Strength.weakest(List.of(ring, eye))).isEqualTo(eye);
    assertThat(Strength.weakest(List.of(ring))).isEqualTo(ring);
  }

  @Test
  void solderingMakesHardWireSoft() {
    Metal sterling = Metals.sterling();
    var closed = Strength.Element.of("ring", 0.9, 3, 3, sterling, Temper.HARD, false);
    var soldered = Strength.Element.of("ring", 0.9, 3, 3, sterling, Temper.HARD, true);
    assertThat(closed.collapseN()).isEqualTo(Strength.buttedN(0.9, 3, 425));
    // 4 · 124 · 0.9³ / 6 / 1.95
    assertThat(soldered.collapseN()).isCloseTo(30.9, within(0.05));
  }

  @Test
  void anOvalIsPulledOverItsShorterHalf() {
    var round = new Strength.Element("ring", 0.9, 3, 3, 124, true);
    var oval = new Strength.Element("oval", 0.9, 2, 3.8, 124, true);
    assertThat(oval.collapseN() / round.collapseN()).isCloseTo(3.9 / 2.9, within(1e-12));
  }

  @Test
  void aChainOfNothingHasNoWeakestElement() {
    assertThatThrownBy(() -> Strength.weakest(List.of())).hasMessageContaining("elements");
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void sizesThatAreNoneAreAProgrammersError(double none) {
    assertThatThrownBy(() -> Strength.buttedN(none, 3, 124)).hasMessageContaining("wireMm");
    assertThatThrownBy(() -> Strength.buttedN(0.9, none, 124)).hasMessageContaining("insideMm");
    assertThatThrownBy(() -> Strength.solderedN(0.9, 3, none)).hasMessageContaining("yieldMpa");
  }

  @Test
  void whatOverflowsIsAProgrammersError() {
    assertThatThrownBy(() -> Strength.buttedN(1e150, 1, 1e10)).hasMessageContaining("pull");
  }
}
