package linkwright.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import linkwright.quantity.Read;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class ChainCountTest {
  private static final Offset<Double> EXACT = within(1e-9);

  /** Common practice, no source: 27 links with a ring at each end take 28 rings. */
  @Test
  void linksWithARingAtEachEndTakeOneRingMore() {
    ChainCount chain = count(12, 2.5, 27 * 12 + 28 * 2.5 + 12, 12);
    assertThat(chain.links()).isEqualTo(27);
    assertThat(chain.rings()).isEqualTo(28);
    assertThat(chain.lengthMm()).isCloseTo(406, EXACT);
    assertThat(chain.oneFewerMm().orElseThrow()).isCloseTo(406 - 14.5, EXACT);
    assertThat(chain.oneMoreMm()).isCloseTo(406 + 14.5, EXACT);
    assertThat(chain.exactRingInsideMm().orElseThrow()).isCloseTo(2.5, EXACT);
  }

  @Test
  void theCountIsTheNearestAndARingMakesItExact() {
    ChainCount chain = count(12, 3, 400, 15);
    // (400 − 15 − 3)/15 = 25.47
    assertThat(chain.links()).isEqualTo(25);
    double ring = chain.exactRingInsideMm().orElseThrow();
    assertThat(25 * 12 + 26 * ring + 15).isCloseTo(400, EXACT);
  }

  @Test
  void ofTwoAsNearTheLongerIsTaken() {
    assertThat(count(10, 5, 5 + 15 * 7 + 7.5, 0).links()).isEqualTo(8);
  }

  @Test
  void linksThatJoinEachOtherTakeNoRingsAndHalfAreClosedFirst() {
    ChainCount chain = ChainCount.of(5.83, 0, 406, 12, Joining.EACH_OTHER).orThrow();
    assertThat(chain.links()).isEqualTo(68);
    assertThat(chain.rings()).isZero();
    assertThat(chain.closedFirst()).isEqualTo(34);
    assertThat(chain.exactRingInsideMm()).isEmpty();
    assertThat(chain.lengthMm()).isCloseTo(68 * 5.83 + 12, EXACT);
  }

  @Test
  void ringsOnlyBetweenTheLinksAreOneFewer() {
    ChainCount chain = ChainCount.of(10, 3, 10 * 10 + 9 * 3, 0, Joining.RINGS_BETWEEN).orThrow();
    assertThat(chain.links()).isEqualTo(10);
    assertThat(chain.rings()).isEqualTo(9);
  }

  @Test
  void oneLinkHasNoneFewer() {
    ChainCount chain = count(12, 3, 18, 0);
    assertThat(chain.links()).isEqualTo(1);
    assertThat(chain.rings()).isEqualTo(2);
    assertThat(chain.oneFewerMm()).isEmpty();
    assertThat(chain.oneMoreMm()).isCloseTo(33, EXACT);
  }

  @Test
  void whereNoRingMakesItExactNoneIsGiven() {
    assertThat(count(12, 3, 12, 0).exactRingInsideMm()).isEmpty();
  }

  @Test
  void aWishShorterThanOneLinkIsTold() {
    assertThat(bad(ChainCount.of(12, 3, 20, 12, Joining.RING_AT_EACH_END)))
        .isEqualTo(
            "A finished length of 20 mm is shorter than one link and the clasp: the shortest chain"
                + " is 30 mm.");
    assertThat(bad(ChainCount.of(12, 3, 11, 0, Joining.EACH_OTHER)))
        .isEqualTo(
            "A finished length of 11 mm is shorter than one link: the shortest chain is 12 mm.");
  }

  @Test
  void sizesThatCannotBeAreTold() {
    assertThat(bad(ChainCount.of(0, 3, 400, 0, Joining.RING_AT_EACH_END)))
        .contains("link's inside");
    assertThat(bad(ChainCount.of(12, -3, 400, 0, Joining.RING_AT_EACH_END))).contains("−3 mm");
    assertThat(bad(ChainCount.of(12, 3, 0, 0, Joining.RING_AT_EACH_END)))
        .contains("finished length");
    assertThat(bad(ChainCount.of(12, 3, 400, -1, Joining.RING_AT_EACH_END))).contains("clasp");
    assertThat(bad(ChainCount.of(12, 3, Double.NaN, 0, Joining.EACH_OTHER)))
        .contains("not a number");
    assertThat(bad(ChainCount.of(12, 3, 1e300, 0, Joining.EACH_OTHER)))
        .contains("more than a kilometre");
    assertThat(bad(ChainCount.of(1e-4, 3, 400, 0, Joining.EACH_OTHER)))
        .contains("more than a million links");
  }

  @Test
  void noOtherCountIsNearerWhateverTheSizes() {
    for (long seed = 1; seed <= 500; seed++) {
      Random chance = new Random(seed);
      double link = 2 + 20 * chance.nextDouble();
      double ring = 1 + 5 * chance.nextDouble();
      double clasp = 20 * chance.nextDouble();
      double wish = link + 2 * ring + clasp + 800 * chance.nextDouble();
      Joining joining = chance.nextBoolean() ? Joining.RING_AT_EACH_END : Joining.EACH_OTHER;
      ChainCount chain = ChainCount.of(link, ring, wish, clasp, joining).orThrow();
      double off = Math.abs(chain.lengthMm() - wish);
      assertThat(Math.abs(chain.oneMoreMm() - wish))
          .as("seed " + seed)
          .isGreaterThanOrEqualTo(off - 1e-6);
      if (chain.oneFewerMm().isPresent()) {
        assertThat(Math.abs(chain.oneFewerMm().getAsDouble() - wish))
            .as("seed " + seed)
            .isGreaterThanOrEqualTo(off - 1e-6);
      }
    }
  }

  private static ChainCount count(double link, double ring, double wish, double clasp) {
    return ChainCount.of(link, ring, wish, clasp, Joining.RING_AT_EACH_END).orThrow();
  }

  private static String bad(Read<?> read) {
    return read.problem().orElseThrow();
  }
}
