package linkwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * Necklaces are sold as 45 + 5 cm: the clasp takes any link of the last 5 cm. Common practice, no
 * source.
 */
class ExtenderTest {
  private static final Offset<Double> EXACT = Offset.offset(1e-9);

  private static Wishes fiftyCm() {
    return Wishes.common().with(WishKeys.FINISHED, "50 cm");
  }

  @Test
  void an_extender_is_the_end_of_the_chain_in_whole_links_and_changes_nothing_else() {
    Plan without = fiftyCm().plan();
    Plan with = fiftyCm().with(WishKeys.EXTENDER, "5 cm").plan();
    // By hand: one link and its ring inside by inside, so many as come nearest to 50 mm.
    double each = with.linkInsideMm() + with.ringInsideLengthMm();
    int links = (int) Math.round(50 / each);

    Extender extender = with.extender().orElseThrow();
    assertThat(extender.links()).isEqualTo(links).isGreaterThan(2);
    assertThat(extender.lengthMm()).isCloseTo(links * each, EXACT);
    assertThat(extender.closesFromMm()).isCloseTo(with.lengthMm() - links * each, EXACT);
    assertThat(with.links()).isEqualTo(without.links());
    assertThat(with.wireTotalMm()).isEqualTo(without.wireTotalMm());
    assertThat(without.extender()).isEmpty();
  }

  @Test
  void one_as_long_as_the_chain_is_refused_in_a_sentence() {
    assertThat(fiftyCm().with(WishKeys.EXTENDER, "50 cm").read().troubles())
        .containsOnlyKeys(WishKeys.EXTENDER)
        .extractingByKey(WishKeys.EXTENDER)
        .asString()
        .contains("in it", "such as 5 cm of 50 cm");
  }
}
