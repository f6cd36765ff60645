package linkwright.standing.reach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.OptionalDouble;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.standing.JobBook;
import linkwright.standing.Standing;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** What a chain takes of each limit, and whether so much will do. */
class BoundTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();

  private static Wishes plain() {
    return Wishes.common()
        .with(WishKeys.KERF, "0 mm")
        .with(WishKeys.COIL_TAIL, "0 mm")
        .with(WishKeys.USUAL_LOSS, "0 %");
  }

  private static Standing standing(Map<String, String> wish) {
    return Standing.ofWish(wish, JobBook.HANDBOOK);
  }

  private static OnHand metal(double grams) {
    return new OnHand("", OptionalDouble.of(grams), NONE, NONE);
  }

  /**
   * Links of 38.1 mm and rings of one turn, π · 3.4 mm a wire's thickness to the side, all of 0.9
   * mm sterling of 10.36 g/cm³ (supplier's data sheet).
   */
  @Test
  void metal_is_that_of_all_links_and_rings() {
    Standing chain = standing(plain().texts());
    int links = chain.counted().plan().orElseThrow().links();
    int rings = chain.counted().plan().orElseThrow().rings();
    double mm = links * 38.1 + rings * Math.hypot(Math.PI * 3.4, 0.9);
    double grams = mm * Math.PI * 0.81 / 4 * 10.36e-3;
    assertThat(Bound.METAL.takenBy(chain).orElseThrow()).isCloseTo(grams, Offset.offset(1e-3));
    assertThat(Bound.METAL.allows(chain, metal(grams + 0.001))).isTrue();
    assertThat(Bound.METAL.allows(chain, metal(grams - 0.001))).isFalse();
    double taken = Bound.METAL.takenBy(chain).orElseThrow();
    assertThat(Bound.METAL.allows(chain, metal(taken))).as("to the last bit").isTrue();
    assertThat(Bound.WIRE.takenBy(chain).orElseThrow()).isCloseTo(mm, Offset.offset(0.01));
  }

  @Test
  void without_a_plan_or_a_price_nothing_is_known_and_nothing_allowed() {
    Standing none = JobBook.of("scroll-and-ring").standing();
    for (Bound bound : Bound.values()) {
      assertThat(bound.takenBy(none)).as(bound.word()).isEmpty();
      assertThat(bound.allows(none, OnHand.NOTHING)).as(bound.word()).isFalse();
    }
    Standing chain = standing(plain().texts());
    assertThat(Bound.MONEY.takenBy(chain)).as("no prices").isEmpty();
    assertThat(Bound.HOURS.takenBy(chain).orElseThrow()).isPositive();
    assertThat(Bound.HOURS.allows(chain, OnHand.NOTHING)).as("what is not said").isTrue();
    assertThat(Bound.MONEY.unknown()).startsWith("No prices");
    assertThat(Bound.HOURS.unknown()).startsWith("No routine");
  }

  /** Ten metres do for links and rings, 381 mm for ten links; rings of other wire are no matter. */
  @Test
  void wire_has_to_give_every_piece_that_is_cut_from_it() {
    Standing enough = JobBook.scroll(plain().with(WishKeys.STOCK, "10 m").texts()).standing();
    Standing little = JobBook.scroll(plain().with(WishKeys.STOCK, "382 mm").texts()).standing();
    assertThat(Bound.WIRE.allows(enough, OnHand.NOTHING)).isTrue();
    assertThat(Bound.WIRE.allows(little, OnHand.NOTHING)).isFalse();
    int links = enough.counted().plan().orElseThrow().links();
    String linksAlone = links * 38.1 + 1 + " mm";
    assertThat(
            Bound.WIRE.allows(
                JobBook.scroll(plain().with(WishKeys.STOCK, linksAlone).texts()).standing(),
                OnHand.NOTHING))
        .as("of the links' wire no ring can be cut")
        .isFalse();
    Wishes ringsApart =
        plain()
            .with(WishKeys.STOCK, linksAlone)
            .with(WishKeys.RING_WIRE, "0.8 mm")
            .with(WishKeys.RING_STOCK, "20 mm");
    Standing apart = JobBook.scroll(ringsApart.texts()).standing();
    assertThat(apart.missing()).as("rings lack").isNotEmpty();
    assertThat(Bound.WIRE.allows(apart, OnHand.NOTHING)).isTrue();
  }

  @Test
  void what_there_is_is_read_as_it_is_typed() {
    Map<String, String> wish = Wishes.common().texts();
    OnHand read =
        OnHand.read(
                Map.of("wire", " 2 m ", "metal", "8 g", "money", "90 EUR", "hours", "6"),
                wish,
                JobBook.HANDBOOK)
            .onHand();
    assertThat(read)
        .isEqualTo(
            new OnHand("2 m", OptionalDouble.of(8), OptionalDouble.of(90), OptionalDouble.of(6)));
    assertThat(read.limits()).containsExactly(Bound.WIRE, Bound.METAL, Bound.MONEY, Bound.HOURS);
    assertThat(read.amount(Bound.METAL)).isEqualTo(8);
    assertThat(read.amount(Bound.MONEY)).isEqualTo(90);
    assertThat(read.amount(Bound.HOURS)).isEqualTo(6);
    assertThat(read.amount(Bound.WIRE)).as("no one number").isInfinite();
    OnHand minutes = OnHand.read(Map.of("hours", "90 min"), wish, JobBook.HANDBOOK).onHand();
    assertThat(minutes).isEqualTo(new OnHand("", NONE, NONE, OptionalDouble.of(1.5)));
    assertThat(minutes.limits()).containsExactly(Bound.HOURS);
    assertThat(OnHand.read(Map.of(), wish, JobBook.HANDBOOK).onHand()).isEqualTo(OnHand.NOTHING);
    assertThat(OnHand.NOTHING.limits()).isEmpty();
    OnHand.Reading wrong = OnHand.read(Map.of("metal", "heavy"), wish, JobBook.HANDBOOK);
    assertThat(wrong.troubles()).containsOnlyKeys("metal");
    assertThat(wrong.onHand()).isEqualTo(OnHand.NOTHING);
  }
}
