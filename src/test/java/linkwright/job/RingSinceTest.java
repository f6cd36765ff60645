package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whether the rings wished now are others than those of the trial length that hung. */
class RingSinceTest {
  /** Where nothing is typed for the inside the ring is reckoned, and no other is wished. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    // what, hung: rings, inside, oval; then: inside, oval, wire; now: inside, oval, wire; other
    "as it was, 4, 3.0,, 3 mm,,, 3 mm,,, false",
    "a wider ring, 4, 3.0,, 3 mm,,, 3.2 mm,,, true",
    "a wider ring though none hung, 0, 3.0,, 3 mm,,, 3.2 mm,,, false",
    "the inside is reckoned, 4, 3.0,, 3 mm,,,,,, false",
    "an inside where it was reckoned, 4, 3.0,,,,, 3.2 mm,,, true",
    "the inside that hung though another was wished, 4, 3.0,, 3.2 mm,,, 3 mm,,, false",
    "as wished then though another hung, 4, 3.0,, 3.2 mm,, 0.9 mm, 3.2 mm,, 0.9 mm, false",
    "thicker wire of a ring that did not hang, 4, 3.0,, 3.2 mm,, 0.9 mm, 3.2 mm,, 1 mm, true",
    "thicker wire about the inside that hung, 4, 3.0,, 3 mm,, 0.9 mm, 3 mm,, 1 mm, false",
    "spaces about the wire, 4, 3.0,, 3.2 mm,, 0.9 mm, 3.2 mm,, ' 0.9 mm ', false",
    "written with a comma, 4, 3.0,, 3.2 mm,,, '3,20 mm',,, false",
    "the same oval, 4, 3.0, 4.0, 3 mm, 4 mm,, 3 mm, 4 mm,, false",
    "a longer oval, 4, 3.0, 4.0, 3 mm, 4 mm,, 3 mm, 5 mm,, true",
    "round after an oval, 4, 3.0, 4.0, 3 mm, 4 mm,, 3 mm,,, true",
    "the oval that hung though a longer was wished, 4, 3.0, 4.0, 3 mm, 5 mm,, 3 mm, 4 mm,, false",
    "less apart than can be measured, 4, 3.0,, 3.2 mm,,, 3.2004 mm,,, false",
    "a thousandth apart, 4, 3.0,, 3.2 mm,,, 3.201 mm,,, true"
  })
  void another_ring_is_wished(
      String what,
      int rings,
      double hungMm,
      Double hungOvalMm,
      String insideThen,
      String ovalThen,
      String wireThen,
      String insideNow,
      String ovalNow,
      String wireNow,
      boolean other) {
    OptionalDouble oval =
        hungOvalMm == null ? OptionalDouble.empty() : OptionalDouble.of(hungOvalMm);
    Fact.TrialMeasured hung = new Fact.TrialMeasured(3, rings, hungMm, oval, 52, 0, "");
    assertThat(
            RingSince.is(
                hung, wish(insideThen, ovalThen, wireThen), wish(insideNow, ovalNow, wireNow)))
        .isEqualTo(other);
  }

  private static Map<String, String> wish(String inside, String oval, String wire) {
    Map<String, String> wish = new HashMap<>();
    wish.put("ring.inside", inside);
    wish.put("ring.oval-inside", oval);
    wish.put("ring.wire", wire);
    wish.values().removeIf(typed -> typed == null);
    return wish;
  }
}
