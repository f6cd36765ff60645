package linkwright.standing.nearest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import linkwright.plan.Plan;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.quantity.UnitStyle;
import linkwright.standing.JobBook;
import linkwright.standing.Standing;
import linkwright.standing.nearest.ChainChoice.Way;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class ChainChoicesTest {
  private static final Map<String, String> WISH =
      Wishes.common()
          .without(WishKeys.LINK_BLANK)
          .with(WishKeys.LINK_LENGTH, "14 mm")
          .with(WishKeys.LINK_WIDTH, "5.6 mm")
          .with(WishKeys.RING_INSIDE, "3 mm")
          .texts();

  private final JobBook book = JobBook.scroll(WISH);
  private final List<ChainChoice> choices = ChainChoices.of(WISH, book.state(), JobBook.HANDBOOK);

  @Test
  void each_gives_what_it_promises_when_it_is_taken() {
    assertThat(choices).extracting(ChainChoice::way).contains(Way.FIT_LINK, Way.ONE_MORE);
    for (ChainChoice choice : choices) {
      Map<String, String> taken = new HashMap<>(WISH);
      taken.putAll(choice.change());
      Plan plan =
          Standing.ofTyped(taken, book.state(), JobBook.HANDBOOK).counted().plan().orElseThrow();
      assertThat(plan.lengthMm())
          .as(choice.says(UnitStyle.METRIC))
          .isCloseTo(choice.lengthMm(), Offset.offset(0.01));
      assertThat(plan.links()).as(choice.says(UnitStyle.METRIC)).isEqualTo(choice.links());
    }
  }

  @Test
  void another_end_or_clasp_may_take_a_link_away_and_says_so() {
    Map<String, String> wish = new HashMap<>(WISH);
    wish.put(WishKeys.CLASP_LENGTH, "12 mm");
    int before = JobBook.scroll(wish).standing().counted().plan().orElseThrow().links();
    boolean changed = false;
    for (int mm = 400; mm < 420; mm++) {
      wish.put(WishKeys.FINISHED, mm + " mm");
      JobBook of = JobBook.scroll(wish);
      int counted = of.standing().counted().plan().orElseThrow().links();
      for (ChainChoice choice : ChainChoices.of(wish, of.state(), JobBook.HANDBOOK)) {
        if (choice.way() == Way.JUMP_RINGS || choice.way() == Way.CLASP) {
          Map<String, String> taken = new HashMap<>(wish);
          taken.putAll(choice.change());
          assertThat(JobBook.scroll(taken).standing().counted().plan().orElseThrow().links())
              .as(mm + " mm, " + choice.says(UnitStyle.METRIC))
              .isEqualTo(choice.links());
          changed |= choice.links() != counted;
        }
      }
    }
    assertThat(changed).as("somewhere between 400 and 420 mm, " + before + " links").isTrue();
  }

  @Test
  void a_link_that_hangs_on_its_former_is_fitted_by_another_former() {
    Map<String, String> wish =
        Wishes.common()
            .without(WishKeys.LINK_BLANK)
            .with(WishKeys.WIRE, "1 mm")
            .with(WishKeys.LINK_PATTERN, "round")
            .with(WishKeys.LINK_FORMERS, "ring=6 mm")
            .with(WishKeys.RING_INSIDE, "4 mm")
            .with(WishKeys.FINISHED, "450 mm")
            .texts();
    JobBook round = JobBook.scroll(wish);
    ChainChoice link =
        ChainChoices.of(wish, round.state(), JobBook.HANDBOOK).stream()
            .filter(choice -> choice.way() == Way.FIT_LINK)
            .findFirst()
            .orElseThrow();
    double before = round.standing().counted().plan().orElseThrow().lengthMm();

    assertThat(link.says(UnitStyle.METRIC)).startsWith("links over a former of ");
    assertThat(Math.abs(link.lengthMm() - 450)).isLessThan(Math.abs(before - 450));
  }

  @Test
  void the_fitted_ones_come_nearer_the_wish_than_the_chain_counted() {
    Plan counted = book.standing().counted().plan().orElseThrow();
    double off = Math.abs(counted.lengthMm() - 406);
    assertThat(choices)
        .filteredOn(choice -> choice.way() == Way.FIT_LINK || choice.way() == Way.FIT_RING)
        .isNotEmpty()
        .allSatisfy(choice -> assertThat(Math.abs(choice.lengthMm() - 406)).isLessThan(off));
  }

  @Test
  void no_ring_is_proposed_that_two_wires_do_not_pass() {
    for (int tenths = 18; tenths < 40; tenths++) {
      Map<String, String> wish =
          Wishes.common().with(WishKeys.RING_INSIDE, tenths / 10.0 + " mm").texts();
      Plan plan = JobBook.scroll(wish).standing().counted().plan().orElseThrow();
      plan.exactRingInsideMm()
          .ifPresent(mm -> assertThat(mm).isGreaterThanOrEqualTo(2 * plan.wish().wireMm()));
    }
  }
}
