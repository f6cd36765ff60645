package linkwright.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import linkwright.quantity.Read;
import org.junit.jupiter.api.Test;

class RepeatTest {
  private final Repeat figaro = Repeat.read("3 round + 1 long").orThrow();
  private final Map<String, Double> inside = Map.of("round", 4.0, "long", 15.0);

  @Test
  void countsAndKindsAreReadWithAPlusBetween() {
    assertThat(figaro.parts())
        .containsExactly(new Repeat.RepeatPart(3, "round"), new Repeat.RepeatPart(1, "long"));
    assertThat(Repeat.read("  2 bar-two-eyes+10  small rings ").orThrow().kinds())
        .containsExactly("bar-two-eyes", "small rings");
  }

  @Test
  void theNearestWholeRepeatsAreCounted() {
    // Each adds 27 mm: (406 − 12)/27 = 14.59.
    Repeat.CountedRepeats chain = figaro.counted(inside, 406, 12).orThrow();
    assertThat(chain.repeats()).isEqualTo(15);
    assertThat(chain.pieces()).containsExactly(entry("round", 45L), entry("long", 15L));
    assertThat(chain.total()).isEqualTo(60);
    assertThat(chain.lengthMm()).isCloseTo(15 * 27 + 12, within(1e-9));
    assertThat(chain.oneFewerMm().orElseThrow()).isCloseTo(14 * 27 + 12, within(1e-9));
    assertThat(chain.oneMoreMm()).isCloseTo(16 * 27 + 12, within(1e-9));
  }

  @Test
  void aKindThatComesTwiceIsCountedTogether() {
    Repeat twice = Repeat.read("1 round + 1 long + 2 round").orThrow();
    assertThat(twice.lengthMm(inside).orThrow()).isEqualTo(27);
    assertThat(twice.counted(inside, 27, 0).orThrow().pieces())
        .containsExactly(entry("round", 3L), entry("long", 1L));
    assertThat(twice.counted(inside, 27, 0).orThrow().oneFewerMm()).isEmpty();
  }

  @Test
  void whatIsNotARepeatIsTold() {
    assertThat(bad(Repeat.read("round + long")))
        .isEqualTo(
            "\"round\" in the repeat \"round + long\" is not a number of a kind: write it like 3"
                + " round + 1 long.");
    assertThat(bad(Repeat.read(""))).contains("write it like");
    assertThat(bad(Repeat.read("0 round"))).contains("write it like");
    assertThat(bad(Repeat.read("3 round +"))).contains("write it like");
    assertThat(bad(Repeat.read("99999 round"))).contains("write it like");
  }

  @Test
  void lengthsThatCannotBeAreTold() {
    assertThat(bad(figaro.counted(Map.of("round", 4.0), 406, 0)))
        .isEqualTo(
            "The repeat has \"long\", whose inside length is not known: give it, or use round.");
    assertThat(bad(figaro.counted(Map.of("round", 4.0, "long", 0.0), 406, 0))).contains("0 mm");
    assertThat(bad(figaro.counted(inside, 26, 0)))
        .isEqualTo(
            "A finished length of 26 mm is shorter than one repeat: the shortest chain is 27 mm.");
    assertThat(bad(figaro.counted(inside, Double.NaN, 0))).contains("not a number");
    assertThat(bad(figaro.counted(inside, 1e12, 0))).contains("more than a kilometre");
    assertThat(bad(figaro.counted(inside, 400, -1))).contains("clasp");
  }

  private static String bad(Read<?> read) {
    return read.problem().orElseThrow();
  }
}
