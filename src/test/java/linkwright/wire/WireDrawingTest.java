package linkwright.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import linkwright.quantity.Read;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WireDrawingTest {
  private static final List<Double> PLATE =
      List.of(2.0, 1.8, 1.6, 1.5, 1.4, 1.3, 1.2, 1.1, 1.0, 0.9, 0.8);

  @Nested
  class ThePasses {
    @Test
    void goThroughEveryHoleBetweenAndAnnealBeforeTheLimitIsPassed() {
      DrawPlan plan = WireDrawing.passes(PLATE, 2.0, 0.9, 0.5, 0).orThrow();
      assertThat(plan.passes())
          .extracting(Pass::toMm)
          .containsExactly(1.8, 1.6, 1.5, 1.4, 1.3, 1.2, 1.1, 1.0, 0.9);
      // 2.0 → 1.5 takes 43.75 %, 1.4 would make 51 %; 1.5 → 1.1 takes 46.2 %, 1.0 would make 55.6
      // %.
      assertThat(plan.annealBeforeMm()).containsExactly(1.4, 1.0);
      assertThat(plan.passes().get(2).cumulativeSinceAnneal()).isCloseTo(0.4375, within(1e-12));
      assertThat(plan.passes().get(3).cumulativeSinceAnneal())
          .isCloseTo(1 - (1.4 / 1.5) * (1.4 / 1.5), within(1e-12));
      assertThat(plan.warnings()).isEmpty();
    }

    @Test
    void areTheSameWhateverTheOrderOfTheHoles() {
      List<Double> shuffled = new ArrayList<>(PLATE);
      shuffled.add(1.4);
      Collections.shuffle(shuffled, new Random(7));
      assertThat(WireDrawing.passes(shuffled, 2.0, 0.9, 0.5, 0))
          .isEqualTo(WireDrawing.passes(PLATE, 2.0, 0.9, 0.5, 0));
    }

    @Test
    void mayReachTheLimitExactlyWithoutAnAnneal() {
      // 1.0 → 0.9 → 0.8 takes 36 % in all.
      DrawPlan plan = WireDrawing.passes(PLATE, 1.0, 0.8, 0.36, 0).orThrow();
      assertThat(plan.annealBeforeMm()).isEmpty();
      assertThat(WireDrawing.passes(PLATE, 1.0, 0.8, 0.3599, 0).orThrow().annealBeforeMm())
          .containsExactly(0.8);
    }

    @Test
    void beginWithAnAnnealWhenTheWireIsHardAlready() {
      // Annealed at 1.6 mm and drawn to 1.2 mm since: 43.75 % are gone.
      DrawPlan plan = WireDrawing.passes(PLATE, 1.2, 1.0, 0.5, 0, 1.6).orThrow();
      assertThat(plan.annealBeforeMm()).containsExactly(1.1);
    }

    @Test
    void thatTakeTooMuchAtOnceAreToldAndNotAnnealedTwice() {
      DrawPlan plan = WireDrawing.passes(List.of(1.0, 0.9), 2.0, 0.9, 0.5, 0).orThrow();
      assertThat(plan.warnings())
          .containsExactly(
              "From 2 mm to 1 mm in one pass takes 75 % off the area; this metal takes 50 %"
                  + " between anneals. Find a hole between them.");
      // The wire comes soft: another anneal before the first pass would change nothing.
      assertThat(plan.annealBeforeMm()).containsExactly(0.9);
    }

    @Test
    void areNoneWhenTheWireHasItsSize() {
      DrawPlan plan = WireDrawing.passes(PLATE, 0.9, 0.9, 0.5, 10).orThrow();
      assertThat(plan.passes()).isEmpty();
      assertThat(plan.rodLengthMm(500)).isEqualTo(500);
      assertThat(plan.lengthMm(500)).isEqualTo(Read.good(500.0));
    }

    @Test
    void neverCarryWireBeyondTheLimitWhateverThePlate() {
      long seed = 42;
      Random random = new Random(seed);
      for (int i = 0; i < 500; i++) {
        List<Double> holes = new ArrayList<>();
        double hole = 3;
        while (hole > 0.5) {
          hole *= 0.8 + 0.19 * random.nextDouble();
          holes.add(hole);
        }
        double to = holes.get(holes.size() - 1);
        double limit = 0.37 + 0.4 * random.nextDouble();
        DrawPlan plan = WireDrawing.passes(holes, 3, to, limit, 0).orThrow();
        assertThat(plan.passes())
            .as("seed %d, run %d", seed, i)
            .hasSize(holes.size())
            .allMatch(pass -> pass.cumulativeSinceAnneal() <= limit + 1e-8);
      }
    }
  }

  @Nested
  class TheRod {
    @Test
    void growsAtEachPassByWhatIsLeftAfterPointing() {
      DrawPlan plan = WireDrawing.passes(List.of(1.0, 0.5), 2.0, 0.5, 0.8, 10).orThrow();
      // (100 − 10)·4 = 360; (360 − 10)·4 = 1400.
      assertThat(plan.lengthMm(100).orThrow()).isCloseTo(1400, within(1e-9));
      assertThat(plan.rodLengthMm(1400)).isCloseTo(100, within(1e-9));
    }

    @Test
    void isToldWhenPointingEatsItUp() {
      DrawPlan plan = WireDrawing.passes(List.of(1.0, 0.5), 2.0, 0.5, 0.8, 10).orThrow();
      assertThat(plan.lengthMm(12))
          .isEqualTo(
              Read.bad(
                  "A rod of 12 mm is used up by pointing before the hole of 0.5 mm."
                      + " Start with more than 12.5 mm."));
      assertThat(plan.lengthMm(0).isGood()).isFalse();
      assertThat(plan.lengthMm(12.51).isGood()).isTrue();
    }
  }

  @Nested
  class WhatAPlateCanNotDo {
    @Test
    void isToldWithTheNearestHoles() {
      assertThat(WireDrawing.passes(PLATE, 2.0, 0.96, 0.5, 0).problem())
          .contains("The plate has no hole of 0.96 mm. The nearest: 1 mm, 0.9 mm.");
      assertThat(WireDrawing.passes(List.of(), 2.0, 0.9, 0.5, 0).problem().orElseThrow())
          .contains("Write the plate's holes");
    }

    @Test
    void isToMakeWireThicker() {
      String sentence =
          "A drawplate only makes wire thinner: 0.9 mm can't become 1 mm. Start from thicker wire.";
      assertThat(WireDrawing.of(0.9, 1.0, 100)).isEqualTo(Read.bad(sentence));
      assertThat(WireDrawing.passes(PLATE, 0.9, 1.0, 0.5, 0)).isEqualTo(Read.bad(sentence));
      assertThatThrownBy(() -> new WireDrawing(0.9, 1.0, 100)).hasMessageContaining("toMm");
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void sizesThatAreNoneAreAProgrammersError(double none) {
    assertThatThrownBy(() -> WireDrawing.of(none, 1, 1)).hasMessageContaining("fromMm");
    assertThatThrownBy(() -> WireDrawing.of(1, none, 1)).hasMessageContaining("toMm");
    assertThatThrownBy(() -> WireDrawing.passes(List.of(none), 2, 1, 0.5, 0))
        .hasMessageContaining("hole");
    assertThatThrownBy(() -> WireDrawing.passes(PLATE, 2, 1, none, 0))
        .hasMessageContaining("reductionLimit");
    assertThatThrownBy(() -> WireDrawing.passes(PLATE, 2, 1, 0.5, 0, none == 0 ? 1.9 : none))
        .hasMessageContaining("annealedAtMm");
  }

  @Test
  void whatOverflowsIsAProgrammersError() {
    assertThatThrownBy(() -> new WireDrawing(1e150, 1e-150, 1e9).lengthMm())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("length");
    assertThatThrownBy(() -> WireDrawing.of(2, 1, -1)).hasMessageContaining("startMm");
  }
}
