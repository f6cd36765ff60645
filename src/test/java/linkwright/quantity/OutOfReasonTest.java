package linkwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class OutOfReasonTest {
  private static final UnitStyle METRIC = UnitStyle.METRIC;

  @Test
  void whatABenchMayWellSeeIsNotAskedAbout() {
    assertThat(OutOfReason.pieces(600, "blanks")).isEmpty();
    assertThat(OutOfReason.wire(12_000, METRIC)).isEmpty();
    assertThat(OutOfReason.finishedLength(1_200, METRIC)).isEmpty();
    assertThat(OutOfReason.usualLoss(0.25)).isEmpty();
    assertThat(OutOfReason.weight(21, 20, "the chain", METRIC)).isEmpty();
    assertThat(OutOfReason.weight(5, 0, "the chain", METRIC)).isEmpty();
  }

  @Test
  void manyPiecesAreAskedAbout() {
    assertThat(OutOfReason.pieces(9_999, "blanks"))
        .hasValue(new Doubtful("9999 blanks: as many as that?", ""));
  }

  @Test
  void muchWireAndALongChainAreWithWhatWasLikelyMeant() {
    assertThat(OutOfReason.wire(60_000, METRIC))
        .hasValue(new Doubtful("60 m of wire: as much as that?", "6 m"));
    assertThat(OutOfReason.finishedLength(4_500, METRIC))
        .hasValue(new Doubtful("A chain of 4.5 m: as long as that?", "450 mm"));
  }

  @Test
  void nearlyEverythingLostIs() {
    assertThat(OutOfReason.usualLoss(0.99))
        .hasValue(new Doubtful("99 % of the pieces usually lost: as many as that?", "9.9 %"));
  }

  @Test
  void aChainMuchHeavierThanReckonedIs() {
    assertThat(OutOfReason.weight(34.6, 20, "the chain", METRIC))
        .hasValue(
            new Doubtful(
                "34.6 g for the chain is 73 % more than the 20 g reckoned: is it right?", ""));
    assertThat(OutOfReason.weight(10, 20, "the chain", METRIC).orElseThrow().question())
        .contains("50 % less");
  }
}
