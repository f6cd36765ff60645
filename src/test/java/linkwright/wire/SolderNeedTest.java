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
    assertThat(need.volumeMm3()).isCloseTo(0.15 * Math.PI, within(1e-12));
    assertThat(need.leastPieceMm()).isCloseTo(0.5 * Math.PI, within(1e-12));
    assertThat(need.massG()).isCloseTo(0.15 * Math.PI * 9.5 / 1000, within(1e-12));
  }

  @Test
  void aTipAgainstAWireTakesMore() {
    SolderNeed butt = SolderNeed.of(1, 0.05, 0.5, 1, 0.3, 9.5, JointKind.BUTT);
    SolderNeed side = SolderNeed.of(1, 0.05, 0.5, 1, 0.3, 9.5, JointKind.SIDE);
    assertThat(side.volumeMm3() / butt.volumeMm3()).isCloseTo((0.05 + 0.076) / 0.05, within(1e-9));
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
    assertThat(need.volumeMm3()).isZero();
    assertThat(need.massG()).isZero();
    assertThat(need.pieceMm()).isEqualTo(0.9);
  }

  @Test
  void theKindsOfJointAreReadByName() {
    for (JointKind kind : JointKind.values()) {
      assertThat(JointKind.read(kind.word())).isEqualTo(Read.good(kind));
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
