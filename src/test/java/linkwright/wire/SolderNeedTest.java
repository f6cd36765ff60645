package linkwright.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import linkwright.quantity.Read;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SolderNeedTest {
  @Test
  void theLeastPieceHoldsTheGapAndItsFillet() {
    SolderNeed need = SolderNeed.of(2, 0.1, 0.5, 1, 0.3, 9.5, JointKind.BUTT);
    // π mm² · 0.1 mm · 1.5
    assertThat(need.massG()).isCloseTo(0.15 * Math.PI * 9.5 / 1000, within(1e-12));
    assertThat(need.leastPieceMm()).isCloseTo(0.5 * Math.PI, within(1e-12));
  }

  @Test
  void aTipAgainstAWireTakesMore() {
    SolderNeed butt = SolderNeed.of(1, 0.05, 0.5, 1, 0.3, 9.5, JointKind.BUTT);
    SolderNeed side = SolderNeed.of(1, 0.05, 0.5, 1, 0.3, 9.5, JointKind.SIDE);
    assertThat(side.massG() / butt.massG()).isCloseTo(2.5, within(1e-9));
  }

  /**
   * 28 pieces of 1 × 1 × 0.3 mm at 9.6 g/cm³: 28 · 0.3 · 9.6 = 80.64 mg, all of it in the chain.
   */
  @Test
  void whatIsPlacedIsThePieceThatIsCut() {
    SolderNeed need = SolderNeed.of(1, 0.05, 0.5, 1, 0.3, 9.6, JointKind.BUTT);
    assertThat(28 * need.placedG()).isCloseTo(0.08064, within(1e-9));
    // π/4 · 0.05 · 1.5 · 9.6 = 0.5655 mg fill one.
    assertThat(need.massG()).isCloseTo(0.00056549, within(1e-8));
    assertThat(need.warnings()).isEmpty();
  }

  @Test
  void muchMoreThanFillsTheJointIsToldToFloodIt() {
    SolderNeed thin = SolderNeed.of(0.5, 0.05, 0.5, 1, 0.3, 9.6, JointKind.BUTT);
    // 0.5 mm against π/16 · 0.05 · 1.5 / 0.3 = 0.049 mm.
    assertThat(thin.warnings())
        .containsExactly(
            "A piece of 0.5 mm is 10 times what fills the joint and floods it: cut it from narrower"
                + " or thinner solder.");
  }

  @Test
  void aPieceIsAsLongAsTheWireIsThick() {
    assertThat(SolderNeed.of(0.9, 0.05, 0.5, 1, 0.3, 9.5, JointKind.BUTT).pieceMm()).isEqualTo(0.9);
  }

  @Test
  void aPieceIsAtMostAMillimetreOnThickWire() {
    SolderNeed need = SolderNeed.of(2, 0.02, 0.5, 1, 0.3, 9.5, JointKind.BUTT);
    assertThat(need.leastPieceMm()).isLessThan(1);
    assertThat(need.pieceMm()).isEqualTo(1);
    assertThat(need.warnings()).isEmpty();
  }

  @Test
  void aPieceIsNeverLessThanTheJointNeedsAndThatIsToldBeyondAMillimetre() {
    SolderNeed need = SolderNeed.of(2, 0.1, 0.5, 1, 0.3, 9.5, JointKind.BUTT);
    assertThat(need.pieceMm()).isEqualTo(need.leastPieceMm()).isGreaterThan(1);
    assertThat(need.warnings())
        .containsExactly(
            "The joint needs at least 1.57 mm of this strip, more than the 1 mm that is usual:"
                + " close the joint, or take thicker or wider solder.");
  }

  @Test
  void aJointWithoutAGapTakesNoVolumeAndStillAPiece() {
    SolderNeed need = SolderNeed.of(0.9, 0, 0.5, 1, 0.3, 9.5, JointKind.BUTT);
    assertThat(need.massG()).isZero();
    assertThat(need.pieceMm()).isEqualTo(0.9);
  }

  @Test
  void theKindsOfJointAreReadByName() {
    for (JointKind kind : JointKind.values()) {
      assertThat(JointKind.read(kind.name())).isEqualTo(Read.good(kind));
    }
    assertThat(JointKind.read("lap").problem().orElseThrow()).contains("Write butt");
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
  void sizesThatAreNoneAreAProgrammersError(double none) {
    assertThatThrownBy(() -> SolderNeed.of(none, 0.1, 0.5, 1, 0.3, 9.5, JointKind.BUTT))
        .hasMessageContaining("widthMm");
    assertThatThrownBy(() -> SolderNeed.of(1, none, 0.5, 1, 0.3, 9.5, JointKind.BUTT))
        .hasMessageContaining("gapMm");
    assertThatThrownBy(() -> SolderNeed.of(1, 0.1, none, 1, 0.3, 9.5, JointKind.BUTT))
        .hasMessageContaining("filletShare");
    assertThatThrownBy(() -> SolderNeed.of(1, 0.1, 0.5, 1, none, 9.5, JointKind.BUTT))
        .hasMessageContaining("thicknessMm");
    assertThatThrownBy(() -> SolderNeed.of(1, 0.1, 0.5, 1, 0.3, none, JointKind.BUTT))
        .hasMessageContaining("densityGCm3");
  }
}
