package linkwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** A round link whose blank was typed and whose mandrel was not. */
class RoundBlankTest {
  private static Wishes round() {
    return new Wishes()
        .with(WishKeys.METAL, "copper")
        .with(WishKeys.WIRE, "1 mm")
        .with(WishKeys.LINK_PATTERN, "round")
        .with(WishKeys.FINISHED, "400 mm");
  }

  @Test
  void found_for_a_length_and_typed_back_it_gives_the_same_chain() {
    Plan found = round().with(WishKeys.LINK_LENGTH, "8 mm").plan();
    Plan typed = round().with(WishKeys.LINK_BLANK, found.linkBlankMm() + " mm").plan();
    assertThat(typed.link().formersMm()).isEqualTo(found.link().formersMm());
    assertThat(typed.links()).isEqualTo(found.links());
  }

  /** π (D + d) is the blank, before any springback: 21.8 over 5.9 mm, of 1 mm wire. */
  @Test
  void closes_over_what_it_goes_round() {
    Plan plan = round().with(WishKeys.LINK_BLANK, "21.8 mm").plan();
    assertThat(plan.link().lengthMm().orElseThrow())
        .isCloseTo(21.8 / Math.PI + 1, Offset.offset(0.15));
    assertThat(plan.remarks()).anyMatch(said -> said.contains("No former is named: a blank of"));
  }

  @Test
  void tells_where_it_does_not_give_the_length_wished_with_it() {
    Plan plan =
        round().with(WishKeys.LINK_BLANK, "21.8 mm").with(WishKeys.LINK_LENGTH, "6 mm").plan();
    assertThat(plan.remarks()).anyMatch(said -> said.contains("long, not the 6 mm wished"));
    Plan agrees =
        round().with(WishKeys.LINK_BLANK, "21.8 mm").with(WishKeys.LINK_LENGTH, "7.9 mm").plan();
    assertThat(agrees.remarks()).noneMatch(said -> said.contains("wished"));
  }
}
