package linkwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linkwright.quantity.UnitStyle;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlanningTest {
  private static final Offset<Double> EXACT = Offset.offset(1e-9);

  @Nested
  class ALinkWhoseBlankIsFound {
    private Plan oval(String width) {
      return Wishes.common()
          .without(WishKeys.LINK_BLANK)
          .with(WishKeys.LINK_PATTERN, "oval")
          .with(WishKeys.WIRE, "1 mm")
          .with(WishKeys.LINK_LENGTH, "12 mm")
          .with(WishKeys.LINK_WIDTH, width)
          .plan();
    }

    @Test
    void has_the_length_that_was_wished() {
      assertThat(oval("4.8 mm").formed().orElseThrow().lengthMm())
          .isCloseTo(12, Offset.offset(0.1));
    }

    @Test
    void tells_a_width_that_the_formers_do_not_give() {
      assertThat(oval("6 mm").remarks())
          .contains(
              "A link of 12 mm by 6 mm cannot be had over end 2.8 mm; the nearest is 12 mm by"
                  + " 4.87 mm. Take end 3.9 mm.");
      assertThat(oval("4.8 mm").remarks()).noneMatch(remark -> remark.contains("cannot be had"));
    }
  }

  /** Hard gold solder flows where 14 k yellow begins to melt: it is told so, and not as fit. */
  @Test
  void a_solder_that_the_metal_does_not_bear_is_not_named_for_the_mark() {
    for (String metal : List.of("gold-14k-yellow", "sterling")) {
      Plan plan = Wishes.common().with(WishKeys.METAL, metal).plan();
      String said =
          String.join(
              " ",
              FinenessWord.of(
                  plan.wish().metal(),
                  plan.massChainG(),
                  Wishes.LIBRARY.reference(),
                  UnitStyle.METRIC,
                  true));
      assertThat(said).contains("for the mark: " + (metal.equals("sterling") ? "hard" : "medium"));
    }
  }

  /** A link that came out too short was told to take smaller formers, and then larger ones. */
  @Nested
  class AdviceOnFormers {
    @ParameterizedTest
    @ValueSource(strings = {"long", "oval", "bar-two-eyes", "scroll", "figure-of-eight"})
    void a_former_that_nobody_named_is_as_thick_as_the_wire_that_is_bent_over_it(String pattern) {
      Plan thick =
          Wishes.common()
              .without(WishKeys.LINK_BLANK, WishKeys.RING_INSIDE)
              .with(WishKeys.WIRE, "4.55 mm")
              .with(WishKeys.LINK_PATTERN, pattern)
              .with(WishKeys.LINK_LENGTH, "60 mm")
              .plan();
      assertThat(thick.formed().orElseThrow().pattern().formersMm().values())
          .allSatisfy(mm -> assertThat(mm).isCloseTo(4.6, EXACT));
    }

    private Plan plan(String pattern, String wire, String length, String width, String formers) {
      return Wishes.common()
          .without(WishKeys.LINK_BLANK, WishKeys.RING_INSIDE)
          .with(WishKeys.LINK_PATTERN, pattern)
          .with(WishKeys.WIRE, wire)
          .with(WishKeys.LINK_LENGTH, length)
          .with(WishKeys.LINK_WIDTH, width)
          .with(WishKeys.LINK_FORMERS, formers)
          .plan();
    }

    @Test
    void when_it_is_followed_there_is_none_left() {
      Plan first = plan("scroll", "0.9 mm", "14 mm", "5 mm", "");
      String advice =
          first.remarks().stream()
              .filter(remark -> remark.contains("Take "))
              .findFirst()
              .orElseThrow();
      String formers =
          advice
              .substring(advice.indexOf("Take ") + 5)
              .replaceAll("(tip|bow) ", "$1=")
              .replaceAll("\\.$", "");
      assertThat(plan("scroll", "0.9 mm", "14 mm", "5 mm", formers).remarks())
          .as(formers)
          .noneMatch(
              remark ->
                  remark.contains("cannot be had")
                      || remark.contains("crosses")
                      || remark.contains("into itself"));
    }

    @Test
    void a_round_link_without_a_mandrel_gets_the_one_that_gives_its_length_and_it_is_told() {
      Plan plan = plan("round", "18 AWG", "5/16 in", "", "");
      assertThat(plan.link().lengthMm().orElseThrow())
          .isCloseTo(25.4 * 5 / 16, Offset.offset(0.06));
      assertThat(plan.remarks()).anyMatch(remark -> remark.contains("over 5.7 mm the link comes"));
    }

    @Test
    void a_round_link_is_planned_by_its_mandrel_alone() {
      Plan plan =
          Wishes.common()
              .without(WishKeys.LINK_BLANK, WishKeys.RING_INSIDE)
              .with(WishKeys.LINK_PATTERN, "round")
              .with(WishKeys.LINK_FORMERS, "ring=4 mm")
              .plan();
      // Wire of 0.9 mm round 4 mm, and what springs back; pi (4 + 0.9) = 15.4.
      assertThat(plan.linkBlankMm()).isBetween(15.4, 15.8);
      assertThat(plan.linkInsideMm()).isBetween(4.0, 4.2);
      Plan typedBack =
          Wishes.common()
              .without(WishKeys.RING_INSIDE)
              .with(WishKeys.LINK_PATTERN, "round")
              .with(WishKeys.LINK_FORMERS, "ring=4 mm")
              .with(WishKeys.LINK_BLANK, plan.linkBlankMm() + " mm")
              .plan();
      assertThat(typedBack.links()).isEqualTo(plan.links());
      assertThat(typedBack.lengthMm()).isEqualTo(plan.lengthMm());
    }

    @Test
    void a_loss_that_no_number_of_blanks_makes_good_is_no_plan() {
      assertThat(Wishes.common().with(WishKeys.USUAL_LOSS, "99 %").wrong())
          .contains("At a usual loss of 99 %");
    }
  }

  @Nested
  class WireAndMassByHand {
    private final Plan plan =
        Wishes.common().with(WishKeys.KERF, "0.3 mm").with(WishKeys.COIL_TAIL, "12 mm").plan();

    @Test
    void links_take_their_blank_and_a_kerf_each() {
      assertThat(plan.wireLinksMm()).isCloseTo(plan.links() * (38.1 + 0.3), EXACT);
      assertThat(plan.linkEachMm()).isCloseTo(38.4, EXACT);
    }

    @Test
    void rings_take_a_turn_of_the_coil_each_and_one_tail() {
      // The kerf is lost inside the turn, so the coil's own inside is the ring's and kerf / pi
      // more.
      double turn = Math.hypot(Math.PI * (2.5 + 0.3 / Math.PI + 0.9), 0.9);
      double plainTurn = Math.hypot(Math.PI * (2.5 + 0.9), 0.9);
      assertThat(plan.ringTurnMm()).isBetween(plainTurn - 1e-9, turn + 1e-9);
      assertThat(plan.wireRingsMm()).isCloseTo(plan.rings() * plan.ringTurnMm() + 12, EXACT);
      assertThat(plan.ringBlankMm()).isCloseTo(Math.PI * 3.4, EXACT);
    }

    @Test
    void spare_blanks_are_kept_apart() {
      assertThat(plan.blanksToCut()).isGreaterThan(plan.links());
      assertThat(plan.wireSpareMm()).isCloseTo((plan.blanksToCut() - plan.links()) * 38.4, EXACT);
      assertThat(plan.ringsToCut()).isGreaterThan(plan.rings());
      assertThat(plan.wireSpareRingsMm())
          .isCloseTo((plan.ringsToCut() - plan.rings()) * plan.ringTurnMm(), EXACT);
      assertThat(plan.wireTotalMm())
          .isCloseTo(
              plan.wireLinksMm()
                  + plan.wireRingsMm()
                  + plan.wireSpareMm()
                  + plan.wireSpareRingsMm(),
              EXACT);
    }

    @Test
    void masses_are_of_finished_pieces_without_kerf_tail_or_spares() {
      double density = plan.wish().metal().densityGCm3().value();
      double gramsPerMm = Math.PI * 0.9 * 0.9 / 4 * density / 1000;
      assertThat(plan.massLinksG()).isCloseTo(plan.links() * 38.1 * gramsPerMm, EXACT);
      assertThat(plan.massRingsG()).isCloseTo(plan.rings() * Math.PI * 3.4 * gramsPerMm, EXACT);
      assertThat(plan.massChainG())
          .isCloseTo(plan.massLinksG() + plan.massRingsG() + plan.solderPlacedG() + 0.9, EXACT);
    }

    @Test
    void
        the_length_is_what_links_rings_and_clasp_add_and_a_link_more_or_fewer_goes_with_its_ring() {
      double pair = plan.linkInsideMm() + plan.ringInsideLengthMm();
      assertThat(plan.lengthMm())
          .isCloseTo(plan.links() * pair + plan.ringInsideLengthMm() + 14, Offset.offset(1e-6));
      assertThat(plan.oneMoreMm()).isCloseTo(plan.lengthMm() + pair, Offset.offset(1e-6));
      assertThat(plan.oneFewerMm().orElseThrow())
          .isCloseTo(plan.lengthMm() - pair, Offset.offset(1e-6));
      assertThat(Math.abs(plan.lengthMm() - 406)).isLessThanOrEqualTo(pair / 2);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.5, 1.7, 3})
  void a_plan_with_all_lengths_scaled_is_the_plan_scaled(double scale) {
    Plan plan = scaled(1).plan();
    Plan larger = scaled(scale).plan();
    Offset<Double> close = Offset.offset(1e-6 * scale * 1000);
    assertThat(larger.links()).isEqualTo(plan.links());
    assertThat(larger.rings()).isEqualTo(plan.rings());
    assertThat(larger.blanksToCut()).isEqualTo(plan.blanksToCut());
    assertThat(larger.lengthMm()).isCloseTo(scale * plan.lengthMm(), close);
    assertThat(larger.wireTotalMm()).isCloseTo(scale * plan.wireTotalMm(), close);
    assertThat(larger.massLinksG()).isCloseTo(Math.pow(scale, 3) * plan.massLinksG(), close);
    assertThat(larger.massRingsG()).isCloseTo(Math.pow(scale, 3) * plan.massRingsG(), close);
  }

  private static Wishes scaled(double scale) {
    return Wishes.common()
        .with(WishKeys.WIRE, 0.9 * scale + " mm")
        .with(WishKeys.LINK_BLANK, 38.1 * scale + " mm")
        .with(WishKeys.LINK_FORMERS, "tip=" + scale + " mm, bow=" + 3.5 * scale + " mm")
        .with(WishKeys.RING_INSIDE, 2.5 * scale + " mm")
        .with(WishKeys.CLASP_LENGTH, 14 * scale + " mm")
        .with(WishKeys.FINISHED, 406 * scale + " mm")
        .with(WishKeys.KERF, 0.3 * scale + " mm")
        .with(WishKeys.COIL_TAIL, 10 * scale + " mm")
        .with(WishKeys.STOCK, 900 * scale + " mm, " + 100 * scale + " mm");
  }

  @Nested
  class LinksThatJoinEachOther {
    @Test
    void take_no_rings() {
      Plan plan =
          Wishes.common()
              .without(WishKeys.RING_INSIDE)
              .with(WishKeys.LINK_PATTERN, "figure-of-eight")
              .plan();
      assertThat(plan.rings()).isZero();
      assertThat(plan.wireRingsMm()).isZero();
      assertThat(plan.ringBlankMm()).isZero();
      assertThat(plan.massRingsG()).isZero();
      assertThat(plan.lengthMm())
          .isCloseTo(plan.links() * plan.linkInsideMm() + 14, Offset.offset(1e-6));
    }
  }

  @Test
  void a_blank_that_was_not_given_is_found_for_the_wished_size() {
    Plan plan =
        Wishes.common()
            .without(WishKeys.LINK_BLANK)
            .with(WishKeys.LINK_LENGTH, "14 mm")
            .with(WishKeys.LINK_WIDTH, "5 mm")
            .plan();
    assertThat(plan.formed().orElseThrow().lengthMm()).isCloseTo(14, Offset.offset(0.3));
    assertThat(plan.linkBlankMm()).isBetween(35.0, 42.0);
  }

  @ParameterizedTest(name = "{0} = {1}: {2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "metal | sterlin | Did you mean sterling?",
        "wire | 0.9 | unit",
        "wire | -3 mm | -3 mm",
        "wire | 0 mm | more than 0 mm",
        "wire | 0.9 furlong | furlong",
        "wire | 3.6 mm | too short for the bends",
        "link.formers | tip=0.5 mm | thicker",
        "link.blank | 9 mm | short",
        "link.blank | -38 mm | -38 mm",
        "link.pattern | scrol | Did you mean scroll?",
        "link.formers | nose=2 mm | no former",
        "link.formers | tip 2 mm | tip=2 mm",
        "finished-length | 9 mm | 9",
        "finished-length | 20 mm | link",
        "clasp.length | 50 cm | clasp",
        "ring.oval-inside | 2.6 mm | narrower",
        "ring.inside | 0 mm | more than 0 mm",
        "stock | 12 | unit",
        "usual-loss | 120 % | more than the whole",
        "confidence | 100 % | below 100 %",
        "temper | springy | soft",
      })
  void each_mistake_gets_a_sentence(String key, String typed, String says) {
    String wrong = Wishes.common().with(key, typed).wrong();
    assertThat(wrong)
        .containsIgnoringCase(says)
        .matches(".*[.?]")
        .doesNotContain("NaN", "Infinity");
  }

  @ParameterizedTest
  @ValueSource(strings = {WishKeys.METAL, WishKeys.WIRE, WishKeys.FINISHED, WishKeys.LINK_PATTERN})
  void what_is_missing_is_asked_for_with_an_example(String key) {
    assertThat(Wishes.common().without(key).wrong()).contains("such as");
  }

  @Test
  void everything_that_is_wrong_is_told_at_once_each_beside_its_key() {
    WishReading reading =
        Wishes.common()
            .with(WishKeys.METAL, "moon")
            .with(WishKeys.WIRE, "thin")
            .with(WishKeys.STOCK, "much")
            .read();
    assertThat(reading.wish()).isEmpty();
    assertThat(reading.troubles()).containsOnlyKeys(WishKeys.METAL, WishKeys.WIRE, WishKeys.STOCK);
  }
}
