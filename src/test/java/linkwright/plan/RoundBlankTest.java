package linkwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import linkwright.fit.Fit;
import linkwright.fit.LinkSize;
import linkwright.fit.Maker;
import linkwright.link.Forming;
import linkwright.link.Pattern;
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

  /** A ring is as long over its mandrel whatever the blank: it takes what goes round, no more. */
  @Test
  void of_a_size_that_its_mandrel_gives_whatever_the_blank_is_the_shortest() {
    Pattern ring =
        Wishes.PATTERNS.stream()
            .filter(each -> each.id().equals("round"))
            .findFirst()
            .orElseThrow();
    Map<String, List<Double>> mandrel = Map.of("ring", List.of(2.8));
    Maker maker = Maker.unknown(0.002);
    double size =
        Forming.form(ring, 1, 14, Map.of("ring", 2.8), maker.bending()).orThrow().lengthMm();
    double blankMm =
        Fit.next(ring, 1, maker, new LinkSize(size, size), mandrel, 0.1).orThrow().blankMm();
    // 2.8 mm and the wire, and what it springs back.
    assertThat(blankMm).isBetween(3.8 * Math.PI, 4 * Math.PI);
  }
}
