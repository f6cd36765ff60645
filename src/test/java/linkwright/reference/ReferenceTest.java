package linkwright.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import linkwright.quantity.Read;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class ReferenceTest {
  private static final Metal STERLING =
      metal("sterling", "Sterling silver", List.of("925", "standard silver"), Family.SILVER);
  private static final Metal COPPER = metal("copper", "Copper", List.of(), Family.COPPER);
  private static final Solder HARD = solder("hard-silver", Family.SILVER, 1);
  private static final Solder EASY = solder("easy-silver", Family.SILVER, 3);
  private static final Solder MEDIUM = solder("medium-silver", Family.SILVER, 2);
  private static final Solder GOLD = solder("hard-gold", Family.GOLD, 1);
  private static final Clasp TRIGGER =
      new Clasp("trigger", "Trigger clasp", 9, 0.6, true, "invented for this test");
  private static final FinenessRule UK_SILVER =
      new FinenessRule(
          "UK",
          Family.SILVER,
          List.of(800, 925, 958, 999),
          Optional.of(7.78),
          false,
          false,
          Map.of(),
          true,
          "2026-01-01",
          "Hallmarking Act 1973, Schedule 1, Part II",
          "");
  private static final Reference REFERENCE =
      new Reference(
          List.of(STERLING, COPPER),
          List.of(EASY, HARD, GOLD, MEDIUM),
          List.of(UK_SILVER),
          List.of(TRIGGER),
          List.of(),
          List.of(),
          List.of(),
          List.of());

  @Nested
  class LookingUp {
    @Test
    void findsByIdNameAndOtherName() {
      for (String name : List.of("sterling", "Sterling Silver", "sterling_silver", " 925 ")) {
        assertThat(REFERENCE.metal(name)).isEqualTo(Read.good(STERLING));
      }
      assertThat(REFERENCE.solder("Hard silver")).isEqualTo(Read.good(HARD));
      assertThat(REFERENCE.clasp("trigger")).isEqualTo(Read.good(TRIGGER));
    }

    @Test
    void tellsTheNearestKnown() {
      assertThat(REFERENCE.metal("sterlng"))
          .isEqualTo(Read.bad("“sterlng” is not a known metal. Did you mean sterling?"));
      assertThat(REFERENCE.clasp("triger"))
          .isEqualTo(Read.bad("“triger” is not a known clasp. Did you mean trigger?"));
    }

    @Test
    void ofWordsThatSeveralHaveNamesThoseAndAsksWhich() {
      assertThat(REFERENCE.solder("Silver").problem().orElseThrow())
          .startsWith("“Silver” may be any of these: ")
          .contains("easy silver; hard silver; medium silver")
          .doesNotContain("gold")
          .endsWith(". Say which.");
    }

    @Test
    void tellsAllThatAreKnownWhenNoneIsNear() {
      assertThat(REFERENCE.metal("unobtainium"))
          .isEqualTo(
              Read.bad(
                  "“unobtainium” is not a known metal. Known: Sterling silver (sterling);"
                      + " Copper."));
    }

    @Test
    void inAnEmptyReferenceFindsNothingAndSaysSo() {
      Reference empty =
          new Reference(
              List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
              List.of());
      assertThat(empty.metal("")).isEqualTo(Read.bad("“” is not a known metal."));
    }
  }

  @Test
  void soldersComeInOrderOfFlowTheHottestFirst() {
    assertThat(REFERENCE.soldersFor(Family.SILVER)).containsExactly(HARD, MEDIUM, EASY);
    assertThat(REFERENCE.soldersFor(Family.PLATINUM)).isEmpty();
  }

  @Test
  void anArticleLighterThanTheExemptionNeedsNoMark() {
    FinenessRule rule = REFERENCE.finenessRules().get(0);
    assertThat(rule.needsMark(7.77)).isFalse();
    // The exemption is for articles that weigh less than it.
    assertThat(rule.needsMark(7.78)).isTrue();
  }

  @Test
  void whereMarkingIsFreeNothingNeedsAMark() {
    FinenessRule free =
        new FinenessRule(
            "Elsewhere",
            Family.GOLD,
            List.of(585),
            Optional.empty(),
            false,
            false,
            Map.of(),
            false,
            "",
            "",
            "");
    FinenessRule due =
        new FinenessRule(
            "Elsewhere",
            Family.GOLD,
            List.of(585),
            Optional.empty(),
            false,
            false,
            Map.of(),
            true,
            "",
            "",
            "");
    assertThat(free.needsMark(1000)).isFalse();
    assertThat(due.needsMark(0.1)).isTrue();
  }

  @Test
  void theStressOfBendingLiesBetweenYieldAndTensileStrength() {
    assertThat(STERLING.yieldMpa(Temper.SOFT)).isEqualTo(120);
    assertThat(STERLING.bendingMpa(Temper.SOFT)).isEqualTo(200);
    assertThat(STERLING.bendingMpa(Temper.HARD)).isEqualTo(450);
    assertThat(STERLING.modulusMpa()).isEqualTo(75_000);
  }

  @Test
  void wordsAreReadBack() {
    for (Family family : Family.values()) {
      assertThat(Family.read(family.word())).isEqualTo(Read.good(family));
    }
    for (Temper temper : Temper.values()) {
      assertThat(Temper.read(temper.word())).isEqualTo(Read.good(temper));
    }
    assertThat(Temper.read("Annealed")).isEqualTo(Read.good(Temper.SOFT));
    assertThat(Temper.read("springy").problem().orElseThrow()).contains("Write soft");
    assertThat(Family.read("sliver").problem().orElseThrow()).contains("Did you mean silver?");
  }

  @Test
  void figuresThatAreNoneAreProgrammersErrors() {
    assertThatThrownBy(() -> new PublishedFigure(Double.NaN, "")).hasMessageContaining("value");
    assertThatThrownBy(() -> new Range(2, 1, "")).hasMessageContaining("from");
    assertThatThrownBy(() -> new Range(Double.NaN, 1, "")).hasMessageContaining("from");
    assertThatThrownBy(() -> new Clasp("c", "c", -1, 0, false, "")).hasMessageContaining("Mm");
    assertThatThrownBy(
            () ->
                new Solder(
                    "s",
                    "s",
                    List.of(),
                    Family.SILVER,
                    700,
                    600,
                    1,
                    9,
                    "",
                    "",
                    OptionalInt.empty(),
                    "",
                    ""))
        .hasMessageContaining("solidusC");
  }

  private static Metal metal(String id, String name, List<String> also, Family family) {
    return new Metal(
        id,
        name,
        also,
        family,
        OptionalInt.empty(),
        figure(10.36),
        new Range(779, 893, "test"),
        new Range(600, 650, "test"),
        "",
        "",
        figure(75),
        figure(120),
        figure(400),
        figure(280),
        figure(500),
        figure(0.5),
        List.of(),
        "");
  }

  private static PublishedFigure figure(double value) {
    return new PublishedFigure(value, "invented for this test");
  }

  private static Solder solder(String id, Family family, int flowOrder) {
    return new Solder(
        id,
        id.replace('-', ' '),
        List.of(),
        family,
        700,
        750,
        flowOrder,
        9.5,
        "",
        "",
        OptionalInt.empty(),
        "",
        "invented");
  }
}
